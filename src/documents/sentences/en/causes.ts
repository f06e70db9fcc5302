/**
 * English for likely causes: `cause.` names one, `try.` is the one thing that the group is asked to do, `see.`
 * tells the teacher what probably happened and how to see it. Nobody is accused. Those of a machine stand
 * in its folder.
 */
export const causes = {
  'cause.good': 'a good reading',
  'cause.unexplained': 'nothing on the list explains it',
  'cause.scale.zero-from-hook-down': 'the scale was turned and kept its old zero',
  'cause.scale.zero-set-in-place': 'the scale was zeroed where it hangs; the card wants it zeroed hook down',
  'cause.scale.carried': 'the hand carried the scale instead of letting it hang',
  'cause.way.lowering-for-raising': 'read while the load came back down',
  'cause.way.start-for-moving': 'read at the jerk of the start',
  'cause.way.raising-for-lowering': 'read while the load went up; the card wants it coming back',
  'cause.way.moving-for-start': 'read while it moved; the card wants the peak before it moves',
  'cause.reading.schoolbook': "the number is the schoolbook's: reckoned, perhaps, and not read",
  'cause.reading.in-grams': 'the number counts grams',
  'cause.reading.in-newtons': 'the number counts newtons',
  'cause.reading.in-ounces': 'the number counts ounces',
  'cause.reading.in-pounds': 'the number counts pounds',
  'cause.reading.in-kilograms': 'the number counts kilograms',
  'cause.reading.in-millimetres': 'the number counts millimetres',
  'cause.reading.in-centimetres': 'the number counts centimetres',
  'cause.reading.in-inches': 'the number counts inches',
  'cause.reading.in-metres': 'the number counts metres',
  'cause.reading.in-turns': 'the number counts turns',
  'cause.way.speeding-up': 'read while the load was still speeding up',
  'cause.load.other-weight': 'another weight hung there than the card says',
  'cause.setup.swapped': "a partner setup's reading",
  'cause.reading.ten-times': 'the point or comma is missing: ten times too much',
  'cause.reading.a-tenth': 'the point or comma is a place too far left: a tenth',
  'cause.reading.a-hundred-times': 'the point or comma is missing: a hundred times too much',
  'cause.reading.digits-swapped': 'two digits changed places',
  'cause.reading.marks-of-half': 'each mark was counted for half of what it is worth',
  'try.unexplained': 'Check the setup against the card, then read once more.',
  'try.scale.zero-from-hook-down':
    'Hang the scale the way you pull, set its pointer to 0, then read once more.',
  'try.scale.zero-set-in-place': 'Set the pointer to 0 with the hook down, then read once more.',
  'try.scale.carried': 'Let the scale hang by its hook, then read once more.',
  'try.way.lowering-for-raising': 'Read while the load goes slowly up, once more.',
  'try.way.start-for-moving': 'Read while it moves slowly, not at the jerk, once more.',
  'try.way.raising-for-lowering': 'Read while the load comes slowly back, once more.',
  'try.way.moving-for-start': 'Watch for the highest mark just before it moves, once more.',
  'try.reading.schoolbook': 'Write what the pointer shows, whatever it ought to be.',
  'try.reading.unit': 'Look which unit stands beside the marks you read, and write it down too.',
  'try.way.speeding-up': 'Pull slowly and evenly, and read while it moves, once more.',
  'try.load.other-weight': 'Read the mark on the load against the card, then read once more.',
  'try.setup.swapped': 'Look which setup the card names, then read once more.',
  'try.reading.point': 'Write the number once more, with its point or comma.',
  'try.reading.digits-swapped': 'Read the number aloud and write it once more.',
  'try.reading.marks-of-half': 'Count the marks between two numbers: what is one worth? Then read once more.',
  'see.unexplained': 'No mistake on the list leads to this number. Look on while the group reads once more.',
  'see.scale.zero-from-hook-down':
    'The scale was probably turned after its zero was set. Let it hang free the way it pulls: it does not stand at 0.',
  'see.scale.zero-set-in-place':
    'The scale was probably set to 0 as it hangs. Turn its hook down: it does not stand at 0.',
  'see.scale.carried': 'A hand probably held up the scale. Look whether it hangs by its hook alone.',
  'see.way.lowering-for-raising':
    'It was probably read while the load sank. Watch the load, not the pointer.',
  'see.way.start-for-moving':
    'The jerk of the start was probably read. Watch whether the pointer falls back once it moves.',
  'see.way.raising-for-lowering':
    'It was probably read while the load rose. Watch the load, not the pointer.',
  'see.way.moving-for-start':
    'It was probably read after the start. Watch for the highest mark just before it moves.',
  'see.way.speeding-up':
    'The hand was probably in a hurry, and the pull had to speed the load up too. Watch whether the pointer sinks when it moves evenly.',
  'see.load.other-weight':
    'Another weight probably hangs there. Read its mark: the next group would find it too.',
  'see.load.other-weight.named':
    '{hung} probably hangs where {belongs} belongs. Read the mark on it: the next group would find it too.',
  'see.setup.swapped':
    "This is what a partner setup shows, so the two rows were probably swapped. Look at the group's row for that one.",
  'see.setup.swapped.named':
    "This is what {partner} shows, so the two rows were probably swapped. Look at the group's row for {partner}.",
  'see.reading.schoolbook':
    "The number is the schoolbook's, without friction: probably reckoned, not read. Ask to see it on the scale.",
  'see.reading.unit':
    'The number fits in another unit. Ask which marks were read; on a scale with two columns, which column.',
  'see.reading.point': 'The digits fit, the point or comma does not. Ask what the pointer stood at.',
  'see.reading.digits-swapped':
    "The number fits with two digits in each other's place. Ask what the pointer stood at.",
  'see.reading.marks-of-half':
    'The marks between two numbers were probably counted for half their worth. Ask what one small mark is worth.',
  'verdict.good': 'good',
  'verdict.a little off': 'a little off',
  'verdict.look again': 'look again',
  'verdict.no reading': 'no reading',
  'verdict.unreadable': 'unreadable, kept as written',
  'verdict.not judged': 'not judged',
  'reading.not-a-number': 'this is not a number with or without a unit',
  'reading.unknown-unit': 'this unit is not known for a reading',
  'reading.wrong-dimension': 'this unit does not belong to what is read here',
  'outcome.off-the-scale': 'the pull is beyond the scale, so there is nothing to judge against',
  'outcome.scale-on-the-other-side': 'the scale belongs on the other side here',
  'outcome.ease': 'a felt order is not judged one reading at a time',
} as const;
