-- The household: its place, spots and plants, what has happened, and what is planned.
-- Units stand in the names of columns. Dates are local, YYYY-MM-DD; instants are UTC, YYYY-MM-DDThh:mm:ssZ.

CREATE TABLE household (
    id INTEGER PRIMARY KEY CHECK (id = 1),
    name TEXT NOT NULL,
    demonstration INTEGER NOT NULL CHECK (demonstration IN (0, 1)),
    place_name TEXT NOT NULL,
    latitude_degrees REAL NOT NULL CHECK (latitude_degrees BETWEEN -90 AND 90),
    longitude_degrees REAL NOT NULL CHECK (longitude_degrees BETWEEN -180 AND 180),
    elevation_metres REAL CHECK (elevation_metres BETWEEN -500 AND 9000),
    time_zone TEXT NOT NULL CHECK (time_zone <> '')
) STRICT;

CREATE TABLE spots (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    name TEXT NOT NULL UNIQUE CHECK (name <> ''),
    short_name TEXT NOT NULL,
    kind TEXT NOT NULL CHECK (kind IN ('indoors', 'open', 'roofed', 'screened', 'glazed')),
    offset_kelvin REAL NOT NULL CHECK (offset_kelvin BETWEEN -30 AND 30),
    offset_spread_kelvin REAL NOT NULL CHECK (offset_spread_kelvin BETWEEN 0 AND 30),
    winter_celsius REAL CHECK (winter_celsius BETWEEN -60 AND 60),
    summer_celsius REAL CHECK (summer_celsius BETWEEN -60 AND 60),
    light_in_summer_moles REAL NOT NULL CHECK (light_in_summer_moles BETWEEN 0 AND 100),
    light_in_winter_moles REAL NOT NULL CHECK (light_in_winter_moles BETWEEN 0 AND 100),
    capacity_pots INTEGER NOT NULL CHECK (capacity_pots BETWEEN 0 AND 100000),
    in_reach INTEGER NOT NULL CHECK (in_reach IN (0, 1)),
    walking_order INTEGER NOT NULL
) STRICT;

CREATE TABLE plants (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    name TEXT NOT NULL UNIQUE CHECK (name <> ''),
    kind TEXT NOT NULL CHECK (kind <> ''),
    lethal_celsius REAL NOT NULL CHECK (lethal_celsius >= -100),
    damage_celsius REAL NOT NULL CHECK (damage_celsius >= lethal_celsius),
    safe_night_celsius REAL NOT NULL CHECK (safe_night_celsius BETWEEN damage_celsius AND 60),
    heat_limit_celsius REAL NOT NULL CHECK (heat_limit_celsius BETWEEN -60 AND 100),
    light_to_survive_moles REAL NOT NULL CHECK (light_to_survive_moles >= 0),
    light_to_thrive_moles REAL NOT NULL CHECK (light_to_thrive_moles BETWEEN light_to_survive_moles AND 100),
    must_dry INTEGER NOT NULL CHECK (must_dry IN (0, 1)),
    hazardous INTEGER NOT NULL CHECK (hazardous IN (0, 1)),
    sulks INTEGER NOT NULL CHECK (sulks IN (0, 1)),
    pot_kilograms REAL NOT NULL CHECK (pot_kilograms > 0),
    spot_id INTEGER REFERENCES spots (id),
    pinned_spot_id INTEGER REFERENCES spots (id)
) STRICT;
CREATE INDEX plants_by_spot ON plants (spot_id);

-- What happened. A row is never changed; what was wrong is followed by another row.
CREATE TABLE events (
    id INTEGER PRIMARY KEY,
    plant_id INTEGER NOT NULL REFERENCES plants (id),
    kind TEXT NOT NULL CHECK (kind IN
        ('moved', 'watered', 'fed', 'repotted', 'pruned', 'flowered', 'inspected', 'noted')),
    spot_id INTEGER REFERENCES spots (id),
    happened_on TEXT NOT NULL CHECK (happened_on IS date(happened_on)),
    entered_at TEXT NOT NULL CHECK (entered_at IS strftime('%Y-%m-%dT%H:%M:%SZ', entered_at)),
    note TEXT NOT NULL,
    CHECK ((kind = 'moved') = (spot_id IS NOT NULL))
) STRICT;
CREATE INDEX events_by_plant ON events (plant_id, happened_on, id);

-- Where plants have been, from their moves. The last stay of a plant has no end.
CREATE VIEW actual_stays AS
    SELECT plant_id, spot_id, happened_on AS from_on,
           date(lead(happened_on) OVER (PARTITION BY plant_id ORDER BY happened_on, id), '-1 day') AS to_on
    FROM events WHERE kind = 'moved';

-- A plan that the grower accepted: the nights of each plant, both dates included.
CREATE TABLE planned_stays (
    id INTEGER PRIMARY KEY,
    plant_id INTEGER NOT NULL REFERENCES plants (id),
    spot_id INTEGER NOT NULL REFERENCES spots (id),
    from_on TEXT NOT NULL CHECK (from_on IS date(from_on)),
    to_on TEXT NOT NULL CHECK (to_on IS date(to_on) AND to_on >= from_on),
    why TEXT NOT NULL,
    planned_at TEXT NOT NULL CHECK (planned_at IS strftime('%Y-%m-%dT%H:%M:%SZ', planned_at))
) STRICT;
CREATE INDEX planned_stays_by_plant ON planned_stays (plant_id, from_on);
