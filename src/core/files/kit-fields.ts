import type { Fields } from '../description/fields.ts';
import { gravityField } from './gravity-fields.ts';

/** Which sign stands before the tenths: the same choice in each of the three files. */
export const decimalField: Fields = {
  decimal: { type: 'choice', of: ['point', 'comma'], meaning: 'file.field.decimal', example: 'point' },
};

/** The head of a kit file. */
export const kitFields: Fields = {
  serial: { type: 'text', required: true, meaning: 'kit.field.serial', example: 'BB-03' },
  name: { type: 'text', required: true, meaning: 'kit.field.name', example: 'Boathouse kit' },
  'bench book': { type: 'text', meaning: 'kit.field.bench-book', example: 'boathouse.bench.csv' },
  ...decimalField,
  ...gravityField,
};

/** What every part may say, beside the fields of its kind. */
export const partFields: Fields = {
  spare: { type: 'yes-no', meaning: 'kit.field.spare', example: 'no' },
  note: { type: 'text', meaning: 'kit.field.note', example: 'lid of the grey box' },
  box: { type: 'text', meaning: 'kit.field.box', example: 'grey box' },
  weighs: {
    type: 'quantity',
    dimensions: ['mass'],
    above: 0,
    meaning: 'kit.field.weighs',
    example: '145 g',
  },
};

/** One line of the bench book. */
export const measurementFields: Fields = {
  date: { type: 'text', required: true, meaning: 'kit.field.measured-date', example: '2026-03-14' },
  part: { type: 'text', required: true, meaning: 'kit.field.measured-part', example: 'oak' },
  what: { type: 'text', required: true, meaning: 'kit.field.measured-what', example: 'mass' },
  found: { type: 'text', required: true, meaning: 'kit.field.measured-found', example: '118 g ± 1 g' },
  by: { type: 'text', meaning: 'kit.field.measured-by', example: 'bench helper' },
  note: { type: 'text', meaning: 'kit.field.note', example: 'after the damp week' },
};
