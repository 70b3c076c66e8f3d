-- A station record that the grower imported: where it was kept, and its days as they were read.
-- One record a household; temperatures and rain in tenths, as the record has them, so that nothing is rounded twice.

CREATE TABLE own_record (
    id INTEGER PRIMARY KEY CHECK (id = 1),
    name TEXT NOT NULL CHECK (name <> ''),
    station TEXT NOT NULL,
    file_name TEXT NOT NULL,
    latitude_degrees REAL NOT NULL CHECK (latitude_degrees BETWEEN -90 AND 90),
    longitude_degrees REAL NOT NULL CHECK (longitude_degrees BETWEEN -180 AND 180),
    elevation_metres REAL NOT NULL CHECK (elevation_metres BETWEEN -500 AND 9000),
    imported_on TEXT NOT NULL CHECK (imported_on IS date(imported_on))
) STRICT;

CREATE TABLE own_record_days (
    happened_on TEXT PRIMARY KEY CHECK (happened_on IS date(happened_on)),
    low_celsius_tenths INTEGER CHECK (low_celsius_tenths BETWEEN -32766 AND 32766),
    high_celsius_tenths INTEGER CHECK (high_celsius_tenths BETWEEN -32766 AND 32766),
    rain_millimetre_tenths INTEGER CHECK (rain_millimetre_tenths BETWEEN -32766 AND 32766),
    CHECK (low_celsius_tenths IS NOT NULL OR high_celsius_tenths IS NOT NULL OR rain_millimetre_tenths IS NOT NULL)
) STRICT, WITHOUT ROWID;
