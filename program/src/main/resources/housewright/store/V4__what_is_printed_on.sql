PRAGMA user_version = 4;

-- The paper and labels that somebody chose for a project, so that they need not choose them again.
CREATE TABLE stationery (
    project INTEGER NOT NULL REFERENCES project ON DELETE CASCADE,
    person TEXT NOT NULL,
    size TEXT NOT NULL,
    labels TEXT NOT NULL,
    PRIMARY KEY (project, person)
) STRICT;
