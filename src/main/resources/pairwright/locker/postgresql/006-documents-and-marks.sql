-- What is written down of a session as a whole, as text that only those who wrote it read: its line-up, and what belongs to that. What a document
-- belongs to may come in after it, as from a backup, but before the transaction ends.
CREATE TABLE document (
    id TEXT COLLATE "C" PRIMARY KEY,
    kind TEXT NOT NULL,
    name TEXT NOT NULL,
    belongs_to TEXT COLLATE "C" REFERENCES document (id) DEFERRABLE INITIALLY DEFERRED,
    from_ts BIGINT,
    until_ts BIGINT,
    booking_id BIGINT,
    content TEXT NOT NULL,
    version BIGINT NOT NULL,
    marks_version BIGINT NOT NULL,
    at_ts BIGINT NOT NULL,
    who TEXT NOT NULL,
    CHECK ((kind = 'line-up') = (belongs_to IS NULL))
);

CREATE INDEX document_by_kind ON document (kind, id);

CREATE INDEX document_of ON document (belongs_to);

-- What became of one microphone of a session.
CREATE TABLE mark (
    session_id TEXT COLLATE "C" NOT NULL REFERENCES document (id) DEFERRABLE INITIALLY DEFERRED,
    seat TEXT COLLATE "C" NOT NULL,
    mic BIGINT NOT NULL,
    source TEXT COLLATE "C" NOT NULL,
    room TEXT,
    player TEXT,
    mic_type TEXT NOT NULL,
    position TEXT,
    unit_id TEXT,
    kept BIGINT NOT NULL,
    changed_to TEXT,
    to_mic_type TEXT,
    to_position TEXT,
    why TEXT,
    at_ts BIGINT NOT NULL,
    who TEXT NOT NULL,
    PRIMARY KEY (session_id, seat, mic)
);

CREATE INDEX mark_of_source ON mark (source, session_id);

-- So that whoever counted the marks sees with one number whether they are still the same.
ALTER TABLE state ADD COLUMN marks_revision BIGINT NOT NULL DEFAULT 1;
