import type { Fields } from '../../description/fields.ts';
import type { PartKind } from '../../description/part.ts';
import { carriageFields } from '../../parts/carriage.ts';
import { pullFields } from '../../parts/guided-pull.ts';
import type { Slot } from '../machine.ts';

/** The board of an inclined plane with the pins of its prop, as a kit file describes it. */
export const board: PartKind = {
  kind: 'board',
  meaning: 'incline.board',
  fields: {
    length: {
      type: 'quantity',
      dimensions: ['length'],
      above: 0,
      required: true,
      meaning: 'field.length',
      example: '90 cm',
    },
    'prop at': {
      type: 'quantity',
      dimensions: ['length'],
      above: 0,
      meaning: 'incline.field.prop-at',
      example: '80 cm',
    },
    'first pin': {
      type: 'quantity',
      dimensions: ['length'],
      above: 0,
      meaning: 'incline.field.first-pin',
      example: '10 cm',
    },
    'pin spacing': {
      type: 'quantity',
      dimensions: ['length'],
      above: 0,
      between: 'pins',
      meaning: 'incline.field.pin-spacing',
      example: '5 cm',
    },
    pins: { type: 'count', least: 1, most: 100, meaning: 'incline.field.pins', example: '6' },
    'pin heights': {
      type: 'quantities',
      dimensions: ['length'],
      least: 0,
      meaning: 'incline.field.pin-heights',
      example: '10.1 cm, 15.0 cm, 20.2 cm',
    },
  },
};

export const slots: Readonly<Record<string, Slot>> = {
  board: { kinds: ['board'] },
  'rides on': { kinds: ['block', 'cart', 'rollers'] },
  'guide pulley': { kinds: ['guide pulley'], optional: true },
};

export const fields: Fields = {
  'propped at': { type: 'position', meaning: 'incline.field.propped-at', example: 'hole 3' },
  rise: {
    type: 'quantity',
    dimensions: ['length'],
    meaning: 'incline.field.rise',
    example: '30 cm',
  },
  'slope length': {
    type: 'quantity',
    dimensions: ['length'],
    above: 0,
    meaning: 'incline.field.slope-length',
    example: '90 cm',
  },
  angle: { type: 'quantity', dimensions: ['angle'], meaning: 'incline.field.angle', example: '20 deg' },
  ...pullFields,
  ...carriageFields,
};
