import type { Fields } from '../description/fields.ts';

/** What every setup may say, whatever its machine: how it is pulled, read and watched. */
export const setupFields: Fields = {
  watch: {
    type: 'choice',
    of: ['pull', 'turns', 'travel', 'ease'],
    meaning: 'setup.field.watch',
    example: 'pull',
  },
  read: {
    type: 'choice',
    of: ['raise', 'lower', 'held', 'start'],
    meaning: 'setup.field.read',
    example: 'raise',
  },
  'scale hangs': {
    type: 'choice',
    of: ['hook down', 'level', 'along the slope', 'upside down'],
    meaning: 'setup.field.scale-hangs',
    example: 'upside down',
  },
  'scale angle': {
    type: 'quantity',
    dimensions: ['angle'],
    least: 0,
    meaning: 'setup.field.scale-angle',
    example: '60 deg',
  },
  zeroed: {
    type: 'choice',
    of: ['hook down', 'level', 'along the slope', 'upside down', 'in place'],
    meaning: 'setup.field.zeroed',
    example: 'hook down',
  },
  tapped: { type: 'yes-no', meaning: 'setup.field.tapped', example: 'yes' },
  'hand carries the scale': { type: 'yes-no', meaning: 'setup.field.hand-carries', example: 'no' },
  lift: {
    type: 'quantity',
    dimensions: ['length'],
    above: 0,
    meaning: 'setup.field.lift',
    example: '10 cm',
  },
  'more to find': { type: 'yes-no', meaning: 'setup.field.more-to-find', example: 'no' },
};
