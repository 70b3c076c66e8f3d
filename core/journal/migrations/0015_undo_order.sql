-- One order of all undos. Each kind keeps its own in a table of its own, and none of them says which came last of all: what is
-- redone is what was undone last. Undos of before this step come in by their moment; of one moment the row that was entered
-- first counts as the one undone last, since what came together was undone from the last to the first.

CREATE TABLE undo_order (
    id INTEGER PRIMARY KEY,
    kind TEXT NOT NULL CHECK (kind <> ''),
    row_id INTEGER NOT NULL
) STRICT;
INSERT INTO undo_order (kind, row_id)
    SELECT kind, row_id FROM (
        SELECT 'event' AS kind, event_id AS row_id, max(entered_at) OVER (ORDER BY id) AS entered, undone FROM event_undos
        UNION ALL
        SELECT 'measurement', measurement_id, max(entered_at) OVER (ORDER BY id), undone FROM measurement_undos
        UNION ALL
        SELECT 'reading', reading_id, max(entered_at) OVER (ORDER BY id), undone FROM reading_undos
        UNION ALL
        SELECT 'photo', photo_id, max(entered_at) OVER (ORDER BY id), undone FROM photo_undos
        UNION ALL
        SELECT 'photo_date', photo_date_id, max(entered_at) OVER (ORDER BY id), undone FROM photo_date_undos
        UNION ALL
        SELECT 'photo_plant', photo_plant_id, max(entered_at) OVER (ORDER BY id), undone FROM photo_plant_undos
        UNION ALL
        SELECT 'photo_withdrawal', photo_withdrawal_id, max(entered_at) OVER (ORDER BY id), undone FROM photo_withdrawal_undos
        UNION ALL
        SELECT 'plant_picture', plant_picture_id, max(entered_at) OVER (ORDER BY id), undone FROM plant_picture_undos) AS undos
        LEFT JOIN entries USING (kind, row_id)
    WHERE undone = 1
    ORDER BY entered, entries.id DESC;
CREATE INDEX undo_order_by_row ON undo_order (kind, row_id, id);
CREATE TRIGGER events_undone AFTER INSERT ON event_undos WHEN NEW.undone = 1 BEGIN
    INSERT INTO undo_order (kind, row_id) VALUES ('event', NEW.event_id);
END;
CREATE TRIGGER measurements_undone AFTER INSERT ON measurement_undos WHEN NEW.undone = 1 BEGIN
    INSERT INTO undo_order (kind, row_id) VALUES ('measurement', NEW.measurement_id);
END;
CREATE TRIGGER readings_undone AFTER INSERT ON reading_undos WHEN NEW.undone = 1 BEGIN
    INSERT INTO undo_order (kind, row_id) VALUES ('reading', NEW.reading_id);
END;
CREATE TRIGGER photos_undone AFTER INSERT ON photo_undos WHEN NEW.undone = 1 BEGIN
    INSERT INTO undo_order (kind, row_id) VALUES ('photo', NEW.photo_id);
END;
CREATE TRIGGER photo_dates_undone AFTER INSERT ON photo_date_undos WHEN NEW.undone = 1 BEGIN
    INSERT INTO undo_order (kind, row_id) VALUES ('photo_date', NEW.photo_date_id);
END;
CREATE TRIGGER photo_plants_undone AFTER INSERT ON photo_plant_undos WHEN NEW.undone = 1 BEGIN
    INSERT INTO undo_order (kind, row_id) VALUES ('photo_plant', NEW.photo_plant_id);
END;
CREATE TRIGGER photo_withdrawals_undone AFTER INSERT ON photo_withdrawal_undos WHEN NEW.undone = 1 BEGIN
    INSERT INTO undo_order (kind, row_id) VALUES ('photo_withdrawal', NEW.photo_withdrawal_id);
END;
CREATE TRIGGER plant_pictures_undone AFTER INSERT ON plant_picture_undos WHEN NEW.undone = 1 BEGIN
    INSERT INTO undo_order (kind, row_id) VALUES ('plant_picture', NEW.plant_picture_id);
END;
