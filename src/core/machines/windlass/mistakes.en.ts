/**
 * English for the usual mistakes: `.mistake` names one, `.try` is the one thing that a group is asked to do,
 * `.see` tells the teacher what probably happened and how to see it. Nobody is accused.
 */
export const mistakeSentences = {
  'windlass.try.line-winds-on-itself':
    'Let the line off the axle and wind it on side by side, then read once more.',
  'windlass.see.line-winds-on-itself':
    'The line probably climbs on itself, so that the axle is thicker. Look at the turns on the axle.',
  'windlass.try.lines-swapped': 'Look on the card which drum carries the load, then read once more.',
  'windlass.see.lines-swapped':
    "Load and scale probably hang on each other's drum. Look which line the load hangs from.",
  'windlass.mistake.radius-for-diameter': "the wheel's radius was divided by the axle's diameter",
  'windlass.try.radius-for-diameter': 'Take both as diameters, or both as radii, then divide once more.',
  'windlass.see.radius-for-diameter':
    'A radius was probably divided by a diameter: half of what it should be. Ask from where to where they measured.',
  'windlass.mistake.diameter-for-radius': "the wheel's diameter was divided by the axle's radius",
  'windlass.try.diameter-for-radius': 'Take both as diameters, or both as radii, then divide once more.',
  'windlass.see.diameter-for-radius':
    'A diameter was probably divided by a radius: twice what it should be. Ask from where to where they measured.',
  'windlass.mistake.upside-down': 'the axle was divided by the wheel',
  'windlass.try.upside-down': 'Which is bigger, wheel or axle? Divide it by the other.',
  'windlass.see.upside-down':
    'Wheel and axle probably stand upside down in the fraction. Ask which belongs on top, and why.',
  'windlass.mistake.with-the-line': 'measured to the middle of the lines',
  'windlass.try.with-the-line': "This counts the line's thickness too: well measured.",
  'windlass.see.with-the-line':
    'The thickness of the lines was counted too, which the schoolbook leaves out. Nothing is wrong.',
} as const;
