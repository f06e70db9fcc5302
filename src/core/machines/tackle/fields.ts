import type { Fields } from '../../description/fields.ts';
import { guidePulley, sheaveFields } from '../../parts/sheave.ts';
import type { PartKind, Slot } from '../machine.ts';

/** A block of one or more sheaves, as a kit file describes it. */
export const pulleyBlock: PartKind = {
  kind: 'pulley block',
  meaning: 'tackle.block',
  fields: {
    sheaves: {
      type: 'count',
      least: 1,
      most: 12,
      required: true,
      meaning: 'tackle.field.sheaves',
      example: '2',
    },
    mass: {
      type: 'quantity',
      dimensions: ['mass'],
      least: 0,
      meaning: 'field.mass',
      example: '28 g',
    },
    ...sheaveFields,
  },
};

export const slots: Readonly<Record<string, Slot>> = {
  'fixed block': { kinds: [pulleyBlock.kind, guidePulley.kind], optional: true },
  'moving block': { kinds: [pulleyBlock.kind], optional: true },
  'guide pulley': { kinds: [guidePulley.kind, pulleyBlock.kind], optional: true },
  'second guide pulley': { kinds: [guidePulley.kind, pulleyBlock.kind], optional: true },
};

export const fields: Fields = {
  'parts of line': {
    type: 'count',
    least: 1,
    most: 24,
    required: true,
    meaning: 'tackle.field.parts',
    example: '4',
  },
  'fall leaves': {
    type: 'choice',
    of: ['fixed block', 'moving block'],
    required: true,
    meaning: 'tackle.field.fall-leaves',
    example: 'fixed block',
  },
  'parts lean': {
    type: 'quantity',
    dimensions: ['angle'],
    least: 0,
    most: (80 * Math.PI) / 180,
    meaning: 'tackle.field.parts-lean',
    example: '10 deg',
  },
  pull: {
    type: 'choice',
    of: ['down', 'level', 'up'],
    meaning: 'tackle.field.pull',
    example: 'down',
  },
};
