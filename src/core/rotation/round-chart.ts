/**
 * Groups x tables in rounds that begin and end together: in each round a group is at one table or
 * at none. The round lasts as long as the slowest table that is taken in it. Whole numbers of any unit.
 */
export interface RoundProblem {
  readonly groups: number;
  readonly tables: number;
  /** Visits that have to be, as pairs. */
  readonly visits: readonly GroupAtTable[];
  /** How long a round with this table in it lasts at least. */
  readonly lengths: readonly number[];
  /** How many groups at once, by table. */
  readonly copies: readonly number[];
  /** So many groups in all at these tables in one round: what the adults can attend to. */
  readonly limits: readonly RoundLimit[];
  /** A table before another, for one group or (`null`) each. */
  readonly before: readonly {
    readonly first: number;
    readonly then: number;
    readonly group: number | null;
  }[];
  /** A table as the first or last one that a group does. */
  readonly ends: readonly {
    readonly which: 'first' | 'last';
    readonly table: number;
    readonly group: number | null;
  }[];
  /** Tables next to each other. */
  readonly beside: readonly (readonly [number, number])[];
  readonly apart: readonly (readonly [number, number])[];
  readonly together: readonly (readonly [number, number])[];
  /** Times, not rounds: a group may not be in a round that overlaps them, a table neither. */
  readonly away: readonly { readonly group: number; readonly from: number; readonly to: number }[];
  readonly closed: readonly { readonly table: number; readonly from: number; readonly to: number }[];
  readonly at: readonly { readonly group: number; readonly table: number; readonly time: number }[];
  /** No round may overlap one; a round that would is put off until it is over. */
  readonly breaks: readonly { readonly from: number; readonly to: number }[];
  /** Between rounds. */
  readonly walk: number;
  readonly begins: number;
  /** All done by then; `null`: as soon as it can be. */
  readonly bell: number | null;
  /** The plan that stood before, by round and group, -1 for no table: where given, the fewest changes from it come before the shortest end. */
  readonly standing: readonly (readonly number[])[] | null;
}

export interface GroupAtTable {
  readonly group: number;
  readonly table: number;
}

export interface RoundLimit {
  readonly tables: readonly number[];
  readonly capacity: number;
}

export type RoundAnswer =
  | {
      readonly kind: 'rounds';
      /** By round and group: the table, or -1. */
      readonly chart: readonly (readonly number[])[];
      readonly from: readonly number[];
      readonly to: readonly number[];
      readonly end: number;
      readonly bound: number;
      /** Cells that differ from the plan that stood, 0 where none did. */
      readonly changes: number;
      readonly proof: 'bound' | 'search' | 'none';
    }
  | { readonly kind: 'impossible' }
  | { readonly kind: 'unknown'; readonly bound: number };
