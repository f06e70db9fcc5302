/**
 * English for what groups reckon themselves: each reckoning by its name, `try.` for the group and `see.` for the
 * teacher where it is a slip. It is about the computed columns only.
 */
export const reckonings = {
  'reckoning.column.advantage': 'advantage',
  'reckoning.column.workIn': 'work in',
  'reckoning.column.workOut': 'work out',
  'reckoning.verdict.as the key': 'as the key',
  'reckoning.verdict.another way': 'another figure, rightly reckoned',
  'reckoning.verdict.slip': 'look at the reckoning again',
  'reckoning.verdict.not found': 'nothing on the list gives this',
  'reckoning.verdict.unreadable': 'unreadable, kept as written',
  'reckoning.verdict.not judged': 'not judged',
  'reckoning.right': 'reckoned: {column} {written} ({way})',
  'reckoning.slip': 'reckoned: {column} {written} ({way}, it seems)',
  'reckoning.not-found': 'reckoned: {column} {written} (no reckoning on the list gives this)',
  'reckoning.left': 'reckoned: {column} {written} ({because})',
  'reckoning.should-be': 'its own reading gives {should}',
  'reckoning.or': ' or ',
  'reckoning.nothing-to-divide': 'there is no pull, or no load, to divide by',
  'reckoning.no-lift': 'the setup states no lift, so no work can be reckoned',
  'reckoning.no-travel': 'nothing is raised here, so the way of the hand is not known',
  'reckoning.no-figure': 'this is no figure with or without a unit of work',
  'reckoning.no-reading': "there is no reading of the group's own to reckon from",
  'reckoning.load-over-pull': 'load divided by pull',
  'reckoning.ideal': 'the machine without friction: counted or measured, not read',
  'reckoning.carriage-counted-in': 'cart or block counted in with the load',
  'reckoning.carriage-left-out': 'load times lift, without the cart or block',
  'reckoning.load-lift': 'load times lift',
  'reckoning.pull-by-travel': 'pull times the way of the hand',
  'reckoning.upside-down': 'pull divided by load',
  'try.reckoning.upside-down': 'Which is larger, load or pull? Divide it by the other.',
  'see.reckoning.upside-down':
    'Load and pull probably stand upside down in the fraction. Ask what the number is to say.',
  'reckoning.grams-over-newtons': 'a load in grams divided by a pull in newtons',
  'try.reckoning.grams-over-newtons': 'Write both in the same unit, then divide once more.',
  'see.reckoning.grams-over-newtons':
    'Grams were probably divided by newtons. Ask for the unit beside each number.',
  'reckoning.kilograms-over-newtons': 'a load in kilograms divided by a pull in newtons',
  'try.reckoning.kilograms-over-newtons': 'Write both in the same unit, then divide once more.',
  'see.reckoning.kilograms-over-newtons':
    'Kilograms were probably divided by newtons. Ask for the unit beside each number.',
  'reckoning.kilograms-for-newtons': 'kilograms taken for newtons',
  'try.reckoning.kilograms-for-newtons': 'How many newtons does the load weigh? Multiply once more.',
  'see.reckoning.kilograms-for-newtons':
    'The mass was probably taken for the weight. Ask what a scale would show under the load.',
  'reckoning.pull-travel': 'load times the way of the hand',
  'try.reckoning.pull-travel': 'How far does the load go? Multiply by that.',
  'see.reckoning.pull-travel':
    'The way of the hand was probably taken for that of the load. Let the group measure both.',
  'reckoning.pull-for-load': 'pull times lift',
  'try.reckoning.pull-for-load': 'Which force goes up that far? Multiply once more.',
  'see.reckoning.pull-for-load':
    'The pull was probably taken for the load. Ask which force belongs to which way.',
  'reckoning.load-travel': 'pull times the way of the load',
  'try.reckoning.load-travel': 'How far does the hand go? Multiply by that.',
  'see.reckoning.load-travel':
    'The way of the load was probably taken for that of the hand. Let the group measure both.',
  'reckoning.load-for-pull': 'load times the way of the hand',
  'try.reckoning.load-for-pull': 'Which force does the hand give? Multiply once more.',
  'see.reckoning.load-for-pull':
    'The load was probably taken for the pull. Ask which force belongs to which way.',
  'reckoning.centimetres-for-metres': 'centimetres taken for metres',
  'try.reckoning.centimetres-for-metres': 'Write the way in metres, then multiply once more.',
  'see.reckoning.centimetres-for-metres':
    'The way was probably left in centimetres: a hundred times too many joules. Ask for its unit.',
} as const;
