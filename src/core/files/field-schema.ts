import type { Field, Fields } from '../description/fields.ts';
import { sourcedKinds } from './sourced-kind.ts';

/** JSON Schema, draft 2020-12, as plain data. */
export type JsonSchema = { readonly [key: string]: unknown };

/** The sentence of a key in the language that the schema is printed in. */
export type Describe = (key: string) => string;

/** A text that an editor's YAML may take for a number or a truth value. */
export const TEXT = ['string', 'number', 'boolean'] as const;

/**
 * One field as a schema. Patterns are loose on purpose: an editor warns of the gross slip, the check
 * says what exactly is wrong.
 */
export function fieldSchema(field: Field, describe: Describe): JsonSchema {
  return { description: describe(field.meaning), ...typeSchema(field), examples: [exampleOf(field)] };
}

function typeSchema(field: Field): JsonSchema {
  switch (field.type) {
    case 'quantity':
      return numberSchema(field.dimensions.includes('ratio'));
    case 'quantities':
      return {
        anyOf: [
          numberSchema(field.dimensions.includes('ratio')),
          { type: 'array', minItems: 1, items: numberSchema(field.dimensions.includes('ratio')) },
        ],
      };
    case 'count':
      return {
        type: 'integer',
        minimum: field.least,
        ...(field.most === undefined ? {} : { maximum: field.most }),
      };
    case 'position':
      return { type: 'string', pattern: '^hole [1-9]|[0-9].*[A-Za-z°]' };
    case 'choice':
      return { enum: field.of };
    case 'sourced':
      return {
        anyOf: [
          { enum: sourcedKinds(field.table, field.dimensions).map((kind) => kind.name) },
          numberSchema(field.dimensions.includes('ratio')),
        ],
      };
    case 'text':
      return { type: TEXT };
    case 'marks':
      return { anyOf: [{ type: TEXT }, { type: 'array', minItems: 1, items: { type: TEXT } }] };
    case 'yes-no':
      return { enum: ['yes', 'no'] };
  }
}

/** A number needs its unit, so it is a text; only a ratio may stand as a bare number. */
const numberSchema = (isRatio: boolean): JsonSchema =>
  isRatio
    ? { type: ['string', 'number'], pattern: '[0-9]' }
    : { type: 'string', pattern: '[0-9].*[A-Za-z°]' };

/** As an editor's YAML reads it. */
function exampleOf(field: Field): string | number {
  const isNumber = field.type === 'count' || /^\d+(\.\d+)?$/.test(field.example);
  return isNumber && Number.isFinite(Number(field.example)) ? Number(field.example) : field.example;
}

/** A map with these fields and nothing else. */
export function mapSchema(
  fields: Fields,
  describe: Describe,
  besides: { readonly [key: string]: JsonSchema } = {},
  required: readonly string[] = [],
): JsonSchema {
  const own = Object.entries(fields).map(([key, field]) => [key, fieldSchema(field, describe)] as const);
  const needed = Object.entries(fields).flatMap(([key, field]) => (field.required === true ? [key] : []));
  return {
    type: 'object',
    properties: { ...besides, ...Object.fromEntries(own) },
    required: [...new Set([...required, ...needed])],
    additionalProperties: false,
  };
}

/** A list, or one text with commas between. */
export const wordsSchema = (description: string, of?: readonly string[]): JsonSchema => ({
  description,
  anyOf: [
    { type: TEXT },
    { type: 'array', minItems: 1, items: of === undefined ? { type: TEXT } : { enum: of } },
  ],
});
