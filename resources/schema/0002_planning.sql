-- Version 2: blocks and their templates, check-ins, and findings of the plan checks waved through.

CREATE TABLE block_template (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    name TEXT NOT NULL CHECK (length(trim(name)) > 0),
    version INTEGER NOT NULL CHECK (version >= 1),
    purpose TEXT NOT NULL,
    weeks INTEGER NOT NULL CHECK (weeks BETWEEN 1 AND 26),
    deload_weeks TEXT NOT NULL, -- numbers of weeks with spaces between
    UNIQUE (name, version)
) STRICT;

CREATE TABLE template_swap (
    template_id INTEGER NOT NULL REFERENCES block_template ON DELETE CASCADE,
    position INTEGER NOT NULL CHECK (position >= 0),
    soft TEXT NOT NULL CHECK (length(soft) > 0), -- codes, since templates travel between rosters
    sinking TEXT NOT NULL CHECK (length(sinking) > 0),
    PRIMARY KEY (template_id, position)
) STRICT, WITHOUT ROWID;

CREATE TABLE template_card (
    template_id INTEGER NOT NULL REFERENCES block_template ON DELETE CASCADE,
    position INTEGER NOT NULL CHECK (position >= 0), -- in the template
    key INTEGER NOT NULL,
    day_offset INTEGER NOT NULL CHECK (day_offset >= 0),
    day_position INTEGER NOT NULL CHECK (day_position >= 0),
    code TEXT NOT NULL CHECK (length(code) > 0),
    set_line TEXT NOT NULL,
    note TEXT NOT NULL,
    PRIMARY KEY (template_id, position),
    UNIQUE (template_id, key)
) STRICT, WITHOUT ROWID;

CREATE TABLE block (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    lifter_id INTEGER NOT NULL REFERENCES lifter,
    name TEXT NOT NULL CHECK (length(trim(name)) > 0),
    purpose TEXT NOT NULL,
    start TEXT NOT NULL CHECK (start IS date(start)),
    weeks INTEGER NOT NULL CHECK (weeks BETWEEN 1 AND 26),
    deload_weeks TEXT NOT NULL,
    template_id INTEGER REFERENCES block_template,
    UNIQUE (lifter_id, start)
) STRICT;

CREATE TABLE check_in (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    lifter_id INTEGER NOT NULL REFERENCES lifter,
    day TEXT NOT NULL CHECK (day IS date(day)),
    sleep INTEGER CHECK (sleep BETWEEN 1 AND 5),
    stress INTEGER CHECK (stress BETWEEN 1 AND 5),
    motivation INTEGER CHECK (motivation BETWEEN 1 AND 5),
    pain INTEGER NOT NULL CHECK (pain IN (0, 1)),
    pain_area TEXT NOT NULL CHECK (pain = 1 OR pain_area = ''), -- '' = elsewhere
    pain_words TEXT NOT NULL CHECK (pain = 1 OR pain_words = ''),
    note TEXT NOT NULL,
    UNIQUE (lifter_id, day)
) STRICT;

CREATE TABLE check_in_soreness (
    check_in_id INTEGER NOT NULL REFERENCES check_in ON DELETE CASCADE,
    area TEXT NOT NULL CHECK (length(area) > 0),
    answer INTEGER NOT NULL CHECK (answer BETWEEN 1 AND 5),
    PRIMARY KEY (check_in_id, area)
) STRICT, WITHOUT ROWID;

-- The card may be gone by now, so it is no reference.
CREATE TABLE waiver (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    lifter_id INTEGER NOT NULL REFERENCES lifter,
    rule TEXT NOT NULL CHECK (length(rule) > 0),
    card_id INTEGER NOT NULL CHECK (card_id >= 0), -- 0 = the week as a whole
    monday TEXT NOT NULL CHECK (monday IS date(monday)),
    lift TEXT NOT NULL CHECK (lift IN ('bench', 'squat', 'deadlift')),
    measure REAL NOT NULL,
    note TEXT NOT NULL,
    UNIQUE (lifter_id, rule, card_id, monday, lift)
) STRICT;
