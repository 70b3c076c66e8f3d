-- What was done with photos can be undone in the order of entry, as all else can: a photo that came in, one that was
-- assigned to a plant, taken out of the lists or dated by hand, and a photo that was chosen as a plant's picture.
-- What was done before this step is in no order of entry and stays as it is.

-- The photo that stands for a plant; without one its drawing does.
CREATE TABLE plant_pictures (
    id INTEGER PRIMARY KEY,
    plant_id INTEGER NOT NULL REFERENCES plants (id),
    photo_id INTEGER REFERENCES photos (id),
    entered_at TEXT NOT NULL CHECK (entered_at IS strftime('%Y-%m-%dT%H:%M:%SZ', entered_at))
) STRICT;
CREATE INDEX plant_pictures_by_plant ON plant_pictures (plant_id, id);

-- Whether a row is undone: its latest row here decides, and none means that it counts.
CREATE TABLE photo_undos (
    id INTEGER PRIMARY KEY,
    photo_id INTEGER NOT NULL REFERENCES photos (id),
    undone INTEGER NOT NULL CHECK (undone IN (0, 1)),
    entered_at TEXT NOT NULL CHECK (entered_at IS strftime('%Y-%m-%dT%H:%M:%SZ', entered_at))
) STRICT;
CREATE INDEX photo_undos_by_photo ON photo_undos (photo_id, id);
CREATE TABLE photo_date_undos (
    id INTEGER PRIMARY KEY,
    photo_date_id INTEGER NOT NULL REFERENCES photo_dates (id),
    undone INTEGER NOT NULL CHECK (undone IN (0, 1)),
    entered_at TEXT NOT NULL CHECK (entered_at IS strftime('%Y-%m-%dT%H:%M:%SZ', entered_at))
) STRICT;
CREATE INDEX photo_date_undos_by_date ON photo_date_undos (photo_date_id, id);
CREATE TABLE photo_plant_undos (
    id INTEGER PRIMARY KEY,
    photo_plant_id INTEGER NOT NULL REFERENCES photo_plants (id),
    undone INTEGER NOT NULL CHECK (undone IN (0, 1)),
    entered_at TEXT NOT NULL CHECK (entered_at IS strftime('%Y-%m-%dT%H:%M:%SZ', entered_at))
) STRICT;
CREATE INDEX photo_plant_undos_by_assignment ON photo_plant_undos (photo_plant_id, id);
CREATE TABLE photo_withdrawal_undos (
    id INTEGER PRIMARY KEY,
    photo_withdrawal_id INTEGER NOT NULL REFERENCES photo_withdrawals (id),
    undone INTEGER NOT NULL CHECK (undone IN (0, 1)),
    entered_at TEXT NOT NULL CHECK (entered_at IS strftime('%Y-%m-%dT%H:%M:%SZ', entered_at))
) STRICT;
CREATE INDEX photo_withdrawal_undos_by_withdrawal ON photo_withdrawal_undos (photo_withdrawal_id, id);
CREATE TABLE plant_picture_undos (
    id INTEGER PRIMARY KEY,
    plant_picture_id INTEGER NOT NULL REFERENCES plant_pictures (id),
    undone INTEGER NOT NULL CHECK (undone IN (0, 1)),
    entered_at TEXT NOT NULL CHECK (entered_at IS strftime('%Y-%m-%dT%H:%M:%SZ', entered_at))
) STRICT;
CREATE INDEX plant_picture_undos_by_picture ON plant_picture_undos (plant_picture_id, id);

DROP VIEW entry_states;
CREATE VIEW entry_states AS
    SELECT id, kind, row_id, coalesce(CASE kind
        WHEN 'event' THEN
            (SELECT undone FROM event_undos u WHERE event_id = row_id ORDER BY u.id DESC LIMIT 1)
        WHEN 'measurement' THEN
            (SELECT undone FROM measurement_undos u WHERE measurement_id = row_id ORDER BY u.id DESC LIMIT 1)
        WHEN 'reading' THEN
            (SELECT undone FROM reading_undos u WHERE reading_id = row_id ORDER BY u.id DESC LIMIT 1)
        WHEN 'photo' THEN
            (SELECT undone FROM photo_undos u WHERE photo_id = row_id ORDER BY u.id DESC LIMIT 1)
        WHEN 'photo_date' THEN
            (SELECT undone FROM photo_date_undos u WHERE photo_date_id = row_id ORDER BY u.id DESC LIMIT 1)
        WHEN 'photo_plant' THEN
            (SELECT undone FROM photo_plant_undos u WHERE photo_plant_id = row_id ORDER BY u.id DESC LIMIT 1)
        WHEN 'photo_withdrawal' THEN
            (SELECT undone FROM photo_withdrawal_undos u WHERE photo_withdrawal_id = row_id ORDER BY u.id DESC LIMIT 1)
        WHEN 'plant_picture' THEN
            (SELECT undone FROM plant_picture_undos u WHERE plant_picture_id = row_id ORDER BY u.id DESC LIMIT 1)
        END, 0) AS undone
    FROM entries;

DROP VIEW photos_that_count;
CREATE VIEW photos_that_count AS
    SELECT p.id, sha256, extension, size_bytes, width_px, height_px,
           coalesce(d.taken_at, p.taken_at) AS taken_at,
           iif(d.id IS NULL, zone_offset_minutes, NULL) AS zone_offset_minutes,
           iif(d.id IS NULL, taken_from, 'given') AS taken_from,
           original_name, latitude_degrees, longitude_degrees, p.entered_at
    FROM photos p
    LEFT JOIN photo_dates d ON d.id = (
        SELECT max(id) FROM photo_dates WHERE photo_id = p.id AND NOT coalesce(
            (SELECT undone FROM photo_date_undos u WHERE photo_date_id = photo_dates.id ORDER BY u.id DESC LIMIT 1), 0))
    WHERE NOT coalesce(
        (SELECT undone FROM photo_undos u WHERE u.photo_id = p.id ORDER BY u.id DESC LIMIT 1), 0)
      AND NOT coalesce(
        (SELECT withdrawn FROM photo_withdrawals w WHERE w.photo_id = p.id AND NOT coalesce(
            (SELECT undone FROM photo_withdrawal_undos u WHERE photo_withdrawal_id = w.id ORDER BY u.id DESC LIMIT 1), 0)
         ORDER BY w.id DESC LIMIT 1), 0);

DROP VIEW photo_plants_that_count;
CREATE VIEW photo_plants_that_count AS
    SELECT photo_id, plant_id FROM photo_plants a
    WHERE shows = 1 AND id = (SELECT max(b.id) FROM photo_plants b
        WHERE b.photo_id = a.photo_id AND b.plant_id = a.plant_id AND NOT coalesce(
            (SELECT undone FROM photo_plant_undos u WHERE photo_plant_id = b.id ORDER BY u.id DESC LIMIT 1), 0));

-- A picture that was taken out of the lists, or shows the plant no longer, does not stand for it.
CREATE VIEW plant_pictures_that_count AS
    SELECT plant_id, photo_id FROM plant_pictures a
    WHERE id = (SELECT max(b.id) FROM plant_pictures b WHERE b.plant_id = a.plant_id AND NOT coalesce(
            (SELECT undone FROM plant_picture_undos u WHERE plant_picture_id = b.id ORDER BY u.id DESC LIMIT 1), 0))
      AND photo_id IN (SELECT id FROM photos_that_count)
      AND EXISTS (SELECT 1 FROM photo_plants_that_count s WHERE s.photo_id = a.photo_id AND s.plant_id = a.plant_id);
