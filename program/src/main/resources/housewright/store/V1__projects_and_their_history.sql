-- "HWRT": tells a store from other SQLite files. user_version is the number of the last migration.
PRAGMA application_id = 0x48575254;
PRAGMA user_version = 1;

CREATE TABLE project (
    key INTEGER PRIMARY KEY,
    id TEXT NOT NULL UNIQUE,
    name TEXT NOT NULL,
    origin TEXT
) STRICT;

-- The journal. Rows are added, never changed; the newest is the head of its project.
CREATE TABLE revision (
    project INTEGER NOT NULL REFERENCES project ON DELETE CASCADE,
    number INTEGER NOT NULL CHECK (number >= 1),
    author TEXT NOT NULL,
    at TEXT NOT NULL,
    step TEXT NOT NULL,
    of_revision INTEGER NOT NULL,
    says TEXT NOT NULL,
    changes TEXT NOT NULL,
    back TEXT NOT NULL,
    PRIMARY KEY (project, number)
) STRICT;

-- The whole project as it was after some of its revisions, the first always among them.
CREATE TABLE full_text (
    project INTEGER NOT NULL,
    number INTEGER NOT NULL,
    document TEXT NOT NULL,
    PRIMARY KEY (project, number),
    FOREIGN KEY (project, number) REFERENCES revision ON DELETE CASCADE
) STRICT;

CREATE TABLE seen (
    project INTEGER NOT NULL REFERENCES project ON DELETE CASCADE,
    person TEXT NOT NULL,
    revision INTEGER NOT NULL,
    PRIMARY KEY (project, person)
) STRICT;

CREATE TABLE attachment (
    project INTEGER NOT NULL REFERENCES project ON DELETE CASCADE,
    id TEXT NOT NULL,
    name TEXT NOT NULL,
    media_type TEXT NOT NULL,
    bytes INTEGER NOT NULL,
    author TEXT NOT NULL,
    at TEXT NOT NULL,
    content BLOB NOT NULL,
    PRIMARY KEY (project, id)
) STRICT;

CREATE TABLE share_link (
    id TEXT PRIMARY KEY NOT NULL,
    secret_hash TEXT NOT NULL,
    role TEXT NOT NULL,
    person TEXT NOT NULL,
    made_at TEXT NOT NULL,
    revoked INTEGER NOT NULL CHECK (revoked IN (0, 1))
) STRICT;

-- One row: how often something was written, by which a backup is known to be up to date.
CREATE TABLE written (times INTEGER NOT NULL) STRICT;
INSERT INTO written VALUES (0);
