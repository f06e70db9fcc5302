/**
 * English for the usual mistakes: `.mistake` names one, `.try` is the one thing that a group is asked to do,
 * `.see` tells the teacher what probably happened and how to see it. Nobody is accused.
 */
export const mistakeSentences = {
  'lever.try.load-hole-right': "Count the load's hole against the card, then read once more.",
  'lever.see.load-hole-right':
    'The load probably hangs one hole too far right. Look which hole its hook is in.',
  'lever.try.pull-hole-right': "Count the scale's hole against the card, then read once more.",
  'lever.see.pull-hole-right':
    'The scale is probably hooked one hole too far right. Look which hole it pulls at.',
  'lever.try.fulcrum-hole-right': "Look at the pin's hole against the card, then read once more.",
  'lever.see.fulcrum-hole-right':
    'The pin probably sits one hole too far right, perhaps since the last group. Look before the next one reads.',
  'lever.try.load-hole-left': "Count the load's hole against the card, then read once more.",
  'lever.see.load-hole-left':
    'The load probably hangs one hole too far left. Look which hole its hook is in.',
  'lever.try.pull-hole-left': "Count the scale's hole against the card, then read once more.",
  'lever.see.pull-hole-left':
    'The scale is probably hooked one hole too far left. Look which hole it pulls at.',
  'lever.try.fulcrum-hole-left': "Look at the pin's hole against the card, then read once more.",
  'lever.see.fulcrum-hole-left':
    'The pin probably sits one hole too far left, perhaps since the last group. Look before the next one reads.',
  'lever.try.load-counted-from-the-other-end':
    'Count the holes from the end that the card names, then read once more.',
  'lever.see.load-counted-from-the-other-end':
    "The load's hole was probably counted from the other end. Let the group show you how it counts.",
  'lever.try.pull-counted-from-the-other-end':
    'Count the holes from the end that the card names, then read once more.',
  'lever.see.pull-counted-from-the-other-end':
    "The scale's hole was probably counted from the other end. Let the group show you how it counts.",
  'lever.mistake.hooks-swapped': "load and scale were hooked in each other's hole",
  'lever.try.hooks-swapped': 'Look on the card which hole carries the load, then read once more.',
  'lever.see.hooks-swapped':
    "Load and scale probably hang in each other's hole. Hold the drawing beside the bar.",
  'lever.mistake.arms-upside-down': "the load's arm was divided by the pull's arm",
  'lever.try.arms-upside-down': 'Which arm is the longer one? Divide it by the other.',
  'lever.see.arms-upside-down':
    'The two arms probably stand upside down in the fraction. Ask which arm belongs on top, and why.',
  'lever.mistake.arms-from-the-end': 'the arms were measured from the end of the bar',
  'lever.try.arms-from-the-end': 'Measure both arms from the pin, then divide once more.',
  'lever.see.arms-from-the-end':
    'The arms were probably measured from the end of the bar. Ask where the bar turns.',
} as const;
