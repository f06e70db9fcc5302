import { SIZE_FIELD } from '../kit/role.ts';
import type { DecimalMark } from '../quantities/print-quantity.ts';
import { valueAt } from './edit-text.ts';
import type { Node } from './node.ts';

/**
 * What an activity asks for so that this part of a kit answers it: `weight of 200 g` where its size
 * matters, else its kind.
 */
export function roleWords(
  kit: { readonly root: Node | null; readonly decimal: DecimalMark },
  part: { readonly mark: string; readonly kind: string },
  decimal: DecimalMark,
): string {
  for (const [asks, field] of Object.entries(SIZE_FIELD)) {
    const written = valueAt(kit.root, ['parts', part.mark, field]);
    if (written !== null) return `${part.kind} ${asks} ${inDecimals(written.trim(), kit.decimal, decimal)}`;
  }
  return part.kind;
}

/** A written number with the sign before the tenths that another file has. */
export function inDecimals(written: string, from: DecimalMark, to: DecimalMark): string {
  if (from === to) return written;
  return written.replace(from === 'point' ? /(\d)\.(\d)/g : /(\d),(\d)/g, to === 'point' ? '$1.$2' : '$1,$2');
}
