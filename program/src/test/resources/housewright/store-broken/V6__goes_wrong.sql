PRAGMA user_version = 6;
DELETE FROM project;
INSERT INTO no_such_table VALUES (1);
