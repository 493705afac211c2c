-- So that two lockers are told apart wherever they meet, as in one calendar. A restored copy is the same locker. In a backup, and there alone,
-- backed_up_ts says when it was made.
ALTER TABLE state ADD COLUMN own_id TEXT;

ALTER TABLE state ADD COLUMN backed_up_ts BIGINT;

UPDATE state SET own_id = lower(hex(randomblob(16)));
