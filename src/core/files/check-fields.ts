import type { Field, Fields, Filled, FilledValue } from '../description/fields.ts';
import { checkField } from './check-field.ts';
import { atKey, type Context, type Path, refuseUnknownKeys } from './context.ts';
import type { MapNode } from './node.ts';
import { assumedSourced } from './sourced-field.ts';

/** Where checked fields stand, and whose unknowns they are. */
export interface Owner {
  readonly path: Path;
  /** Identity of the unknown behind a field: `<mark>/<field>`. */
  readonly idOf: (field: string) => string;
  /** Keys that something else reads here. */
  readonly besides?: readonly string[];
}

export interface CheckedFields {
  readonly filled: Filled;
  /** Every required field is there and nothing was refused. */
  readonly isSound: boolean;
}

/**
 * Holds what was written against the one description of its fields: unknown keys with the nearest
 * known one, what is missing, every value by its type. All findings at once; what is sound is filled.
 */
export function checkFields(map: MapNode, fields: Fields, owner: Owner, context: Context): CheckedFields {
  const filled: Record<string, FilledValue> = {};
  let isSound = true;
  const counting: Context = {
    ...context,
    report: (diagnostic) => {
      if (diagnostic.severity === 'error') isSound = false;
      context.report(diagnostic);
    },
  };
  refuseUnknownKeys(map, owner.path, [...(owner.besides ?? []), ...Object.keys(fields)], counting);
  for (const [key, field] of Object.entries(fields)) {
    const entry = map.entries.find((each) => each.key === key);
    const value =
      entry === undefined
        ? leftOut(key, field, owner.path, counting)
        : checkField(entry.node, key, field, { path: [...owner.path, key], id: owner.idOf(key) }, counting);
    if (value !== null) filled[key] = value;
  }
  return { filled, isSound };
}

/** A field left out: refused where it must stand, a sourced range where one is known. */
function leftOut(key: string, field: Field, path: Path, context: Context): FilledValue | null {
  if (field.required === true) atKey(context, path, 'missing-key', { key, example: field.example });
  return field.type === 'sourced' ? assumedSourced(field) : null;
}
