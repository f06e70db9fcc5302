import type { Fields } from '../description/fields.ts';
import { decimalField } from './kit-fields.ts';
import { activityPeriodFields, tablePeriodFields } from './period-fields.ts';
import { showsFields, titleFields } from './titles.ts';

/** The head of an activity file. */
export const activityFields: Fields = {
  title: { type: 'text', required: true, meaning: 'activity.field.title', example: 'Harbour day' },
  ...titleFields,
  age: { type: 'text', meaning: 'activity.field.age', example: '8..10' },
  level: { type: 'count', least: 1, most: 3, meaning: 'activity.field.level', example: '2' },
  'hand limit': {
    type: 'quantity',
    dimensions: ['force'],
    above: 0,
    meaning: 'activity.field.hand-limit',
    example: '10 N',
  },
  'hand scatter': {
    type: 'quantity',
    dimensions: ['ratio'],
    least: 0,
    most: 1,
    meaning: 'activity.field.hand-scatter',
    example: '3 %',
  },
  ...activityPeriodFields,
  ...decimalField,
};

/** The head of a table. */
export const tableFields: Fields = {
  table: { type: 'text', required: true, meaning: 'activity.field.table', example: 'lever' },
  title: { type: 'text', meaning: 'activity.field.table-title', example: 'The boat hook' },
  ...titleFields,
  machine: { type: 'text', required: true, meaning: 'activity.field.machine', example: 'lever' },
  ...tablePeriodFields,
};

/** What names a setup and says what it is for. */
export const setupHeadFields: Fields = {
  setup: { type: 'text', required: true, meaning: 'activity.field.setup', example: 'L1' },
  partner: { type: 'text', meaning: 'activity.field.partner', example: 'L2' },
  shows: {
    type: 'text',
    meaning: 'activity.field.shows',
    example: 'twice the arm, half the pull',
  },
  ...showsFields,
};

/** The head of a stage of a compound machine. */
export const stageFields: Fields = {
  machine: { type: 'text', required: true, meaning: 'activity.field.stage-machine', example: 'windlass' },
};
