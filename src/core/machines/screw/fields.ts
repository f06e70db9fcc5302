import type { Fields } from '../../description/fields.ts';
import type { PartKind } from '../../description/part.ts';
import type { Slot } from '../machine.ts';

/** The screw with its lever, as a kit file describes it. */
export const screwPart: PartKind = {
  kind: 'screw',
  meaning: 'screw.screw',
  fields: {
    thread: { type: 'text', meaning: 'screw.field.thread', example: 'M8' },
    diameter: {
      type: 'quantity',
      dimensions: ['length'],
      above: 0,
      meaning: 'screw.field.diameter',
      example: '8 mm',
    },
    'mean diameter': {
      type: 'quantity',
      dimensions: ['length'],
      above: 0,
      meaning: 'screw.field.mean-diameter',
      example: '7.19 mm',
    },
    pitch: {
      type: 'quantity',
      dimensions: ['length'],
      above: 0,
      meaning: 'screw.field.pitch',
      example: '1.25 mm',
    },
    'threads per inch': {
      type: 'count',
      least: 1,
      most: 200,
      meaning: 'screw.field.threads-per-inch',
      example: '13',
    },
    starts: { type: 'count', least: 1, most: 12, meaning: 'screw.field.starts', example: '1' },
    form: {
      type: 'choice',
      of: ['V', 'trapezoidal', 'square'],
      meaning: 'screw.field.form',
      example: 'V',
    },
    'flank half angle': {
      type: 'quantity',
      dimensions: ['angle'],
      least: 0,
      most: 1.2,
      meaning: 'screw.field.flank-half-angle',
      example: '30 deg',
    },
    'thread friction': {
      type: 'sourced',
      table: 'friction',
      dimensions: ['ratio'],
      assumed: 'steel on steel',
      meaning: 'screw.field.thread-friction',
      example: 'oiled steel on steel',
    },
    'collar diameter': {
      type: 'quantity',
      dimensions: ['length'],
      least: 0,
      meaning: 'screw.field.collar-diameter',
      example: '10 mm',
    },
    'collar friction': {
      type: 'sourced',
      table: 'friction',
      dimensions: ['ratio'],
      assumed: 'steel on steel',
      meaning: 'screw.field.collar-friction',
      example: '0.15..0.25',
    },
    'head mass': {
      type: 'quantity',
      dimensions: ['mass'],
      least: 0,
      meaning: 'screw.field.head-mass',
      example: '60 g',
    },
    'lever arm': {
      type: 'quantity',
      dimensions: ['length'],
      above: 0,
      meaning: 'screw.field.lever-arm',
      example: '10 cm',
    },
  },
};

export const slots: Readonly<Record<string, Slot>> = { screw: { kinds: ['screw'] } };

export const fields: Fields = {
  turns: { type: 'count', least: 1, most: 1000, meaning: 'screw.field.turns', example: '8' },
  travel: {
    type: 'quantity',
    dimensions: ['length'],
    above: 0,
    meaning: 'screw.field.travel',
    example: '10 mm',
  },
  'start gap': {
    type: 'quantity',
    dimensions: ['length'],
    meaning: 'screw.field.start-gap',
    example: '0.5 mm',
  },
};
