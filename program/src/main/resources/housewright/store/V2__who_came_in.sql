PRAGMA user_version = 2;

-- Browsers that somebody came in with, so that they need not come in again when the server is started again. Of what a
-- browser shows only the hash is kept.
CREATE TABLE entrance (
    cookie_hash TEXT PRIMARY KEY NOT NULL,
    person TEXT NOT NULL,
    role TEXT NOT NULL,
    link TEXT,
    used_at TEXT NOT NULL
) STRICT;
