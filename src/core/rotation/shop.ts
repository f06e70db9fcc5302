/**
 * Tasks with a length that need things which bear only so many of them at once: an open shop with
 * some rules more. Times are whole numbers of any unit. It knows neither groups nor tables.
 *
 * A *task* has one length. A *resource* bears `capacity` of its tasks at once; a task holds it for
 * its length and `after` more (the walk of a group, the reset of a table). `before` pairs: the
 * second begins no sooner than the first is done, plus its gap. A task runs inside its window, and
 * over no blocked interval.
 */
export interface Shop {
  readonly lengths: readonly number[];
  readonly resources: readonly Resource[];
  readonly before: readonly Precedence[];
  /** Earliest beginning by task; all 0 where it is `null`. */
  readonly earliest: readonly number[] | null;
  /** Latest end by task; `null` is none. */
  readonly latest: readonly number[] | null;
  readonly blocked: readonly Blocked[];
}

export interface Resource {
  readonly capacity: number;
  readonly tasks: readonly number[];
  /** By place in `tasks`: how long it stays taken after the task is done. */
  readonly after: readonly number[];
}

export interface Precedence {
  readonly first: number;
  readonly then: number;
  readonly gap: number;
}

/** `tasks` may not run inside it; `null` is all of them. */
export interface Blocked {
  readonly from: number;
  readonly to: number;
  readonly tasks: readonly number[] | null;
}

/** How hard to look. The same seed and steps give the same answer on every machine. */
export interface SearchEffort {
  readonly seed: number;
  /** Choices that turned out wrong before it gives up proving. */
  readonly steps: number;
}

export type ShopAnswer =
  /** `end`: when the last task is done, without what stays taken after it. */
  | {
      readonly kind: 'schedule';
      readonly starts: readonly number[];
      readonly end: number;
      readonly bound: number;
      readonly proof: 'bound' | 'search' | 'none';
    }
  /** No schedule keeps all windows. */
  | { readonly kind: 'impossible' }
  /** The effort was spent with neither a schedule nor a proof that there is none. */
  | { readonly kind: 'unknown'; readonly bound: number };
