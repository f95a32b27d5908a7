PRAGMA user_version = 3;
ALTER TABLE project ADD COLUMN colour TEXT NOT NULL DEFAULT 'white';
