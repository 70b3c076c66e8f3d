-- How the sky reaches a spot: its window, roof or wall, where they were measured. A spot without a row has the
-- grower's own two figures of light alone. Heights are from the leaves; angles of things above the horizon.
CREATE TABLE spot_views (
    spot_id INTEGER PRIMARY KEY REFERENCES spots (id) ON DELETE CASCADE,
    shelter TEXT NOT NULL CHECK (shelter IN ('opening', 'open_sky')),
    facing_degrees REAL NOT NULL CHECK (facing_degrees BETWEEN -360 AND 360),
    width_metres REAL NOT NULL CHECK (width_metres BETWEEN 0.05 AND 30),
    height_metres REAL NOT NULL CHECK (height_metres BETWEEN 0.05 AND 30),
    sill_metres REAL NOT NULL CHECK (sill_metres BETWEEN -20 AND 20),
    distance_metres REAL NOT NULL CHECK (distance_metres BETWEEN 0.05 AND 30),
    sideways_metres REAL NOT NULL CHECK (sideways_metres BETWEEN -20 AND 20),
    overhang_metres REAL NOT NULL CHECK (overhang_metres BETWEEN 0 AND 10),
    opposite_degrees REAL NOT NULL CHECK (opposite_degrees BETWEEN 0 AND 89),
    behind_degrees REAL NOT NULL CHECK (behind_degrees BETWEEN 0 AND 89),
    panes INTEGER NOT NULL CHECK (panes BETWEEN 0 AND 4),
    passes_share REAL NOT NULL CHECK (passes_share BETWEEN 0 AND 1)
) STRICT;
