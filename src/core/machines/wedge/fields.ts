import type { Fields } from '../../description/fields.ts';
import type { PartKind } from '../../description/part.ts';
import type { Slot } from '../machine.ts';

/** The wedge, as a kit file describes it. */
export const wedgePart: PartKind = {
  kind: 'wedge',
  meaning: 'wedge.wedge',
  fields: {
    'kind of wedge': {
      type: 'choice',
      of: ['lifting', 'splitting'],
      required: true,
      meaning: 'wedge.field.kind',
      example: 'splitting',
    },
    length: {
      type: 'quantity',
      dimensions: ['length'],
      above: 0,
      required: true,
      meaning: 'wedge.field.length',
      example: '12 cm',
    },
    thickness: {
      type: 'quantity',
      dimensions: ['length'],
      above: 0,
      meaning: 'wedge.field.thickness',
      example: '3.2 cm',
    },
    'whole angle': {
      type: 'quantity',
      dimensions: ['angle'],
      above: 0,
      most: 2.8,
      meaning: 'wedge.field.whole-angle',
      example: '15 deg',
    },
    mass: {
      type: 'quantity',
      dimensions: ['mass'],
      least: 0,
      required: true,
      meaning: 'field.mass',
      example: '85 g',
    },
    'face friction': {
      type: 'sourced',
      table: 'friction',
      dimensions: ['ratio'],
      assumed: 'wood on wood',
      meaning: 'wedge.field.face-friction',
      example: 'wood on wood',
    },
    'base friction': {
      type: 'sourced',
      table: 'friction',
      dimensions: ['ratio'],
      assumed: 'wood on laminate',
      meaning: 'wedge.field.base-friction',
      example: 'wood on laminate',
    },
  },
};

/** What holds the two faces together, all cords counted as one. */
export const cordsPart: PartKind = {
  kind: 'cords',
  meaning: 'wedge.cords',
  fields: {
    stiffness: {
      type: 'quantity',
      dimensions: ['stiffness'],
      least: 0,
      required: true,
      meaning: 'wedge.field.stiffness',
      example: '250 N/m',
    },
    'pre-tension': {
      type: 'quantity',
      dimensions: ['force'],
      least: 0,
      required: true,
      meaning: 'wedge.field.pre-tension',
      example: '3 N',
    },
    'most opening': {
      type: 'quantity',
      dimensions: ['length'],
      above: 0,
      meaning: 'wedge.field.most-opening',
      example: '4 cm',
    },
  },
};

export const malletPart: PartKind = {
  kind: 'mallet',
  meaning: 'wedge.mallet',
  fields: {
    mass: {
      type: 'quantity',
      dimensions: ['mass'],
      above: 0,
      required: true,
      meaning: 'field.mass',
      example: '300 g',
    },
  },
};

export const slots: Readonly<Record<string, Slot>> = {
  wedge: { kinds: ['wedge'] },
  cords: { kinds: ['cords'], optional: true },
  mallet: { kinds: ['mallet'], optional: true },
};

export const fields: Fields = {
  'pushed in': {
    type: 'quantity',
    dimensions: ['length'],
    least: 0,
    meaning: 'wedge.field.pushed-in',
    example: '60 mm',
  },
  pushed: {
    type: 'choice',
    of: ['level', 'down'],
    meaning: 'wedge.field.pushed',
    example: 'level',
  },
  'stop friction': {
    type: 'sourced',
    table: 'friction',
    dimensions: ['ratio'],
    meaning: 'wedge.field.stop-friction',
    example: 'wood on wood',
  },
  'mallet falls': {
    type: 'quantity',
    dimensions: ['length'],
    above: 0,
    meaning: 'wedge.field.mallet-falls',
    example: '20 cm',
  },
  'blow share': {
    type: 'quantity',
    dimensions: ['ratio'],
    above: 0,
    most: 1,
    meaning: 'wedge.field.blow-share',
    example: '0.3..0.9',
  },
};
