-- Version 4: pain is asked and answered with yes or no; a lifter may be said to be an adult, and
-- since when they train; what a variation works has a grade for every area.

ALTER TABLE check_in ADD COLUMN pain_free INTEGER NOT NULL DEFAULT 0 CHECK (
    pain_free IN (0, 1) AND (pain_free = 0 OR pain = 0));

-- A week of the whole roster is read by its days, and with it the pains that stand, however old.
CREATE INDEX check_in_day ON check_in (day);
CREATE INDEX check_in_pain ON check_in (day) WHERE pain = 1;

ALTER TABLE lifter ADD COLUMN is_adult INTEGER NOT NULL DEFAULT 0 CHECK (is_adult IN (0, 1));
ALTER TABLE lifter ADD COLUMN training_since TEXT CHECK (training_since IS date(training_since));

-- Every area with its grade: not, some or much. What was spared is worked one grade less than the
-- lift works it.
ALTER TABLE variation ADD COLUMN work TEXT NOT NULL DEFAULT '';
UPDATE variation SET work = CASE lift
    WHEN 'bench' THEN
        'back:' || iif(' ' || spares || ' ' LIKE '% back %', 'not', 'some')
        || ' legs:' || iif(' ' || spares || ' ' LIKE '% legs %', 'not', 'some')
        || ' chest:' || iif(' ' || spares || ' ' LIKE '% chest %', 'some', 'much')
        || ' shoulders:' || iif(' ' || spares || ' ' LIKE '% shoulders %', 'some', 'much')
        || ' elbows:' || iif(' ' || spares || ' ' LIKE '% elbows %', 'some', 'much')
        || ' wrists:some'
    ELSE
        'back:' || iif(' ' || spares || ' ' LIKE '% back %', 'some', 'much')
        || ' legs:' || iif(' ' || spares || ' ' LIKE '% legs %', 'some', 'much')
        || ' chest:not'
        || ' shoulders:' || iif(' ' || spares || ' ' LIKE '% shoulders %', 'not', 'some')
        || ' elbows:' || iif(' ' || spares || ' ' LIKE '% elbows %', 'not', 'some')
        || ' wrists:some'
    END;
ALTER TABLE variation DROP COLUMN spares;
