import type { Field, FilledValue, Sourced, SourcedTable } from '../description/fields.ts';
import { heldWithin } from '../sources/source.ts';
import { between, type Measured, product } from '../uncertainty/measured.ts';
import { atValue, type Context, nearestFact, type Path } from './context.ts';
import { type SourcedKind, sourcedKindNamed, sourcedKinds } from './sourced-kind.ts';
import { measuredFrom, quantityIn } from './written-measured.ts';

type SourcedFieldType = Extract<Field, { readonly type: 'sourced' }>;

/**
 * Reads a friction as people say it: `wood on wood`; `0.25..0.35`; `0.3, starting 0.4`;
 * `0.3, wood on wood`. One number is the moving friction. Starting then takes the sourced ratio of
 * the named kind, or of the kind that the field assumes; where no source tells starting from moving
 * they are the same value. A named kind is one unknown wherever it turns up.
 */
export function readSourced(
  text: string,
  field: SourcedFieldType,
  id: string,
  path: Path,
  context: Context,
): FilledValue | null {
  const named = sourcedKindNamed(field.table, field.dimensions, text);
  if (named !== undefined) return filled(ofKind(field.table, named), text);
  // A decimal comma is never followed by a space, a separating one always is.
  const [first = { text, from: 0 }, ...rest] = segments(text);
  if (!/^[-−+.,]?\d/.test(first.text)) return unknownKind(text, field, [0, text.length], path, context);

  const moving = quantityIn(first.text, field.dimensions, path, context, first.from);
  const asked = rest[0];
  const hasStarting = asked !== undefined && /^starting\b/i.test(asked.text);
  const startingText = hasStarting ? asked.text.replace(/^starting\s*/i, '') : '';
  const starting = hasStarting
    ? quantityIn(
        startingText,
        field.dimensions,
        path,
        context,
        asked.from + asked.text.length - startingText.length,
      )
    : null;
  const names = hasStarting ? rest.slice(1) : rest;
  const name = names.map((each) => each.text).join(', ');
  const kind = sourcedKindNamed(field.table, field.dimensions, name || (field.assumed ?? ''));
  if (name !== '' && kind === undefined)
    return unknownKind(name, field, [names[0]?.from ?? 0, text.length], path, context);
  if (moving === null || (hasStarting && starting === null)) return null;
  if (moving.value < 0) {
    atValue(context, path, 'friction-below-nothing', { written: first.text }, [
      first.from,
      first.text.length,
    ]);
    return null;
  }
  if (starting !== null && starting.value < moving.value) {
    const facts = { written: startingText, moving: first.text };
    atValue(context, path, 'starting-below-moving', facts, [asked?.from ?? 0, text.length]);
    return null;
  }
  const value = measuredFrom(moving, id);
  return filled(
    {
      moving: value,
      starting:
        starting === null
          ? startingOf(value, field.table, kind)
          : measuredFrom(starting, `${id} at the start`),
      ...(name === '' || kind === undefined ? {} : { kind: kind.name }),
    },
    text,
  );
}

/** What a field takes that was left out: the sourced range of the kind that it assumes. */
export function assumedSourced(field: SourcedFieldType): FilledValue | null {
  const kind =
    field.assumed === undefined ? undefined : sourcedKindNamed(field.table, field.dimensions, field.assumed);
  return kind === undefined ? null : filled(ofKind(field.table, kind), '');
}

/** A kind by name: its range, and its start in step with it, so that starting is never the easier. */
function ofKind(table: SourcedTable, kind: SourcedKind): Sourced {
  const moving = between(`kind:${table}/${kind.name}`, ...heldWithin(kind.moving), 'assumed', kind.source);
  return { moving, starting: startingOf(moving, table, kind), kind: kind.name };
}

function startingOf(moving: Measured, table: SourcedTable, kind: SourcedKind | undefined): Measured {
  if (kind?.ratio === undefined) return moving;
  return product(moving, between(`kind:${table}/${kind.name}/ratio`, ...kind.ratio, 'assumed', kind.source));
}

const filled = (sourced: Sourced, written: string): FilledValue => ({ type: 'sourced', sourced, written });

function unknownKind(
  written: string,
  field: SourcedFieldType,
  span: readonly [number, number],
  path: Path,
  context: Context,
): null {
  const known = sourcedKinds(field.table, field.dimensions).map((kind) => kind.name);
  const facts = {
    written,
    known,
    table: field.table,
    example: field.example,
    ...nearestFact(written, known),
  };
  atValue(context, path, 'unknown-kind', facts, span);
  return null;
}

interface Segment {
  readonly text: string;
  readonly from: number;
}

function segments(text: string): readonly Segment[] {
  const found: Segment[] = [];
  let from = 0;
  for (const piece of text.split(/(,\s+)/)) {
    if (!/^,\s+$/.test(piece)) found.push({ text: piece, from });
    from += piece.length;
  }
  return found;
}
