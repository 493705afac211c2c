-- Nothing is ever taken out of what was done.
CREATE TABLE event (
    number BIGINT PRIMARY KEY,
    at_ts BIGINT NOT NULL,
    who TEXT NOT NULL,
    what TEXT NOT NULL,
    about TEXT NOT NULL,
    says TEXT NOT NULL
);

-- Everything an event concerns: a booking concerns its units as well.
CREATE TABLE event_about (
    id TEXT COLLATE "C" NOT NULL,
    number BIGINT NOT NULL REFERENCES event (number),
    PRIMARY KEY (id, number)
);

-- What was said of an act, to be said again should it be sent again.
CREATE TABLE act (
    id TEXT COLLATE "C" PRIMARY KEY,
    who TEXT NOT NULL,
    print TEXT NOT NULL,
    says TEXT NOT NULL,
    at_ts BIGINT NOT NULL
);

CREATE INDEX act_by_time ON act (at_ts);
