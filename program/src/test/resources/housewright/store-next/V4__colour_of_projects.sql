PRAGMA user_version = 4;
ALTER TABLE project ADD COLUMN colour TEXT NOT NULL DEFAULT 'white';
