import type { Fields } from '../description/fields.ts';
import { type Describe, fieldSchema, type JsonSchema, mapSchema, TEXT, wordsSchema } from './field-schema.ts';
import {
  adultFields,
  breakFields,
  classFields,
  closedFields,
  copiesField,
  wishFields,
} from './period-fields.ts';
import { taskFields } from './titles.ts';

type Schemas = { readonly [key: string]: JsonSchema };

/** What stands in a visit about its day and is no plain field. */
export const daySchemas = (describe: Describe): Schemas => ({
  copies: {
    description: describe('visit.field.copies'),
    type: 'object',
    additionalProperties: fieldSchema(copiesField, describe),
  },
  closed: {
    description: describe('visit.field.closed'),
    anyOf: [
      { type: TEXT },
      { type: 'array', minItems: 1, items: { anyOf: [{ type: TEXT }, mapSchema(closedFields, describe)] } },
    ],
  },
  adults: listOf('visit.field.adults', adultFields, describe),
  breaks: listOf('visit.field.breaks', breakFields, describe),
  apart: wordsSchema(describe('visit.field.apart')),
  together: wordsSchema(describe('visit.field.together')),
  wishes: listOf('visit.field.wishes', wishFields, describe),
  beside: wordsSchema(describe('visit.field.beside')),
  classes: listOf('visit.field.classes', classFields, describe),
});

/** Tasks on paper: a text each, or a block with the text in several languages. */
export const whileWaitingSchema = (describe: Describe): JsonSchema => ({
  description: describe('activity.field.while-waiting'),
  type: 'array',
  minItems: 1,
  items: { anyOf: [{ type: TEXT }, mapSchema(taskFields, describe)] },
});

const listOf = (meaning: string, fields: Fields, describe: Describe): JsonSchema => ({
  description: describe(meaning),
  type: 'array',
  minItems: 1,
  items: mapSchema(fields, describe),
});
