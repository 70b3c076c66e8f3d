-- Seeds: lots, the trays that were sown from them, what came up, and the plants that seedlings became. Each row belongs
-- to the event that made it, so that what is undone there does not count here.

CREATE TABLE seed_lots (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    event_id INTEGER NOT NULL UNIQUE REFERENCES events (id),
    name TEXT NOT NULL CHECK (name <> ''),
    crop TEXT NOT NULL CHECK (crop <> ''),
    packed_year INTEGER CHECK (packed_year BETWEEN 1950 AND 2199),
    stated_percent REAL CHECK (stated_percent > 0 AND stated_percent <= 100),
    seeds INTEGER CHECK (seeds BETWEEN 1 AND 10000000)
) STRICT;

CREATE TABLE trays (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    event_id INTEGER NOT NULL UNIQUE REFERENCES events (id),
    lot_id INTEGER NOT NULL REFERENCES seed_lots (id),
    seeds INTEGER NOT NULL CHECK (seeds BETWEEN 1 AND 10000000),
    mix_celsius REAL CHECK (mix_celsius BETWEEN -10 AND 60)
) STRICT;
CREATE INDEX trays_by_lot ON trays (lot_id);

-- Seedlings that have come up by the event's date, those since lost included. The latest of a date counts.
CREATE TABLE tray_counts (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    event_id INTEGER NOT NULL UNIQUE REFERENCES events (id),
    tray_id INTEGER NOT NULL REFERENCES trays (id),
    emerged INTEGER NOT NULL CHECK (emerged >= 0),
    last INTEGER NOT NULL CHECK (last IN (0, 1))
) STRICT;
CREATE INDEX tray_counts_by_tray ON tray_counts (tray_id);

ALTER TABLE plants ADD COLUMN from_tray_id INTEGER REFERENCES trays (id);
CREATE INDEX plants_by_tray ON plants (from_tray_id);
