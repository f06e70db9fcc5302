/**
 * English for the usual mistakes: `.mistake` names one, `.try` is the one thing that a group is asked to do,
 * `.see` tells the teacher what probably happened and how to see it. Nobody is accused.
 */
export const mistakeSentences = {
  'screw.try.turn-more': "Mark the head, start from the card's start, and count once more.",
  'screw.see.turn-more':
    'The first turn was probably counted before it was made, or the last one twice. Let them count aloud.',
  'screw.try.turn-less': "Mark the head, start from the card's start, and count once more.",
  'screw.see.turn-less': 'The first or the last turn was probably left out. Let them count aloud.',
  'screw.try.half-turns': 'Mark the head: a turn ends where the mark is back. Count once more.',
  'screw.see.half-turns':
    'Each twist of the wrist was probably counted, and that is half a turn. Watch the mark on the head.',
  'screw.try.not-flush': 'Turn until it just touches, then begin to count.',
  'screw.see.not-flush':
    'The face probably did not touch yet when the count began. Look at the gap at the start.',
  'screw.mistake.arm-over-pitch': 'the arm itself was divided by the travel of a turn',
  'screw.try.arm-over-pitch': "How far does the hand go in one turn? Divide that by one turn's travel.",
  'screw.see.arm-over-pitch':
    'The arm was probably taken for the whole circle. Ask how far the hand goes in one turn.',
  'screw.mistake.arm-taken-for-diameter': "the arm was taken for the circle's diameter",
  'screw.try.arm-taken-for-diameter':
    "How far does the hand go in one turn? Divide that by one turn's travel.",
  'screw.see.arm-taken-for-diameter':
    'The arm was probably taken for a diameter: half the circle. Ask from where to where the circle is wide.',
  'screw.mistake.arm-taken-twice': "twice the arm was taken for the circle's radius",
  'screw.try.arm-taken-twice': "How far does the hand go in one turn? Divide that by one turn's travel.",
  'screw.see.arm-taken-twice':
    'A diameter was probably taken for the radius: twice the circle. Ask where the middle of the circle is.',
  'screw.mistake.pitch-for-lead': 'the pitch of one thread was taken for the travel of a turn',
  'screw.try.pitch-for-lead': "How far does the hand go in one turn? Divide that by one turn's travel.",
  'screw.see.pitch-for-lead':
    "One thread's pitch was probably taken, but this screw has several threads. Turn it once and measure.",
} as const;
