/** How bounds rose, one after the other: each event with its cause. */
export interface EventRows {
  readonly bound: Int32Array;
  readonly value: Int32Array;
  /** The event of the same bound before this. */
  readonly before: Int32Array;
  /** The literal through which it rose, `ALWAYS`, or `OVER_BREAK`. */
  readonly literal: Int32Array;
  /** The event it rose from, -1 where it was so from the beginning. */
  readonly from: Int32Array;
  readonly weight: Int32Array;
}

/** Through which a bound rose where that is no literal: an order that always holds, or a break. */
export const ALWAYS = -1;
export const OVER_BREAK = -2;

/** Room for so many. */
export function eventRows(length: number): EventRows {
  const row = (): Int32Array => new Int32Array(length);
  return { bound: row(), value: row(), before: row(), literal: row(), from: row(), weight: row() };
}

/** The same with twice the room. */
export function doubled(events: EventRows): EventRows {
  const grown = eventRows(2 * events.bound.length);
  grown.bound.set(events.bound);
  grown.value.set(events.value);
  grown.before.set(events.before);
  grown.literal.set(events.literal);
  grown.from.set(events.from);
  grown.weight.set(events.weight);
  return grown;
}
