PRAGMA user_version = 3;

-- What each sheet of a paper said when it was last printed, so that those out of date are told.
CREATE TABLE printed (
    project INTEGER NOT NULL REFERENCES project ON DELETE CASCADE,
    paper TEXT NOT NULL,
    sheet TEXT NOT NULL,
    title TEXT NOT NULL,
    content TEXT NOT NULL,
    revision INTEGER NOT NULL CHECK (revision >= 1),
    person TEXT NOT NULL,
    at TEXT NOT NULL,
    PRIMARY KEY (project, paper, sheet)
) STRICT;
