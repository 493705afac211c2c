-- Exercises of the lab: a set is one exercise for each bench. What was drawn is kept as text that only the lab reads; the exercise is made of it anew each
-- time. A set is found by nothing but its id, which is drawn by chance: it tells neither the seed nor how many sets there are.
CREATE TABLE exercise_set (
    id TEXT PRIMARY KEY,
    kind TEXT NOT NULL,
    level BIGINT NOT NULL,
    seed TEXT NOT NULL,
    purpose TEXT NOT NULL,
    from_ts BIGINT,
    until_ts BIGINT,
    opens_ts BIGINT,
    booking_id BIGINT,
    version BIGINT NOT NULL,
    at_ts BIGINT NOT NULL,
    who TEXT NOT NULL
);

CREATE INDEX exercise_set_by_time ON exercise_set (at_ts, id);

CREATE TABLE exercise (
    set_id TEXT NOT NULL REFERENCES exercise_set (id) DEFERRABLE INITIALLY DEFERRED,
    bench BIGINT NOT NULL,
    drawn TEXT NOT NULL,
    hardness DOUBLE PRECISION NOT NULL,
    PRIMARY KEY (set_id, bench)
);

-- What a bench works with: one row a microphone, with its unit where one was booked.
CREATE TABLE exercise_kit (
    set_id TEXT NOT NULL REFERENCES exercise_set (id) DEFERRABLE INITIALLY DEFERRED,
    bench BIGINT NOT NULL,
    place BIGINT NOT NULL,
    mic_type TEXT NOT NULL,
    unit_id TEXT,
    unit_label TEXT,
    PRIMARY KEY (set_id, bench, place)
);

-- Whatever was handed in, in the order it came; nothing is written over. Points are missing where nobody was to see them yet.
CREATE TABLE exercise_answer (
    set_id TEXT NOT NULL REFERENCES exercise_set (id) DEFERRABLE INITIALLY DEFERRED,
    bench BIGINT NOT NULL,
    number BIGINT NOT NULL,
    answer TEXT NOT NULL,
    points DOUBLE PRECISION,
    of_points DOUBLE PRECISION,
    late BIGINT NOT NULL,
    at_ts BIGINT NOT NULL,
    who TEXT NOT NULL,
    PRIMARY KEY (set_id, bench, number)
);
