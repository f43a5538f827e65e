-- Version 6: set lines on one row are parted by `then`. What was parted by a slash, which is no sign
-- of a set line otherwise, goes on rows of its own, as the program writes it; notes, which run from
-- a semicolon to the end of their row, stay as they are. Cards, what was given of them and versions
-- of templates change alike, so that what was equal stays equal.
-- Variations: assistance work, which is no evidence of the max of its lift, and the share of the
-- max that is usual where speed is the aim.

CREATE TEMP TABLE mended AS
WITH RECURSIVE
    line (was) AS (
        SELECT set_line FROM card WHERE set_line LIKE '%/%'
        UNION SELECT set_line FROM given_card WHERE set_line LIKE '%/%'
        UNION SELECT set_line FROM template_card WHERE set_line LIKE '%/%'),
    step (was, done, rest, sets) AS ( -- row by row; the sets of the next one end before its note
        SELECT was, '', was || char(10), instr(replace(was || char(10), ';', char(10)), char(10)) - 1
        FROM line
        UNION ALL
        SELECT was,
            done || replace(substr(rest, 1, sets), '/', char(10))
                || substr(rest, sets + 1, instr(rest, char(10)) - sets),
            substr(rest, instr(rest, char(10)) + 1),
            instr(replace(substr(rest, instr(rest, char(10)) + 1), ';', char(10)), char(10)) - 1
        FROM step WHERE rest <> '')
SELECT was, substr(done, 1, length(done) - 1) AS now FROM step WHERE rest = '';

UPDATE card SET set_line = (SELECT now FROM mended WHERE was = set_line)
WHERE set_line IN (SELECT was FROM mended);
UPDATE given_card SET set_line = (SELECT now FROM mended WHERE was = set_line)
WHERE set_line IN (SELECT was FROM mended);
UPDATE template_card SET set_line = (SELECT now FROM mended WHERE was = set_line)
WHERE set_line IN (SELECT was FROM mended);
DROP TABLE mended;

ALTER TABLE variation ADD COLUMN assistance INTEGER NOT NULL DEFAULT 0 CHECK (
    assistance IN (0, 1) AND (assistance = 0 OR competition = 0));
ALTER TABLE variation ADD COLUMN usual_percent REAL CHECK (usual_percent BETWEEN 1 AND 100);
UPDATE variation SET usual_percent = 60
WHERE code = 'speed' AND when_to_use LIKE '%half to two thirds of the max%';
-- Words of the built-in catalogue that promised too much or named scientists, where the coach has
-- not written others.
UPDATE variation SET cautions = replace(cautions, 'a bounce hides a sinking bar and trains nothing.',
    'a bounce does the hardest part of the lift for the lifter and hides a sinking bar.')
WHERE code = 'touch_and_go';
UPDATE variation SET cautions = replace(cautions, 'Not a way round shoulder pain: refer that',
    'It still works the shoulders: no way round a sore or painful one.')
WHERE code = 'board_5cm';
UPDATE variation SET ratio_source = replace(replace(ratio_source,
    'direction agrees with Wilk et al. 2020 (slower lowering, lower max)',
    'published trials agree that a slower lowering means a lower max'),
    'direction agrees with Lockie et al. 2017',
    'published trials agree that a narrow grip means a lower max');
