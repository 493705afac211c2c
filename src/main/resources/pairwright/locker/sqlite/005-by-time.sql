-- What touches a time is asked most. No index on two ends of a time finds that by itself, but most are short, and what is shorter than a week and
-- touches a time began at most a week before it. The few that are longer are looked through.
CREATE INDEX line_short ON line (from_ts, until_ts, unit_id, booking_id) WHERE until_ts - from_ts <= 604800;

CREATE INDEX line_long ON line (until_ts, from_ts, unit_id, booking_id) WHERE until_ts - from_ts > 604800;

CREATE INDEX booking_short ON booking (from_ts, until_ts, id) WHERE until_ts - from_ts <= 604800;

CREATE INDEX booking_long ON booking (until_ts, from_ts, id) WHERE until_ts - from_ts > 604800;

DROP INDEX booking_by_time;

-- What is late is asked with every booking that begins soon.
CREATE INDEX line_late ON line (until_ts, unit_id) WHERE taken_ts IS NOT NULL AND returned_ts IS NULL;
