-- Measurements of plants, the order in which all things were entered, plants that are gone and where plants came
-- from. Undo and redo are rows of their own, as events have them.

-- A plant can be taken off the list. The table is made anew for the new kind of event; foreign keys are off during a
-- step, so that rows elsewhere keep pointing at these ids.
DROP VIEW actual_stays;
DROP VIEW events_that_count;
CREATE TABLE wider_events (
    id INTEGER PRIMARY KEY,
    plant_id INTEGER REFERENCES plants (id),
    kind TEXT NOT NULL CHECK (kind IN
        ('moved', 'watered', 'fed', 'leached', 'repotted', 'pruned', 'flowered', 'new_growth', 'inspected', 'noted',
         'treated', 'pest_found', 'isolated', 'released', 'cold_night', 'chemical_damage', 'sown', 'emerged',
         'planted_out', 'divided', 'died', 'given_away', 'removed', 'task_done', 'task_postponed', 'task_skipped')),
    spot_id INTEGER REFERENCES spots (id),
    happened_on TEXT NOT NULL CHECK (happened_on IS date(happened_on)),
    entered_at TEXT NOT NULL CHECK (entered_at IS strftime('%Y-%m-%dT%H:%M:%SZ', entered_at)),
    note TEXT NOT NULL,
    details TEXT NOT NULL DEFAULT '{}' CHECK (json_valid(details) AND json_type(details) = 'object'),
    CHECK (kind <> 'moved' OR (plant_id IS NOT NULL AND spot_id IS NOT NULL))
) STRICT;
INSERT INTO wider_events (id, plant_id, kind, spot_id, happened_on, entered_at, note, details)
    SELECT id, plant_id, kind, spot_id, happened_on, entered_at, note, details FROM events;
DROP TABLE events;
ALTER TABLE wider_events RENAME TO events;
CREATE INDEX events_by_plant ON events (plant_id, happened_on, id);
CREATE INDEX events_by_kind ON events (kind, happened_on, id);
CREATE VIEW events_that_count AS
    SELECT * FROM events WHERE NOT coalesce(
        (SELECT undone FROM event_undos WHERE event_id = events.id ORDER BY event_undos.id DESC LIMIT 1), 0);

-- A date and time are meant in the zone that stands beside them; without a time the date is the household's own.
-- `value` is the mean of `repeats`, which keeps every single reading, in the unit of the kind.
CREATE TABLE measurements (
    id INTEGER PRIMARY KEY,
    plant_id INTEGER NOT NULL REFERENCES plants (id),
    kind TEXT NOT NULL,
    unit TEXT NOT NULL,
    measured_on TEXT NOT NULL CHECK (measured_on IS date(measured_on)),
    measured_time TEXT CHECK (measured_time IS strftime('%H:%M', measured_time)),
    time_zone TEXT NOT NULL CHECK (measured_time IS NULL OR time_zone <> ''),
    value REAL NOT NULL,
    repeats TEXT NOT NULL CHECK (json_valid(repeats) AND json_type(repeats) = 'array' AND
                                 json_array_length(repeats) >= 1),
    method TEXT NOT NULL CHECK (method IN ('ruler', 'count', 'eye', 'photo')),
    measured_by TEXT NOT NULL,
    pot_litres REAL CHECK (pot_litres > 0 AND pot_litres <= 1000),
    mix TEXT NOT NULL,
    photo_sha256 TEXT CHECK (length(photo_sha256) = 64 AND photo_sha256 NOT GLOB '*[^0-9a-f]*'),
    note TEXT NOT NULL,
    entered_at TEXT NOT NULL CHECK (entered_at IS strftime('%Y-%m-%dT%H:%M:%SZ', entered_at)),
    CHECK (CASE
        WHEN kind IN ('height', 'width', 'longest_leaf', 'stem') THEN unit = 'cm' AND value BETWEEN 0 AND 10000
        WHEN kind IN ('leaves', 'new_leaves', 'flowers') THEN unit = 'count' AND value BETWEEN 0 AND 1000000
        WHEN kind IN ('green_cover', 'yellow_share') THEN unit = 'share' AND value BETWEEN 0 AND 1
        ELSE 0 END)
) STRICT;
CREATE INDEX measurements_by_plant ON measurements (plant_id, kind, measured_on, id);

-- Whether a measurement is undone: its latest row here decides, and none means that it counts.
CREATE TABLE measurement_undos (
    id INTEGER PRIMARY KEY,
    measurement_id INTEGER NOT NULL REFERENCES measurements (id),
    undone INTEGER NOT NULL CHECK (undone IN (0, 1)),
    entered_at TEXT NOT NULL CHECK (entered_at IS strftime('%Y-%m-%dT%H:%M:%SZ', entered_at))
) STRICT;
CREATE INDEX measurement_undos_by_measurement ON measurement_undos (measurement_id, id);
CREATE VIEW measurements_that_count AS
    SELECT * FROM measurements WHERE NOT coalesce(
        (SELECT undone FROM measurement_undos WHERE measurement_id = measurements.id
         ORDER BY measurement_undos.id DESC LIMIT 1), 0);

