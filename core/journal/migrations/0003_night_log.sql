-- The thermometer log and the forecasts that were kept to see how right they were. Rows are never changed: a
-- later one of the same night and spot (or day of issue and night) takes the place of the one before.
-- A night is named by the morning on which it ends. Sky and wind are '' where nothing was said.

CREATE TABLE readings (
    id INTEGER PRIMARY KEY,
    spot_id INTEGER NOT NULL REFERENCES spots (id),
    night_of TEXT NOT NULL CHECK (night_of IS date(night_of)),
    low_celsius REAL NOT NULL CHECK (low_celsius BETWEEN -90 AND 60),
    high_celsius REAL CHECK (high_celsius BETWEEN low_celsius AND 60),
    sky TEXT NOT NULL CHECK (sky IN ('', 'clear', 'cloudy')),
    wind TEXT NOT NULL CHECK (wind IN ('', 'calm', 'windy')),
    station_low_celsius REAL CHECK (station_low_celsius BETWEEN -90 AND 60),
    entered_at TEXT NOT NULL CHECK (entered_at IS strftime('%Y-%m-%dT%H:%M:%SZ', entered_at)),
    note TEXT NOT NULL
) STRICT;
CREATE INDEX readings_by_spot ON readings (spot_id, night_of, id);

CREATE TABLE forecasts (
    id INTEGER PRIMARY KEY,
    issued_on TEXT NOT NULL CHECK (issued_on IS date(issued_on)),
    night_of TEXT NOT NULL CHECK (night_of IS date(night_of) AND night_of >= issued_on),
    low_celsius REAL NOT NULL CHECK (low_celsius BETWEEN -90 AND 60),
    sky TEXT NOT NULL CHECK (sky IN ('', 'clear', 'cloudy')),
    wind TEXT NOT NULL CHECK (wind IN ('', 'calm', 'windy')),
    dew_point_celsius REAL CHECK (dew_point_celsius BETWEEN -90 AND 60),
    entered_at TEXT NOT NULL CHECK (entered_at IS strftime('%Y-%m-%dT%H:%M:%SZ', entered_at))
) STRICT;
CREATE INDEX forecasts_by_night ON forecasts (night_of, issued_on, id);

CREATE VIEW readings_that_count AS
    SELECT * FROM readings WHERE id IN (SELECT max(id) FROM readings GROUP BY spot_id, night_of);
CREATE VIEW forecasts_that_count AS
    SELECT * FROM forecasts WHERE id IN (SELECT max(id) FROM forecasts GROUP BY issued_on, night_of);
