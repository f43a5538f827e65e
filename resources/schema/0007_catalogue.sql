-- Version 7: rows of the built-in catalogue that a roster made before them lacks, as they were when
-- they came. A roster that has a row of the code or of the name keeps its own, retired or not; a new
-- roster has no rows yet, and gets the whole catalogue after its schema.

WITH built_in (
    code, name, lift, competition, serves, stance, purpose, tempo_lowering, tempo_pause,
    tempo_lifting, reps_low, reps_high, ratio, ratio_spread, ratio_source, rep_cost, fatigue, work,
    assistance, usual_percent, when_to_use, cautions
) AS (VALUES
    ('board_10cm', 'Bench to a 10 cm board', 'bench', 0, 'both', '',
        'Half the way with more load still: the lockout, and the feel of weight above the max', 0,
        1, 0, 1, 5, 1.12, 0.06, 'common practice, no source', 0.95, 'moderate',
        'back:some legs:some chest:some shoulders:some elbows:much wrists:some', 0, NULL,
        'Weak lockout; a few weeks at a time, far from the meet',
        'More load than can be benched from the chest: spotters, not only safeties, and somebody to hold the board. Lower it onto the board, never drop it. It still works the shoulders: no way round a sore or painful one.'),
    ('floor_press', 'Floor press', 'bench', 0, 'both', '',
        'Lying on the floor: the upper arms stop the bar short of the chest, so that chest, arms and lockout work without leg drive or arch',
        0, 1, 0, 3, 8, 0.92, 0.06, 'common practice, no source', 1.0, 'moderate',
        'back:not legs:not chest:some shoulders:some elbows:much wrists:some', 0, NULL,
        'Weak lockout; days when back or legs are tired; a shorter way for shoulders that only tire at the bottom',
        'Let the upper arms settle on the floor, never drop onto the elbows. No way round a painful shoulder. Take the bar from a rack with safeties or have a spotter hand it over; a missed bar has nowhere to go.'),
    ('pin_press_lockout', 'Pin press at lockout', 'bench', 0, 'both', '',
        'From pins a hand''s breadth below straight arms, each rep from a dead stop: the last part of the press',
        0, 1, 0, 1, 5, 1.12, 0.08, 'common practice, no source', 1.0, 'moderate',
        'back:some legs:some chest:some shoulders:some elbows:much wrists:some', 0, NULL,
        'Bar stalls in the upper third; few sets, a few weeks at a time',
        'More load than can be benched from the chest: the pins are the safeties, so set and try them with an empty bar; for a top set add a spotter. Set it down under control; leave it when elbows ache.'),
    ('neutral_grip_bar', 'Neutral-grip bar bench', 'bench', 0, 'both', '',
        'Palms face each other on a bar with parallel handles: elbows closer, shoulders and wrists turned less',
        0, 1, 0, 3, 10, 0.92, 0.05, 'common practice, no source', 1.0, 'moderate',
        'back:some legs:some chest:much shoulders:some elbows:much wrists:some', 0, NULL,
        'Volume away from the meet, when the straight bar tires shoulders or wrists',
        'Weigh the bar: plates are worked out for the lifter''s usual one. It tips more easily than a straight bar. Use a spotter or safeties set just below the chest.'),
    ('bands', 'Bench with bands', 'bench', 0, 'both', '',
        'Bands pull the bar down, most at straight arms: speed off the chest and a hard lockout. The load is the bar''s; the note says which bands and what they add',
        0, 1, 0, 1, 5, 0.8, 0.08, 'common practice, no source', 1.0, 'high',
        'back:some legs:some chest:much shoulders:some elbows:much wrists:some', 0, NULL,
        'Lockout and bar speed, a few weeks at a time; not in the last weeks before a meet',
        'Anchor the bands so that they cannot slip, and look them over for tears. They pull a missed bar down faster: safeties set just below the chest and a spotter. Write the bands into the note: another band is another lift.'),
    ('chains', 'Bench with chains', 'bench', 0, 'both', '',
        'Chains lift off the floor on the way up, so that the bar gets heavier towards the lockout. The load is the bar''s; the note says what the chains add at straight arms',
        0, 1, 0, 1, 6, 0.87, 0.06, 'common practice, no source', 1.0, 'moderate',
        'back:some legs:some chest:much shoulders:some elbows:much wrists:some', 0, NULL,
        'Lockout and pressing on to the end; easier to dose than bands',
        'Hang both sides alike, with a link or two on the floor at straight arms. Chains swing: walk the bar out with a spotter. Use a spotter or safeties set just below the chest.'),
    ('bent_over_row', 'Bent-over row', 'bench', 0, 'both', '',
        'Pulls the bar to the belly: upper back and grip that hold the bar path and the arch', 0,
        0, 0, 6, 12, 0.7, 0.12, 'common practice, no source', 1.0, 'moderate',
        'back:much legs:some chest:not shoulders:some elbows:some wrists:some', 1, NULL,
        'Every week beside the bench press, as many sets of pulling as of pressing; not right before heavy squats or deadlifts',
        'Back flat, no jerk from the legs. A tired or sore low back rows with the chest supported.'),
    ('supported_row', 'Chest-supported row', 'bench', 0, 'both', '',
        'Row with the chest on a pad: upper back without the low back', 0, 0, 0, 8, 15, 0.55, 0.12,
        'common practice, no source', 1.0, 'low',
        'back:some legs:not chest:not shoulders:some elbows:some wrists:some', 1, NULL,
        'Upper-back work on days when the low back is tired or has squats and deadlifts to come',
        'Full stretch without a shrug; stop at shoulder pain.'),
    ('triceps_extension', 'Lying triceps extension', 'bench', 0, 'both', '',
        'Bar lowered behind the forehead and pressed back by the elbows alone: triceps for the lockout',
        0, 0, 0, 8, 15, 0.35, 0.08, 'common practice, no source', 1.0, 'low',
        'back:not legs:not chest:not shoulders:some elbows:much wrists:some', 1, NULL,
        'After the presses of the day; lockout, and arms that give out first',
        'Elbows tell first: lighter and more reps, or pushdowns, when they ache. Have the bar handed over, collars on; nothing maximal above the face.'),
    ('triceps_pushdown', 'Triceps pushdown', 'bench', 0, 'both', '',
        'Cable pressed down, elbows at the ribs: triceps with little strain', 0, 0, 0, 10, 20, 0.3,
        0.1, 'common practice, no source', 1.0, 'low',
        'back:not legs:not chest:not shoulders:some elbows:some wrists:some', 1, NULL,
        'End of any day, as volume for the arms; instead of extensions when elbows ache',
        'Loads of cable stacks differ: keep to one machine in the log.')
)
INSERT INTO variation (
    id, code, name, lift, competition, serves, stance, purpose, tempo_lowering, tempo_pause,
    tempo_lifting, reps_low, reps_high, ratio, ratio_spread, ratio_source, rep_cost, fatigue, work,
    assistance, usual_percent, when_to_use, cautions, retired)
SELECT (SELECT max(id) FROM variation) + row_number() OVER (),
    code, name, lift, competition, serves, stance, purpose, tempo_lowering, tempo_pause,
    tempo_lifting, reps_low, reps_high, ratio, ratio_spread, ratio_source, rep_cost, fatigue, work,
    assistance, usual_percent, when_to_use, cautions, 0
FROM built_in
WHERE code NOT IN (SELECT code FROM variation) AND EXISTS (SELECT 1 FROM variation)
    AND NOT EXISTS (SELECT 1 FROM variation AS own
        WHERE own.lift = built_in.lift AND own.name = built_in.name COLLATE NOCASE);