-- Thermometer readings can be undone too; then the one before of that night and spot counts again.
CREATE TABLE reading_undos (
    id INTEGER PRIMARY KEY,
    reading_id INTEGER NOT NULL REFERENCES readings (id),
    undone INTEGER NOT NULL CHECK (undone IN (0, 1)),
    entered_at TEXT NOT NULL CHECK (entered_at IS strftime('%Y-%m-%dT%H:%M:%SZ', entered_at))
) STRICT;
CREATE INDEX reading_undos_by_reading ON reading_undos (reading_id, id);
DROP VIEW readings_that_count;
CREATE VIEW readings_that_count AS
    SELECT * FROM readings WHERE id IN (
        SELECT max(id) FROM readings r WHERE NOT coalesce(
            (SELECT undone FROM reading_undos WHERE reading_id = r.id ORDER BY reading_undos.id DESC LIMIT 1), 0)
        GROUP BY spot_id, night_of);

-- The order in which things were entered, over all tables. It is this order, not the clock, that says what was
-- entered last, since clocks are set wrong and set back.
CREATE TABLE entries (
    id INTEGER PRIMARY KEY,
    kind TEXT NOT NULL CHECK (kind <> ''),
    row_id INTEGER NOT NULL
) STRICT;
INSERT INTO entries (kind, row_id)
    SELECT kind, row_id FROM (
        SELECT 'event' AS kind, id AS row_id, max(entered_at) OVER (ORDER BY id) AS entered FROM events
        UNION ALL
        SELECT 'reading', id, max(entered_at) OVER (ORDER BY id) FROM readings)
    ORDER BY entered, kind, row_id;
CREATE TRIGGER events_entered AFTER INSERT ON events BEGIN
    INSERT INTO entries (kind, row_id) VALUES ('event', NEW.id);
END;
CREATE TRIGGER measurements_entered AFTER INSERT ON measurements BEGIN
    INSERT INTO entries (kind, row_id) VALUES ('measurement', NEW.id);
END;
CREATE TRIGGER readings_entered AFTER INSERT ON readings BEGIN
    INSERT INTO entries (kind, row_id) VALUES ('reading', NEW.id);
END;
CREATE VIEW entry_states AS
    SELECT id, kind, row_id, coalesce(CASE kind
        WHEN 'event' THEN
            (SELECT undone FROM event_undos u WHERE event_id = row_id ORDER BY u.id DESC LIMIT 1)
        WHEN 'measurement' THEN
            (SELECT undone FROM measurement_undos u WHERE measurement_id = row_id ORDER BY u.id DESC LIMIT 1)
        WHEN 'reading' THEN
            (SELECT undone FROM reading_undos u WHERE reading_id = row_id ORDER BY u.id DESC LIMIT 1)
        END, 0) AS undone
    FROM entries;

-- A plant that came of another one. The event is the one by which it came; undone, the plant never was.
CREATE TABLE descents (
    plant_id INTEGER PRIMARY KEY REFERENCES plants (id),
    parent_plant_id INTEGER NOT NULL REFERENCES plants (id) CHECK (parent_plant_id <> plant_id),
    event_id INTEGER NOT NULL REFERENCES events (id)
) STRICT;
CREATE INDEX descents_by_parent ON descents (parent_plant_id);

-- Plants that are no longer there, and since when. Their rows and all that is known of them stay.
CREATE VIEW gone_plants AS
    SELECT plant_id, kind AS how, happened_on AS gone_on FROM events_that_count
    WHERE id IN (SELECT max(id) FROM events_that_count
                 WHERE kind IN ('died', 'given_away', 'removed') AND plant_id IS NOT NULL GROUP BY plant_id)
    UNION ALL
    SELECT d.plant_id, 'undone', e.happened_on FROM descents d JOIN events e ON e.id = d.event_id
    WHERE d.event_id NOT IN (SELECT id FROM events_that_count WHERE kind = 'divided')
      AND d.plant_id NOT IN (SELECT plant_id FROM events_that_count
                             WHERE kind IN ('died', 'given_away', 'removed') AND plant_id IS NOT NULL);

-- Where plants have been. The last stay has no end, except of a plant that is gone.
CREATE VIEW actual_stays AS
    SELECT plant_id, spot_id, from_on, to_on FROM (
        SELECT plant_id, kind, spot_id, happened_on AS from_on,
               date(lead(happened_on) OVER (PARTITION BY plant_id ORDER BY happened_on, id), '-1 day') AS to_on
        FROM events_that_count WHERE kind IN ('moved', 'died', 'given_away', 'removed') AND plant_id IS NOT NULL)
    WHERE kind = 'moved';
