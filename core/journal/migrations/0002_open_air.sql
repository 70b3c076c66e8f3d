-- Whether a plant is grown outdoors while the nights allow. Plants entered before this step are taken as not.

ALTER TABLE plants ADD COLUMN wants_open_air INTEGER NOT NULL DEFAULT 0 CHECK (wants_open_air IN (0, 1));
