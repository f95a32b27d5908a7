PRAGMA user_version = 2;
ALTER TABLE project ADD COLUMN colour TEXT NOT NULL DEFAULT 'white';
