-- Version 5: what lifters were given is a fact. The card may have changed since or be gone, so it is
-- no reference. Figures are a value and the two ends of its 90 % interval, or all NULL.

CREATE TABLE given_day (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    lifter_id INTEGER NOT NULL REFERENCES lifter,
    day TEXT NOT NULL CHECK (day IS date(day)),
    number INTEGER NOT NULL CHECK (number >= 1), -- in the order given; the last holds
    given_by TEXT NOT NULL CHECK (given_by IN
        ('hand_out', 'print', 'word', 'first_set', 'day_passed', 'reconstructed')),
    at TEXT NOT NULL CHECK (strftime('%Y-%m-%dT%H:%M:%SZ', at) IS at), -- UTC
    UNIQUE (lifter_id, day, number)
) STRICT;

CREATE INDEX given_day_day ON given_day (day);

CREATE TABLE given_card (
    given_day_id INTEGER NOT NULL REFERENCES given_day ON DELETE CASCADE,
    position INTEGER NOT NULL CHECK (position >= 0),
    card_id INTEGER NOT NULL CHECK (card_id > 0),
    variation_id INTEGER NOT NULL REFERENCES variation,
    set_line TEXT NOT NULL,
    max_kg REAL CHECK (max_kg > 0), -- of the estimate that the loads came from
    max_low90 REAL CHECK ((max_low90 IS NULL) = (max_kg IS NULL)),
    max_high90 REAL CHECK ((max_high90 IS NULL) = (max_kg IS NULL)),
    last_set TEXT CHECK (last_set IS date(last_set) AND (last_set IS NULL) = (max_kg IS NULL)),
    PRIMARY KEY (given_day_id, position)
) STRICT, WITHOUT ROWID;

CREATE INDEX given_card_card ON given_card (card_id);

CREATE TABLE given_line (
    given_day_id INTEGER NOT NULL,
    card_position INTEGER NOT NULL,
    position INTEGER NOT NULL CHECK (position >= 0),
    load_kg REAL CHECK (load_kg > 0),
    plates TEXT NOT NULL, -- on each side: pairs x kg with spaces between, "2x20 1x2.5"
    target_kg REAL,
    target_low90 REAL CHECK ((target_low90 IS NULL) = (target_kg IS NULL)),
    target_high90 REAL CHECK ((target_high90 IS NULL) = (target_kg IS NULL)),
    first_reserve REAL,
    first_low90 REAL CHECK ((first_low90 IS NULL) = (first_reserve IS NULL)),
    first_high90 REAL CHECK ((first_high90 IS NULL) = (first_reserve IS NULL)),
    last_reserve REAL,
    last_low90 REAL CHECK ((last_low90 IS NULL) = (last_reserve IS NULL)),
    last_high90 REAL CHECK ((last_high90 IS NULL) = (last_reserve IS NULL)),
    all_made REAL CHECK (all_made BETWEEN 0 AND 1),
    first_made REAL CHECK (first_made BETWEEN 0 AND 1),
    hard_sets_after REAL NOT NULL CHECK (hard_sets_after >= 0),
    why TEXT NOT NULL,
    caution TEXT NOT NULL,
    PRIMARY KEY (given_day_id, card_position, position),
    FOREIGN KEY (given_day_id, card_position) REFERENCES given_card ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

-- Which planned set a logged one answers: of a card, counted through its lines from 0.
ALTER TABLE set_entry ADD COLUMN answers_card INTEGER CHECK (answers_card > 0);
ALTER TABLE set_entry ADD COLUMN answers_set INTEGER CHECK (
    answers_set >= 0 AND (answers_set IS NULL) = (answers_card IS NULL));
