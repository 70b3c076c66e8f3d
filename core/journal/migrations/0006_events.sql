-- Events of every kind that a household meets, of a plant, of a spot or of the household; what is known of one beyond
-- its date stands in `details`, a JSON object of texts. Undo and redo are rows of their own, so that nothing is
-- overwritten. Pots get their size, spots what pests and wind make of them.

CREATE TABLE wider_events (
    id INTEGER PRIMARY KEY,
    plant_id INTEGER REFERENCES plants (id),
    kind TEXT NOT NULL CHECK (kind IN
        ('moved', 'watered', 'fed', 'leached', 'repotted', 'pruned', 'flowered', 'new_growth', 'inspected', 'noted',
         'treated', 'pest_found', 'isolated', 'released', 'cold_night', 'chemical_damage', 'sown', 'emerged',
         'planted_out', 'divided', 'died', 'given_away', 'task_done', 'task_postponed', 'task_skipped')),
    spot_id INTEGER REFERENCES spots (id),
    happened_on TEXT NOT NULL CHECK (happened_on IS date(happened_on)),
    entered_at TEXT NOT NULL CHECK (entered_at IS strftime('%Y-%m-%dT%H:%M:%SZ', entered_at)),
    note TEXT NOT NULL,
    details TEXT NOT NULL DEFAULT '{}' CHECK (json_valid(details) AND json_type(details) = 'object'),
    CHECK (kind <> 'moved' OR (plant_id IS NOT NULL AND spot_id IS NOT NULL))
) STRICT;
INSERT INTO wider_events (id, plant_id, kind, spot_id, happened_on, entered_at, note)
    SELECT id, plant_id, kind, spot_id, happened_on, entered_at, note FROM events;
DROP VIEW actual_stays;
DROP TABLE events;
ALTER TABLE wider_events RENAME TO events;
CREATE INDEX events_by_plant ON events (plant_id, happened_on, id);
CREATE INDEX events_by_kind ON events (kind, happened_on, id);

-- Whether an event is undone: its latest row here decides, and none means that it counts.
CREATE TABLE event_undos (
    id INTEGER PRIMARY KEY,
    event_id INTEGER NOT NULL REFERENCES events (id),
    undone INTEGER NOT NULL CHECK (undone IN (0, 1)),
    entered_at TEXT NOT NULL CHECK (entered_at IS strftime('%Y-%m-%dT%H:%M:%SZ', entered_at))
) STRICT;
CREATE INDEX event_undos_by_event ON event_undos (event_id, id);

CREATE VIEW events_that_count AS
    SELECT * FROM events WHERE NOT coalesce(
        (SELECT undone FROM event_undos WHERE event_id = events.id ORDER BY event_undos.id DESC LIMIT 1), 0);
CREATE VIEW actual_stays AS
    SELECT plant_id, spot_id, happened_on AS from_on,
           date(lead(happened_on) OVER (PARTITION BY plant_id ORDER BY happened_on, id), '-1 day') AS to_on
    FROM events_that_count WHERE kind = 'moved';

ALTER TABLE spots ADD COLUMN apart INTEGER NOT NULL DEFAULT 0 CHECK (apart IN (0, 1));
ALTER TABLE spots ADD COLUMN windy INTEGER NOT NULL DEFAULT 0 CHECK (windy IN (0, 1));
ALTER TABLE plants ADD COLUMN pot_litres REAL CHECK (pot_litres > 0 AND pot_litres <= 1000);
ALTER TABLE plants ADD COLUMN pot_shade TEXT NOT NULL DEFAULT '' CHECK (pot_shade IN ('', 'light', 'dark'));
