import type { Seconds } from '../quantities/brands.ts';

/**
 * Something that somebody wants of a timetable and that can be given up. What can't (a group is at
 * one table at a time, a table takes one group a copy) is no wish.
 */
export type Wish = WishedThing & {
  /** What a clash names it by; one id a wish. */
  readonly id: string;
  /** Place in the visit file; `null` where the program itself wishes it, or a what-if does. */
  readonly path: readonly (string | number)[] | null;
  /** Which what-if wishes it; left out where none does. */
  readonly asked?: 'minutes' | 'adults' | 'close';
};

export type WishedThing =
  /** All done before the bell, and nobody before the beginning. */
  | { readonly kind: 'bell' }
  /** Only so many adults, each where she may stand. */
  | { readonly kind: 'adults' }
  /** A group is to do a table, whatever else is left out; `null` is every group. */
  | { readonly kind: 'does'; readonly table: string; readonly group: string | null }
  | { readonly kind: 'skips'; readonly table: string; readonly group: string }
  /** Not there today, or not at those times. */
  | { readonly kind: 'closed'; readonly table: string; readonly from: Seconds; readonly to: Seconds | null }
  | { readonly kind: 'copies'; readonly table: string; readonly copies: number }
  /** One table before another; `null` is every group that does both. */
  | { readonly kind: 'before'; readonly first: string; readonly then: string; readonly group: string | null }
  | { readonly kind: 'first'; readonly table: string; readonly group: string | null }
  | { readonly kind: 'last'; readonly table: string; readonly group: string | null }
  /** At this table at this time. */
  | { readonly kind: 'at'; readonly table: string; readonly group: string; readonly time: Seconds }
  /** Has to go before the bell, or comes late. */
  | { readonly kind: 'away'; readonly group: string; readonly from: Seconds; readonly to: Seconds | null }
  /** Never at tables beside each other at the same time, nor at two copies of one. */
  | { readonly kind: 'apart'; readonly groups: readonly [string, string] }
  /** Always at tables beside each other, or at two copies of one; only where all move on a signal. */
  | { readonly kind: 'together'; readonly groups: readonly [string, string] };
