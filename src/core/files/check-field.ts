import type { Field, FilledValue } from '../description/fields.ts';
import type { Facts } from '../diagnostics/diagnostic.ts';
import type { Dimension } from '../quantities/dimension.ts';
import { toSi } from '../quantities/unit.ts';
import { asText, atValue, type Context, nearestFact, type Path } from './context.ts';
import { readMarks } from './marks.ts';
import type { Node } from './node.ts';
import { readSourced } from './sourced-field.ts';
import { measuredFrom, quantityIn } from './written-measured.ts';

/** Where one value stands, and the identity of its unknown. */
export interface Spot {
  readonly path: Path;
  readonly id: string;
}

/** One value against the description of its field; `null` where it was refused. */
export function checkField(
  node: Node,
  key: string,
  field: Field,
  spot: Spot,
  context: Context,
): FilledValue | null {
  if (field.type === 'quantities') return quantities(node, field, spot, context);
  if (field.type === 'marks') return marks(node, spot, context);
  const text = asText(node, spot.path, context);
  if (text === null) return null;
  switch (field.type) {
    case 'quantity':
      return quantity(text, field, spot, context);
    case 'count':
      return count(text, field, spot.path, context);
    case 'position':
      return position(text, spot, context);
    case 'choice':
      return choice(text, key, field.of, spot.path, context);
    case 'sourced':
      return readSourced(text, field, spot.id, spot.path, context);
    case 'text':
      return { type: 'text', text };
    case 'yes-no':
      if (text === 'yes' || text === 'no') return { type: 'yes-no', yes: text === 'yes' };
      atValue(context, spot.path, 'not-yes-or-no', { written: text, key });
      return null;
  }
}

/** Marks as a list or as one text with commas between: `5, 6`. */
function marks(node: Node, { path }: Spot, context: Context): FilledValue | null {
  const written = readMarks(node, path, context).map(({ mark }) => mark);
  return written.length === 0 ? null : { type: 'marks', marks: written };
}

type Kind<T extends Field['type']> = Extract<Field, { readonly type: T }>;

function quantity(text: string, field: Kind<'quantity'>, spot: Spot, context: Context): FilledValue | null {
  const written = quantityIn(text, field.dimensions, spot.path, context);
  if (written === null) return null;
  const { value, dimension } = written;
  if (!isWithin(value, field, text, spot.path, context, (si) => ({ si, dimension }))) return null;
  const unit = written.unit === '' ? {} : { unit: { symbol: written.unit, si: toSi(1, written.unit) } };
  return { type: 'quantity', measured: measuredFrom(written, spot.id), dimension, written: text, ...unit };
}

/** Several, as a list or as one text with commas between: `5 cm, 10 cm, 15 cm`. */
function quantities(node: Node, field: Kind<'quantities'>, spot: Spot, context: Context): FilledValue | null {
  const pieces: { text: string; path: Path; offset: number }[] = [];
  if (node.kind === 'list') {
    node.items.forEach((item, n) => {
      const text = asText(item, [...spot.path, n], context);
      if (text !== null) pieces.push({ text, path: [...spot.path, n], offset: 0 });
    });
    if (pieces.length < node.items.length || pieces.length === 0) return null;
  } else {
    const text = asText(node, spot.path, context);
    if (text === null) return null;
    let offset = 0;
    for (const piece of text.split(/(,\s+)/)) {
      if (!/^,\s+$/.test(piece)) pieces.push({ text: piece, path: spot.path, offset });
      offset += piece.length;
    }
  }
  const measured = [];
  let dimension: Dimension | undefined;
  for (const [n, piece] of pieces.entries()) {
    const written = quantityIn(piece.text, field.dimensions, piece.path, context, piece.offset);
    if (written === null) continue;
    const as = (si: number) => ({ si, dimension: written.dimension });
    if (!isWithin(written.value, field, piece.text, piece.path, context, as)) continue;
    dimension ??= written.dimension;
    measured.push(measuredFrom(written, `${spot.id} ${n + 1}`));
  }
  if (dimension === undefined || measured.length < pieces.length) return null;
  return { type: 'quantities', measured, dimension, written: pieces.map((each) => each.text).join(', ') };
}

function count(text: string, field: Kind<'count'>, path: Path, context: Context): FilledValue | null {
  if (!/^\d{1,9}$/.test(text)) {
    atValue(context, path, 'not-a-count', { written: text, example: field.example });
    return null;
  }
  const counted = Number(text);
  return isWithin(counted, field, text, path, context, (bound) => bound)
    ? { type: 'count', count: counted }
    : null;
}

function position(text: string, spot: Spot, context: Context): FilledValue | null {
  const hole = /^hole (\d{1,9})$/.exec(text)?.[1];
  if (hole !== undefined && Number(hole) > 0) return { type: 'hole', hole: Number(hole) };
  if (!/\d\s*\p{L}/u.test(text)) {
    const bare = /^\d{1,9}$/.test(text) ? { bare: text } : {};
    atValue(context, spot.path, 'not-a-position', { written: text, ...bare });
    return null;
  }
  const written = quantityIn(text, ['length'], spot.path, context);
  return written === null
    ? null
    : { type: 'quantity', measured: measuredFrom(written, spot.id), dimension: 'length', written: text };
}

function choice(
  text: string,
  key: string,
  known: readonly string[],
  path: Path,
  context: Context,
): FilledValue | null {
  if (known.includes(text)) return { type: 'choice', choice: text };
  atValue(context, path, 'unknown-choice', { written: text, key, known, ...nearestFact(text, known) });
  return null;
}

/** Bounds are part of the description; a finding carries the bound that was broken. */
function isWithin(
  value: number,
  bounds: { readonly least?: number; readonly above?: number; readonly most?: number },
  written: string,
  path: Path,
  context: Context,
  as: (bound: number) => Facts[string],
): boolean {
  const { least, above, most } = bounds;
  if (least !== undefined && value < least)
    atValue(context, path, 'below-least', { written, least: as(least) });
  else if (above !== undefined && value <= above)
    atValue(context, path, 'not-above', { written, above: as(above) });
  else if (most !== undefined && value > most)
    atValue(context, path, 'above-most', { written, most: as(most) });
  else return true;
  return false;
}
