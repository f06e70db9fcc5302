import type { Place } from '../diagnostics/diagnostic.ts';
import type { Dimension } from '../quantities/dimension.ts';
import { readQuantity, type Written } from '../quantities/read-quantity.ts';
import { type Measured, measured } from '../uncertainty/measured.ts';
import { atValue, type Context, type Path } from './context.ts';

/** A quantity in a text of the file, or `null` with the fault reported under `quantity.<fault>`. */
export function quantityIn(
  text: string,
  dimensions: readonly Dimension[],
  path: Path,
  context: Context,
  offset = 0,
): Written | null {
  const read = readQuantity(text, { dimensions, decimal: context.decimal });
  if (read.kind === 'written') return read;
  const { fault, facts, span, nearest } = read;
  const at: NonNullable<Place['span']> = [offset + span[0], offset + span[1]];
  atValue(context, path, `quantity.${fault}`, { ...facts, ...(nearest ? { nearest } : {}) }, at);
  return null;
}

/** What was written, as a value with one unknown of its own. */
export const measuredFrom = <Q extends number>(written: Written, id: string): Measured<Q> =>
  measured(written.value as Q, { id, u: written.u, shape: written.shape, origin: written.origin });
