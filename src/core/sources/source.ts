/** From - to: the low end first; both alike where a table prints one figure. */
export type Range<Q extends number = number> = readonly [low: Q, high: Q];

/**
 * How well a figure is known to come from where it says: somebody read it there, it is from memory
 * and still has to be looked up, or it is common practice without a source.
 */
export type Provenance = 'read' | 'memory' | 'common practice';

/** A row of a sourced table. Every one names its source; none fills in what nobody could read. */
export interface Row {
  /** Plain words, as they stand in a file. */
  readonly name: string;
  readonly source: string;
  /** Of the weakest figure in the row. */
  readonly provenance: Provenance;
  readonly note?: string;
}

/** For figures that have none. */
export const NO_SOURCE = 'common practice, no source';

/** A figure that a table prints alone holds within this share of itself: common practice, no source. */
const ALONE = 0.2;

/**
 * What is taken of a table's range: the range itself, and around a figure that stands alone a fifth
 * of it either way. No friction is known to the last digit.
 *
 * @example heldWithin([0.3, 0.5]) // => [0.3, 0.5]
 * @example heldWithin([0.5, 0.5]) // => [0.4, 0.6]
 */
export const heldWithin = <Q extends number>([low, high]: Range<Q>): Range<Q> =>
  low < high ? [low, high] : [(low * (1 - ALONE)) as Q, (high * (1 + ALONE)) as Q];

/**
 * The row with a name, in any case and with single spaces.
 *
 * @example rowNamed([{ name: 'dry pin', source: 'x', provenance: 'memory' }], 'Dry  pin')?.provenance // => 'memory'
 */
export const rowNamed = <R extends Row>(rows: readonly R[], name: string): R | undefined => {
  const wanted = name.trim().toLowerCase().replace(/\s+/g, ' ');
  return rows.find((row) => row.name.toLowerCase() === wanted);
};
