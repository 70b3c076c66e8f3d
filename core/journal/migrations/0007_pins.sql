-- Nights on which the grower keeps a plant at a spot by hand. A pin is taken back by the date of its taking back.

CREATE TABLE pins (
    id INTEGER PRIMARY KEY,
    plant_id INTEGER NOT NULL REFERENCES plants (id),
    spot_id INTEGER NOT NULL REFERENCES spots (id),
    from_on TEXT NOT NULL CHECK (from_on IS date(from_on)),
    to_on TEXT NOT NULL CHECK (to_on IS date(to_on) AND to_on >= from_on),
    entered_at TEXT NOT NULL CHECK (entered_at IS strftime('%Y-%m-%dT%H:%M:%SZ', entered_at)),
    taken_back_at TEXT CHECK (taken_back_at IS strftime('%Y-%m-%dT%H:%M:%SZ', taken_back_at))
) STRICT;
CREATE INDEX pins_by_plant ON pins (plant_id, from_on);
