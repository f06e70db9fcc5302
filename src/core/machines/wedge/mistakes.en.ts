/**
 * English for the usual mistakes: `.mistake` names one, `.try` is the one thing that a group is asked to do,
 * `.see` tells the teacher what probably happened and how to see it. Nobody is accused.
 */
export const mistakeSentences = {
  'wedge.try.not-to-the-mark': 'Push the wedge to its mark, then read once more.',
  'wedge.see.not-to-the-mark': 'The wedge probably stopped short of its mark. Look where the mark is.',
  'wedge.mistake.past-the-mark': 'the wedge was pushed past its mark',
  'wedge.try.past-the-mark': 'Draw the wedge back to its mark, then read once more.',
  'wedge.see.past-the-mark': 'The wedge probably went in past its mark. Look where the mark is.',
  'wedge.mistake.half-thickness': 'half the thickness was taken',
  'wedge.try.half-thickness': 'Measure the whole thickness at the back, then divide once more.',
  'wedge.see.half-thickness':
    'Half the thickness was probably taken, one side of the wedge. Ask how far both faces part.',
  'wedge.mistake.upside-down': 'the thickness was divided by the length',
  'wedge.try.upside-down': 'Which is longer, the wedge or its back? Divide it by the other.',
  'wedge.see.upside-down':
    'Length and thickness probably stand upside down in the fraction. Ask which belongs on top, and why.',
} as const;
