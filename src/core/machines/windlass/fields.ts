import type { Fields } from '../../description/fields.ts';
import { line } from '../../parts/line.ts';
import type { PartKind, Slot } from '../machine.ts';

/** A wheel and an axle in one piece, or an axle with a crank, as a kit file describes it. */
export const windlassPart: PartKind = {
  kind: 'windlass',
  meaning: 'windlass.part',
  fields: {
    'axle diameter': {
      type: 'quantity',
      dimensions: ['length'],
      above: 0,
      required: true,
      meaning: 'windlass.field.axle-diameter',
      example: '16 mm',
    },
    'wheel diameter': {
      type: 'quantity',
      dimensions: ['length'],
      above: 0,
      meaning: 'windlass.field.wheel-diameter',
      example: '12 cm',
    },
    'crank length': {
      type: 'quantity',
      dimensions: ['length'],
      above: 0,
      meaning: 'windlass.field.crank-length',
      example: '8 cm',
    },
    mass: {
      type: 'quantity',
      dimensions: ['mass'],
      least: 0,
      required: true,
      meaning: 'field.mass',
      example: '150 g',
    },
    'bearing diameter': {
      type: 'quantity',
      dimensions: ['length'],
      least: 0,
      meaning: 'windlass.field.bearing-diameter',
      example: '6 mm',
    },
    'bearing friction': {
      type: 'sourced',
      table: 'bearing',
      dimensions: ['ratio'],
      assumed: 'dry pin',
      meaning: 'windlass.field.bearing-friction',
      example: 'dry pin',
    },
  },
};

export const slots: Readonly<Record<string, Slot>> = {
  windlass: { kinds: [windlassPart.kind] },
  'axle line': { kinds: [line.kind], optional: true },
  'wheel line': { kinds: [line.kind], optional: true },
};

export const fields: Fields = {
  'turned by': {
    type: 'choice',
    of: ['wheel', 'crank'],
    meaning: 'windlass.field.turned-by',
    example: 'wheel',
  },
  pull: {
    type: 'choice',
    of: ['down', 'level', 'up'],
    meaning: 'windlass.field.pull',
    example: 'down',
  },
  'pull leans': {
    type: 'quantity',
    dimensions: ['angle'],
    least: -Math.PI / 2,
    most: Math.PI / 2,
    meaning: 'windlass.field.pull-leans',
    example: '0 deg',
  },
  'layers wound': {
    type: 'count',
    least: 0,
    most: 20,
    meaning: 'windlass.field.layers',
    example: '0',
  },
};
