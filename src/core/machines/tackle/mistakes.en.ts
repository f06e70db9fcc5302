/**
 * English for the usual mistakes: `.mistake` names one, `.try` is the one thing that a group is asked to do,
 * `.see` tells the teacher what probably happened and how to see it. Nobody is accused.
 */
export const mistakeSentences = {
  'tackle.try.one-part-fewer': 'Follow the line with a finger against the card, then read once more.',
  'tackle.see.one-part-fewer':
    'The line is probably rove with one part fewer, perhaps since the last group. Count the parts at the moving block.',
  'tackle.try.one-part-more': 'Follow the line with a finger against the card, then read once more.',
  'tackle.see.one-part-more':
    'The line is probably rove with one part more, perhaps since the last group. Count the parts at the moving block.',
  'tackle.try.fall-off-the-other-block':
    'Follow the line with a finger against the card, then read once more.',
  'tackle.see.fall-off-the-other-block':
    "The fall probably leaves the other block. Look which block the hand's end comes from.",
  'tackle.mistake.fall-counted': 'the part that the hand pulls was counted as well',
  'tackle.try.fall-counted': 'Count only the parts that hold up the moving block.',
  'tackle.see.fall-counted':
    'The hauling part was probably counted though it holds up nothing. Ask which parts carry the load.',
  'tackle.mistake.fall-not-counted': 'the part that the hand pulls was left out',
  'tackle.try.fall-not-counted': 'Count only the parts that hold up the moving block.',
  'tackle.see.fall-not-counted':
    'The hauling part was probably left out, though here it carries the load too. Ask which parts hold the moving block.',
  'tackle.mistake.sheaves-counted': 'the sheaves were counted',
  'tackle.try.sheaves-counted': 'Count only the parts that hold up the moving block.',
  'tackle.see.sheaves-counted':
    'The sheaves were probably counted instead of the parts of line. Ask what holds up the moving block.',
  'tackle.mistake.parts-doubled': 'the parts of line were doubled',
  'tackle.try.parts-doubled': 'Count only the parts that hold up the moving block.',
  'tackle.see.parts-doubled': 'The parts were probably counted twice. Let the group point at each one once.',
} as const;
