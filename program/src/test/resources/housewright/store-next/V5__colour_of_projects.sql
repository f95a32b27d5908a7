PRAGMA user_version = 5;
ALTER TABLE project ADD COLUMN colour TEXT NOT NULL DEFAULT 'white';
