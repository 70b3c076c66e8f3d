-- Photos: what is known of each file that lies at photos/ab/SHA256.EXTENSION, the plants it shows, and corrections of
-- its date. Nothing here is ever changed: of dates, assignments and withdrawals the latest row counts.

CREATE TABLE photos (
    id INTEGER PRIMARY KEY,
    sha256 TEXT NOT NULL UNIQUE CHECK (length(sha256) = 64 AND sha256 NOT GLOB '*[^0-9a-f]*'),
    extension TEXT NOT NULL CHECK (extension IN ('jpg', 'png', 'webp', 'heic')),
    size_bytes INTEGER NOT NULL CHECK (size_bytes > 0),
    width_px INTEGER NOT NULL CHECK (width_px > 0),
    height_px INTEGER NOT NULL CHECK (height_px > 0),
    taken_at TEXT NOT NULL CHECK (taken_at IS strftime('%Y-%m-%dT%H:%M:%S', taken_at)),
    zone_offset_minutes INTEGER CHECK (zone_offset_minutes BETWEEN -900 AND 900),
    taken_from TEXT NOT NULL CHECK (taken_from IN ('exif', 'file_time', 'given')),
    original_name TEXT NOT NULL,
    latitude_degrees REAL CHECK (latitude_degrees BETWEEN -90 AND 90),
    longitude_degrees REAL CHECK (longitude_degrees BETWEEN -180 AND 180),
    entered_at TEXT NOT NULL CHECK (entered_at IS strftime('%Y-%m-%dT%H:%M:%SZ', entered_at)),
    CHECK ((latitude_degrees IS NULL) = (longitude_degrees IS NULL))
) STRICT;

CREATE TABLE photo_dates (
    id INTEGER PRIMARY KEY,
    photo_id INTEGER NOT NULL REFERENCES photos (id),
    taken_at TEXT NOT NULL CHECK (taken_at IS strftime('%Y-%m-%dT%H:%M:%S', taken_at)),
    entered_at TEXT NOT NULL CHECK (entered_at IS strftime('%Y-%m-%dT%H:%M:%SZ', entered_at))
) STRICT;
CREATE INDEX photo_dates_by_photo ON photo_dates (photo_id, id);

-- A photo may show several plants, and an assignment may be taken back.
CREATE TABLE photo_plants (
    id INTEGER PRIMARY KEY,
    photo_id INTEGER NOT NULL REFERENCES photos (id),
    plant_id INTEGER NOT NULL REFERENCES plants (id),
    shows INTEGER NOT NULL CHECK (shows IN (0, 1)),
    entered_at TEXT NOT NULL CHECK (entered_at IS strftime('%Y-%m-%dT%H:%M:%SZ', entered_at))
) STRICT;
CREATE INDEX photo_plants_by_photo ON photo_plants (photo_id, plant_id, id);
CREATE INDEX photo_plants_by_plant ON photo_plants (plant_id, photo_id, id);

-- A photo may be taken out of the lists and brought back; its file stays.
CREATE TABLE photo_withdrawals (
    id INTEGER PRIMARY KEY,
    photo_id INTEGER NOT NULL REFERENCES photos (id),
    withdrawn INTEGER NOT NULL CHECK (withdrawn IN (0, 1)),
    entered_at TEXT NOT NULL CHECK (entered_at IS strftime('%Y-%m-%dT%H:%M:%SZ', entered_at))
) STRICT;
CREATE INDEX photo_withdrawals_by_photo ON photo_withdrawals (photo_id, id);

CREATE VIEW photos_that_count AS
    SELECT p.id, sha256, extension, size_bytes, width_px, height_px,
           coalesce(d.taken_at, p.taken_at) AS taken_at,
           iif(d.id IS NULL, zone_offset_minutes, NULL) AS zone_offset_minutes,
           iif(d.id IS NULL, taken_from, 'given') AS taken_from,
           original_name, latitude_degrees, longitude_degrees, p.entered_at
    FROM photos p
    LEFT JOIN photo_dates d ON d.id = (SELECT max(id) FROM photo_dates WHERE photo_id = p.id)
    WHERE NOT coalesce(
        (SELECT withdrawn FROM photo_withdrawals w WHERE w.photo_id = p.id ORDER BY w.id DESC LIMIT 1), 0);
CREATE VIEW photo_plants_that_count AS
    SELECT photo_id, plant_id FROM photo_plants a
    WHERE shows = 1 AND NOT EXISTS (SELECT 1 FROM photo_plants b
        WHERE b.photo_id = a.photo_id AND b.plant_id = a.plant_id AND b.id > a.id);
