CREATE EXTENSION IF NOT EXISTS btree_gist;

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
    id TEXT COLLATE "C" PRIMARY KEY,
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
    channel_least_gain_db DOUBLE PRECISION,
    channel_most_gain_db DOUBLE PRECISION,
    channel_input_ohm DOUBLE PRECISION,
    channel_noise_dbu DOUBLE PRECISION,
    channel_phantom TEXT,
    channel_phantom_ma DOUBLE PRECISION,
    stand_mass_kg DOUBLE PRECISION,
    stand_reach_m DOUBLE PRECISION,
    stand_foot_radius_m DOUBLE PRECISION,
    stand_legs BIGINT,
    stand_height_m DOUBLE PRECISION,
    pad_loss_db DOUBLE PRECISION,
    booster_gain_db DOUBLE PRECISION,
    booster_phantom_ma DOUBLE PRECISION,
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
    unit_id TEXT COLLATE "C" NOT NULL,
    unit_label TEXT NOT NULL,
    from_ts BIGINT NOT NULL,
    until_ts BIGINT NOT NULL,
    taken_ts BIGINT,
    taken_by TEXT,
    returned_ts BIGINT,
    PRIMARY KEY (booking_id, unit_id),
    CHECK (from_ts <= until_ts),
    CHECK (returned_ts IS NULL OR taken_ts IS NOT NULL),
    CONSTRAINT line_alone EXCLUDE USING gist (unit_id WITH =, int8range(from_ts, until_ts) WITH &&)
);

CREATE INDEX line_of_unit ON line (unit_id, until_ts, from_ts);

CREATE UNIQUE INDEX line_out ON line (unit_id) WHERE taken_ts IS NOT NULL AND returned_ts IS NULL;

CREATE INDEX booking_by_time ON booking (until_ts, from_ts);
