-- Version 1 of the roster file. Never edited once released: a change is a script of its own.
-- Ids are given out by the program. Names of the enumerations are those of the exchange formats.
-- The checks are the rules of problems() once more, so that nothing unsound is stored, whoever writes.
-- Variations have no index from the rows that use them: they are updated in place and hardly ever
-- removed, and the index would cost a third of the file.

CREATE TABLE lifter (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    name TEXT NOT NULL CHECK (length(trim(name)) > 0),
    name_key TEXT NOT NULL UNIQUE, -- folded by the program: no two names differ by case alone
    sex TEXT NOT NULL CHECK (sex IN ('', 'f', 'm')),
    birth_year INTEGER CHECK (birth_year >= 1900),
    bodyweight_kg REAL CHECK (bodyweight_kg BETWEEN 20 AND 400),
    unit TEXT NOT NULL CHECK (unit IN ('kg', 'lb')),
    touch_style TEXT NOT NULL CHECK (touch_style IN ('undecided', 'soft', 'sinking')),
    grip_note TEXT NOT NULL,
    bar_kg REAL NOT NULL CHECK (bar_kg > 0 AND bar_kg <= 50),
    collars_kg REAL NOT NULL CHECK (collars_kg BETWEEN 0 AND 10),
    meet_date TEXT CHECK (meet_date IS date(meet_date)),
    notes TEXT NOT NULL,
    archived INTEGER NOT NULL CHECK (archived IN (0, 1))
) STRICT;

CREATE TABLE lifter_plate (
    lifter_id INTEGER NOT NULL REFERENCES lifter ON DELETE CASCADE,
    position INTEGER NOT NULL CHECK (position >= 0),
    plate_kg REAL NOT NULL CHECK (plate_kg > 0 AND plate_kg <= 100),
    pairs INTEGER NOT NULL CHECK (pairs >= 1),
    PRIMARY KEY (lifter_id, position)
) STRICT, WITHOUT ROWID;

CREATE TABLE lifter_group (
    lifter_id INTEGER NOT NULL REFERENCES lifter ON DELETE CASCADE,
    position INTEGER NOT NULL CHECK (position >= 0),
    name TEXT NOT NULL CHECK (length(trim(name)) > 0),
    PRIMARY KEY (lifter_id, position),
    UNIQUE (lifter_id, name)
) STRICT, WITHOUT ROWID;

CREATE TABLE variation (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    code TEXT NOT NULL UNIQUE CHECK (code GLOB '[a-z0-9]*' AND code NOT GLOB '*[^a-z0-9_]*'),
    name TEXT NOT NULL CHECK (length(trim(name)) > 0),
    lift TEXT NOT NULL CHECK (lift IN ('bench', 'squat', 'deadlift')),
    competition INTEGER NOT NULL CHECK (competition IN (0, 1)),
    serves TEXT NOT NULL CHECK (serves IN ('both', 'soft', 'sinking')),
    stance TEXT NOT NULL,
    purpose TEXT NOT NULL,
    tempo_lowering INTEGER NOT NULL CHECK (tempo_lowering BETWEEN 0 AND 20),
    tempo_pause INTEGER NOT NULL CHECK (tempo_pause BETWEEN 0 AND 20),
    tempo_lifting INTEGER NOT NULL CHECK (tempo_lifting BETWEEN 0 AND 20),
    reps_low INTEGER NOT NULL CHECK (reps_low >= 1),
    reps_high INTEGER NOT NULL CHECK (reps_high BETWEEN reps_low AND 50),
    ratio REAL NOT NULL CHECK (ratio BETWEEN 0.2 AND 2),
    ratio_spread REAL NOT NULL CHECK (ratio_spread BETWEEN 0 AND 0.5),
    ratio_source TEXT NOT NULL,
    rep_cost REAL NOT NULL CHECK (rep_cost BETWEEN 0.25 AND 4),
    fatigue TEXT NOT NULL CHECK (fatigue IN ('low', 'moderate', 'high')),
    spares TEXT NOT NULL, -- body areas with spaces between
    when_to_use TEXT NOT NULL,
    cautions TEXT NOT NULL,
    retired INTEGER NOT NULL CHECK (retired IN (0, 1)),
    CHECK (competition = 0 OR ratio = 1)
) STRICT;

-- One competition variation a lift: the ratios refer to it.
CREATE UNIQUE INDEX variation_competition ON variation (lift) WHERE competition = 1;

CREATE TABLE card (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    lifter_id INTEGER NOT NULL REFERENCES lifter,
    day TEXT NOT NULL CHECK (day IS date(day)),
    position INTEGER NOT NULL CHECK (position >= 0),
    variation_id INTEGER NOT NULL REFERENCES variation,
    set_line TEXT NOT NULL,
    note TEXT NOT NULL,
    UNIQUE (lifter_id, day, position)
) STRICT;

CREATE TABLE session (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    lifter_id INTEGER NOT NULL REFERENCES lifter,
    day TEXT NOT NULL CHECK (day IS date(day)),
    number INTEGER NOT NULL CHECK (number >= 1),
    readiness INTEGER CHECK (readiness BETWEEN 1 AND 5),
    UNIQUE (lifter_id, day, number)
) STRICT;

CREATE TABLE set_entry (
    session_id INTEGER NOT NULL REFERENCES session ON DELETE CASCADE,
    position INTEGER NOT NULL CHECK (position >= 0),
    variation_id INTEGER NOT NULL REFERENCES variation,
    load_kg REAL NOT NULL CHECK (load_kg > 0 AND load_kg <= 700),
    reps_planned INTEGER CHECK (reps_planned BETWEEN 1 AND 100),
    reps_done INTEGER NOT NULL CHECK (reps_done BETWEEN 0 AND 100),
    rpe REAL CHECK (rpe BETWEEN 1 AND 10 AND rpe * 2 = round(rpe * 2)),
    failed INTEGER NOT NULL CHECK (failed IN (0, 1)),
    velocity_ms REAL CHECK (velocity_ms > 0 AND velocity_ms <= 3),
    touch INTEGER CHECK (touch BETWEEN 1 AND 5),
    note TEXT NOT NULL,
    PRIMARY KEY (session_id, position),
    CHECK (reps_done > 0 OR failed = 1)
) STRICT, WITHOUT ROWID;
