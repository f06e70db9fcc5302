import type { SheetOfPaper } from './block.ts';

/** Shares of its size at which the words of a sheet are set, the largest first. */
const SHARES = [1, 0.95, 0.9, 0.86, 0.8, 0.77] as const;
/** The least that can still be read, 9 points of 10.5 and 10 of 13: common practice, no source. */
const LEAST_SHARE = { usual: 0.86, large: 0.77, sign: 1 } as const;

/**
 * The largest share of its type at which a sheet has no more sides than it may; nothing is cut where none is small
 * enough. `sidesAt` sets the sheet at a share and counts.
 *
 * @example typeThatFits({ size: 'usual', mostSides: 2 }, (share) => (share > 0.9 ? 3 : 2)) // => 0.9
 */
export function typeThatFits(
  { mostSides, size }: Pick<SheetOfPaper, 'mostSides' | 'size'>,
  sidesAt: (share: number) => number,
): number {
  if (mostSides === undefined) return 1;
  return (
    SHARES.filter((share) => share >= LEAST_SHARE[size]).find((share) => sidesAt(share) <= mostSides) ?? 1
  );
}
