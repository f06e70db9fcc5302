import { sentences as carriage } from '../../parts/carriage-sentences.en.ts';

/** English sentences of the inclined plane; facts stand in braces. */
export const sentences = {
  ...carriage,
  'machine.inclined plane': 'Inclined plane',
  'inclined plane.about': 'A sloping board. A small pull over a long way lifts a big load.',
  'incline.board': 'board',
  'incline.field.prop-at': 'how far up the board the prop stands; left out, at its upper end',
  'incline.field.first-pin': "height of the prop's first pin above the foot of the board",
  'incline.field.pin-spacing': 'height from one pin to the next',
  'incline.field.pins': 'how many pins the prop has',
  'incline.field.pin-heights': "height of each pin above the board's foot, where they are not evenly spaced",
  'incline.field.propped-at': "the prop's pin (hole 3), or the height of the prop above the board's foot",
  'incline.field.rise': 'how high the board rises',
  'incline.field.slope-length': 'over which length along the board it rises; left out, its whole length',
  'incline.field.angle': 'angle of the board above the level, as measured',
  'incline.angle': 'angle of the board',
  'incline.ideal-advantage': 'ideal advantage: length over height',
  'incline.step.pin': 'Rest the board on pin {hole} of the prop.',
  'incline.step.rise': 'Prop the board {rise} high at {length} along it.',
  'incline.step.angle': 'Tilt the board to {angle}.',
  'incline.step.pull-along': 'Pull the scale along the board.',
  'incline.step.pull-on': 'Pull on the scale.',
  'incline.mistake.pin-too-high': 'the board stood one pin too high',
  'incline.mistake.pin-too-low': 'the board stood one pin too low',
  'incline.mistake.string-not-along': 'the string was not along the board, about 10 degrees off',
  'incline.mistake.read-too-near': 'it was read too near the guide pulley, at half the distance',
} as const;
