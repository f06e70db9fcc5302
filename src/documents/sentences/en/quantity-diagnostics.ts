/** English messages about numbers and their units. */
export const quantityDiagnostics = {
  'quantity.empty': {
    what: 'a number is missing',
    here: 'nothing is written here',
    why: 'the word in front of it asks for one',
    help: 'write the number, or leave the word out',
  },
  'quantity.not-a-number': {
    what: 'this is not a number',
    here: '[a number was expected, not "{written}"|a number was expected]',
    why: 'a quantity is a number with a unit, as "300 g" or "14.2 cm ± 0.1 cm"',
    help: 'write the number in digits and its unit behind it',
  },
  'quantity.no-unit': {
    what: 'a number without its unit',
    here: '"{written}" of what?',
    why: 'files are written in centimetres and inches, in grams and newtons, and nobody can guess',
    help: 'write the unit behind it: {units}',
  },
  'quantity.unknown-unit': {
    what: 'an unknown unit',
    here: 'nothing is measured in "{written}"',
    why: 'capital and small letters count: mN is a millinewton',
    help: '[write "{nearest}"|known here: {units}]',
  },
  'quantity.wrong-dimension': {
    what: 'a unit of something else',
    here: '"{written}" is a measure of {is}',
    why: 'this place takes {wanted}',
    help: 'known here: {units}',
  },
  'quantity.mass-for-force': {
    what: 'a mass where a force is needed',
    here: '"{written}" is a mass',
    why: 'a scale marked in grams still measures a force, the same everywhere',
    help: 'write "{asForce}" if the scale is marked so, or {asNewtons}',
  },
  'quantity.force-for-mass': {
    what: 'a force where a mass is needed',
    here: '"{written}" is a force',
    why: 'a balance shows a mass; what it weighs depends on the place',
    help: 'write the mass: about {asMass} at standard gravity',
  },
  'quantity.decimal-comma': {
    what: 'a decimal comma in a file with decimal points',
    here: '"{written}" has a comma',
    why: 'this file writes its tenths behind a point[; a comma may also have been meant for thousands: {thousands}|]',
    help: '[write "{instead}"|write it with a point], or say "decimal: comma" at the top of the file',
  },
  'quantity.decimal-point': {
    what: 'a decimal point in a file with decimal commas',
    here: '"{written}" has a point',
    why: 'this file says "decimal: comma"[; a point may also have been meant for thousands: {thousands}|]',
    help: '[write "{instead}"|write it with a comma]',
  },
  'quantity.empty-range': {
    what: 'a range with its ends the wrong way round',
    here: '"{written}" goes downward',
    why: 'a range goes from the smaller to the greater value',
    help: 'write "{instead}"',
  },
  'quantity.hyphen-range': {
    what: 'a range with a dash',
    here: 'is "{written}" a range, or a difference?',
    why: 'a dash is also a minus sign',
    help: 'write "{instead}" for "anywhere between"',
  },
  'quantity.negative-uncertainty': {
    what: 'a half-width below nothing',
    here: '"{written}" can not stand behind ±',
    why: 'the half-width says how far off the value may be, either way',
    help: 'write it without the minus sign',
  },
  'quantity.ambiguous-percent': {
    what: 'percent of what?',
    here: '"{written}" can be read in two ways',
    why: 'of a bare ratio, percent may mean a share of the value or points',
    help: 'write the half-width as a number: "0.30 ± 0.03"',
  },
  'quantity.left-over': {
    what: 'something is left over behind the quantity',
    here: '"{written}" was not expected',
    why: 'one place takes one quantity',
    help: 'delete it, or put it in a comment behind " # "',
  },
  'quantity.too-large': {
    what: 'a number beyond all measure',
    here: '"{written}" is more than can be reckoned with',
    why: 'no kit has a part of that size',
    help: 'count its digits again',
  },
} as const;
