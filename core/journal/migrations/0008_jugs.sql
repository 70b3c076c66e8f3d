-- Jugs and cans that the household measures water with. A jug whose size is given anew is a new row: the latest of a
-- name counts.

CREATE TABLE jugs (
    id INTEGER PRIMARY KEY,
    name TEXT NOT NULL CHECK (length(name) BETWEEN 1 AND 40),
    volume_litres REAL NOT NULL CHECK (volume_litres > 0 AND volume_litres <= 1000),
    entered_at TEXT NOT NULL CHECK (entered_at IS strftime('%Y-%m-%dT%H:%M:%SZ', entered_at))
) STRICT;

CREATE VIEW jugs_that_count AS
    SELECT name, volume_litres FROM jugs
    WHERE id IN (SELECT max(id) FROM jugs GROUP BY lower(name)) ORDER BY lower(name);
