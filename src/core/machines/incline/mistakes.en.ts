/**
 * English for the usual mistakes: `.mistake` names one, `.try` is the one thing that a group is asked to do,
 * `.see` tells the teacher what probably happened and how to see it. Nobody is accused.
 */
export const mistakeSentences = {
  'incline.try.pin-too-high': 'Look which pin the board rests on, then read once more.',
  'incline.see.pin-too-high':
    'The board probably rests one pin too high, perhaps since the last group. Look before the next one reads.',
  'incline.try.pin-too-low': 'Look which pin the board rests on, then read once more.',
  'incline.see.pin-too-low':
    'The board probably rests one pin too low, perhaps since the last group. Look before the next one reads.',
  'incline.try.string-not-along': 'Hold the string along the board, then read once more.',
  'incline.see.string-not-along':
    'The string probably ran off the board, up or sideways. Look along the board while they pull.',
  'incline.try.read-too-near': 'Read earlier, where the card says, once more.',
  'incline.see.read-too-near':
    'It was probably read close to the guide pulley, where the string pulls upward. Look where they stop to read.',
  'incline.mistake.left-empty': 'what carries the load went up empty',
  'incline.try.left-empty': 'Put the load on, then read once more.',
  'incline.see.left-empty': 'The load was probably left off. Look whether it stands beside the board.',
  'incline.mistake.run-for-slope': 'the level way was divided by the height',
  'incline.try.run-for-slope':
    'Which way does the load go? Measure along the board, then divide by the height.',
  'incline.see.run-for-slope':
    'The level way was probably taken for the slope. Ask along which side the load travels.',
  'incline.mistake.run-for-rise': 'the slope was divided by the level way',
  'incline.try.run-for-rise': 'How high does the load get? Divide the slope by that.',
  'incline.see.run-for-rise':
    'The level way was probably taken for the height. Ask what is gained at the top.',
  'incline.mistake.sides-upside-down': 'the height was divided by the slope',
  'incline.try.sides-upside-down': 'Which is longer, slope or height? Divide it by the other.',
  'incline.see.sides-upside-down':
    'Slope and height probably stand upside down in the fraction. Ask which belongs on top, and why.',
  'incline.mistake.whole-board-for-slope': "the whole board was divided by the prop's height",
  'incline.try.whole-board-for-slope': 'Measure from the foot to the prop, then divide once more.',
  'incline.see.whole-board-for-slope':
    'The whole board was probably taken, beyond the prop. Ask how high its far end is.',
} as const;
