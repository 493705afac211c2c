-- Of a token nothing but a hash is kept.
CREATE TABLE token (
    name TEXT COLLATE "C" PRIMARY KEY,
    role TEXT NOT NULL,
    hash TEXT NOT NULL UNIQUE,
    since_ts BIGINT NOT NULL
);
