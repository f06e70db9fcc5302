import type { PartKind } from '../description/part.ts';

/** A spring scale, as a kit file describes it. Gram graduations are forces: write `gf`. */
export const springScale: PartKind = {
  kind: 'spring scale',
  meaning: 'part.spring-scale',
  fields: {
    range: {
      type: 'quantity',
      dimensions: ['force'],
      above: 0,
      required: true,
      meaning: 'scale.field.range',
      example: '5 N',
    },
    graduation: {
      type: 'quantity',
      dimensions: ['force'],
      above: 0,
      required: true,
      meaning: 'scale.field.graduation',
      example: '0.1 N',
    },
    'other graduation': {
      type: 'quantity',
      dimensions: ['force'],
      above: 0,
      meaning: 'scale.field.other-graduation',
      example: '10 gf',
    },
    mass: { type: 'quantity', dimensions: ['mass'], above: 0, meaning: 'scale.field.mass', example: '72 g' },
    'moving part': {
      type: 'quantity',
      dimensions: ['mass'],
      least: 0,
      meaning: 'scale.field.moving-part',
      example: '11 g',
    },
    spring: {
      type: 'quantity',
      dimensions: ['mass'],
      least: 0,
      meaning: 'scale.field.spring',
      example: '6 g',
    },
    'turn-over shift': {
      type: 'quantity',
      dimensions: ['force'],
      least: 0,
      meaning: 'scale.field.turn-over-shift',
      example: '0.27 N',
    },
    accuracy: {
      type: 'quantity',
      dimensions: ['force', 'ratio'],
      least: 0,
      meaning: 'scale.field.accuracy',
      example: '0.05 N',
    },
    'tube friction': {
      type: 'quantity',
      dimensions: ['force'],
      least: 0,
      meaning: 'scale.field.tube-friction',
      example: '0.03 N',
    },
    stop: { type: 'quantity', dimensions: ['force'], meaning: 'scale.field.stop', example: '0 N' },
    overload: {
      type: 'quantity',
      dimensions: ['force'],
      above: 0,
      meaning: 'scale.field.overload',
      example: '7 N',
    },
  },
};
