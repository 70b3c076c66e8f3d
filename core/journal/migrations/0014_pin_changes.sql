-- Pins are undone as all else is. A pin is set or taken back by a change of the household (an event with its rows in
-- changed_rows); here stands which pins it set, and which it took back. Pins of before this step are in no order of
-- entry and stay as they are.

CREATE TABLE pin_changes (
    id INTEGER PRIMARY KEY,
    event_id INTEGER NOT NULL REFERENCES events (id),
    pin_id INTEGER NOT NULL REFERENCES pins (id),
    holds INTEGER NOT NULL CHECK (holds IN (0, 1))
) STRICT;
CREATE INDEX pin_changes_by_event ON pin_changes (event_id, id);
