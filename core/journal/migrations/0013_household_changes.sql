-- Changes of the household itself: its place, its spots, its plants. A change is an event; here are the rows that it
-- made another, as they were and as it left them, so that its undo and redo put them back. Spots and plants that are
-- off the list keep their rows.

ALTER TABLE spots ADD COLUMN gone INTEGER NOT NULL DEFAULT 0 CHECK (gone IN (0, 1));
ALTER TABLE plants ADD COLUMN withdrawn INTEGER NOT NULL DEFAULT 0 CHECK (withdrawn IN (0, 1));

-- before and after: the columns of the row by name; without a value the row is not there. Of an event that belongs to
-- the change (the move of a plant that was added) neither is kept: it counts while the change does.
CREATE TABLE changed_rows (
    id INTEGER PRIMARY KEY,
    event_id INTEGER NOT NULL REFERENCES events (id),
    in_table TEXT NOT NULL CHECK (in_table IN ('household', 'spots', 'spot_views', 'plants', 'events')),
    row_id INTEGER NOT NULL,
    before TEXT CHECK (before IS NULL OR json_valid(before)),
    after TEXT CHECK (after IS NULL OR json_valid(after))
) STRICT;
CREATE INDEX changed_rows_by_event ON changed_rows (event_id, id);

-- A plant whose adding was undone is as one whose dividing was.
DROP VIEW gone_plants;
CREATE VIEW gone_plants AS
    SELECT plant_id, kind AS how, happened_on AS gone_on FROM events_that_count
    WHERE id IN (SELECT max(id) FROM events_that_count
                 WHERE kind IN ('died', 'given_away', 'removed') AND plant_id IS NOT NULL GROUP BY plant_id)
      AND plant_id NOT IN (SELECT id FROM plants WHERE withdrawn = 1)
    UNION ALL
    SELECT d.plant_id, 'undone', e.happened_on FROM descents d JOIN events e ON e.id = d.event_id
    WHERE d.event_id NOT IN (SELECT id FROM events_that_count WHERE kind = 'divided')
      AND d.plant_id NOT IN (SELECT plant_id FROM events_that_count
                             WHERE kind IN ('died', 'given_away', 'removed') AND plant_id IS NOT NULL)
      AND d.plant_id NOT IN (SELECT id FROM plants WHERE withdrawn = 1)
    UNION ALL
    SELECT p.id, 'undone', max(e.happened_on) FROM plants p
    JOIN changed_rows c ON c.in_table = 'plants' AND c.row_id = p.id JOIN events e ON e.id = c.event_id
    WHERE p.withdrawn = 1 GROUP BY p.id;
