-- One row, so that every program sees at once that something changed: revision with every write, units_revision with those on units.
CREATE TABLE state (
    one BIGINT PRIMARY KEY CHECK (one = 1),
    revision BIGINT NOT NULL,
    units_revision BIGINT NOT NULL,
    next_booking BIGINT NOT NULL
);

INSERT INTO state (one, revision, units_revision, next_booking) VALUES (1, 1, 1, 1);

-- tag_key is the tag in lower case: two tags that differ in case alone are one to a reader of labels.
CREATE TABLE unit (
    id TEXT PRIMARY KEY,
    kind TEXT NOT NULL,
    mic_type TEXT,
    label TEXT NOT NULL,
    serial TEXT,
    tag TEXT,
    tag_key TEXT UNIQUE,
    pair_mate TEXT,
    state TEXT NOT NULL,
    note TEXT,
    stored_at TEXT,
    channel_bank TEXT,
    channel_least_gain_db REAL,
    channel_most_gain_db REAL,
    channel_input_ohm REAL,
    channel_noise_dbu REAL,
    channel_phantom TEXT,
    channel_phantom_ma REAL,
    stand_mass_kg REAL,
    stand_reach_m REAL,
    stand_foot_radius_m REAL,
    stand_legs BIGINT,
    stand_height_m REAL,
    pad_loss_db REAL,
    booster_gain_db REAL,
    booster_phantom_ma REAL,
    booster_passes_phantom BIGINT,
    response TEXT,
    version BIGINT NOT NULL,
    CHECK ((kind = 'mic') = (mic_type IS NOT NULL))
);

CREATE TABLE booking (
    id BIGINT PRIMARY KEY,
    from_ts BIGINT NOT NULL,
    until_ts BIGINT NOT NULL,
    kind TEXT NOT NULL,
    for_what TEXT NOT NULL,
    by_whom TEXT NOT NULL,
    note TEXT,
    version BIGINT NOT NULL,
    CHECK (from_ts < until_ts)
);

-- One unit of a booking, with its own time: it ends early when the unit comes back early, and may then be empty. A removed unit keeps its
-- label here.
CREATE TABLE line (
    booking_id BIGINT NOT NULL REFERENCES booking (id),
    place BIGINT NOT NULL,
    unit_id TEXT NOT NULL,
    unit_label TEXT NOT NULL,
    from_ts BIGINT NOT NULL,
    until_ts BIGINT NOT NULL,
    taken_ts BIGINT,
    taken_by TEXT,
    returned_ts BIGINT,
    PRIMARY KEY (booking_id, unit_id),
    CHECK (from_ts <= until_ts),
    CHECK (returned_ts IS NULL OR taken_ts IS NOT NULL)
);

CREATE INDEX line_of_unit ON line (unit_id, until_ts, from_ts);

CREATE UNIQUE INDEX line_out ON line (unit_id) WHERE taken_ts IS NOT NULL AND returned_ts IS NULL;

CREATE INDEX booking_by_time ON booking (until_ts, from_ts);

CREATE TRIGGER line_inserted BEFORE INSERT ON line
WHEN EXISTS (SELECT 1 FROM line AS other WHERE other.unit_id = NEW.unit_id AND other.until_ts > NEW.from_ts AND other.from_ts < NEW.until_ts
    AND other.from_ts < other.until_ts AND NEW.from_ts < NEW.until_ts)
BEGIN
    SELECT RAISE(ABORT, 'two lines of a unit at once');
END;

CREATE TRIGGER line_updated BEFORE UPDATE OF unit_id, from_ts, until_ts ON line
WHEN EXISTS (SELECT 1 FROM line AS other WHERE other.unit_id = NEW.unit_id AND other.until_ts > NEW.from_ts AND other.from_ts < NEW.until_ts
    AND other.from_ts < other.until_ts AND NEW.from_ts < NEW.until_ts AND other.rowid <> OLD.rowid)
BEGIN
    SELECT RAISE(ABORT, 'two lines of a unit at once');
END;
