import type { Fields } from '../../description/fields.ts';
import type { PartKind, Slot } from '../machine.ts';

/** A pull that leans further hardly turns the bar any more. */
const MOST_LEAN = (80 * Math.PI) / 180;

/** The bar of a lever, as a kit file describes it. */
export const bar: PartKind = {
  kind: 'bar',
  meaning: 'lever.bar',
  fields: {
    length: {
      type: 'quantity',
      dimensions: ['length'],
      above: 0,
      required: true,
      meaning: 'field.length',
      example: '60 cm',
    },
    mass: {
      type: 'quantity',
      dimensions: ['mass'],
      least: 0,
      required: true,
      meaning: 'field.mass',
      example: '118 g',
    },
    'mass centre': {
      type: 'quantity',
      dimensions: ['length'],
      least: 0,
      meaning: 'lever.field.mass-centre',
      example: '30.1 cm ± 0.2 cm',
    },
    'first hole': {
      type: 'quantity',
      dimensions: ['length'],
      least: 0,
      meaning: 'lever.field.first-hole',
      example: '5 cm',
    },
    'hole spacing': {
      type: 'quantity',
      dimensions: ['length'],
      above: 0,
      between: 'holes',
      meaning: 'lever.field.hole-spacing',
      example: '5 cm',
    },
    holes: {
      type: 'count',
      least: 1,
      most: 200,
      meaning: 'lever.field.holes',
      example: '11',
    },
    'pin diameter': {
      type: 'quantity',
      dimensions: ['length'],
      least: 0,
      meaning: 'lever.field.pin-diameter',
      example: '6 mm',
    },
    'pin friction': {
      type: 'sourced',
      table: 'bearing',
      dimensions: ['ratio'],
      assumed: 'dry pin',
      meaning: 'lever.field.pin-friction',
      example: 'dry pin',
    },
    'holes above the pin': {
      type: 'quantity',
      dimensions: ['length'],
      meaning: 'lever.field.holes-above',
      example: '0 mm',
    },
  },
};

export const slots: Readonly<Record<string, Slot>> = {
  bar: { kinds: ['bar'] },
};

export const fields: Fields = {
  'fulcrum at': {
    type: 'position',
    required: true,
    meaning: 'lever.field.fulcrum-at',
    example: 'hole 6',
  },
  'load at': {
    type: 'position',
    required: true,
    meaning: 'lever.field.load-at',
    example: 'hole 3',
  },
  'pull at': {
    type: 'position',
    required: true,
    meaning: 'lever.field.pull-at',
    example: 'hole 11',
  },
  tilt: {
    type: 'quantity',
    dimensions: ['angle'],
    meaning: 'lever.field.tilt',
    example: '0 deg',
  },
  'pull leans': {
    type: 'quantity',
    dimensions: ['angle'],
    least: -MOST_LEAN,
    most: MOST_LEAN,
    meaning: 'lever.field.pull-leans',
    example: '0 deg',
  },
  'pull keeps square to the bar': {
    type: 'yes-no',
    meaning: 'lever.field.keeps-square',
    example: 'no',
  },
};
