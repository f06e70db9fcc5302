import type { Entry, Happening, Seat } from './entry.ts';

/**
 * What one device has written and where each of it is. A value: the page keeps it in whatever
 * outlives a reload, and shows its three words.
 */
export interface Outbox {
  readonly visit: string;
  readonly device: string;
  readonly items: readonly OutboxItem[];
  /** Numbers begin after this one: above 0 where an outbox was lost, so that none is given twice. */
  readonly from: number;
}

/** `here`: on this device only. `sent`: on its way, not yet answered. `stored`: it outlives the device. */
export type Whereabouts = 'here' | 'sent' | 'stored' | 'refused';

export interface OutboxItem {
  readonly entry: Entry;
  readonly whereabouts: Whereabouts;
  /** Why it was refused, as a code; `null` otherwise. */
  readonly refusal: string | null;
}

/** Most entries in one delivery: a long evening offline goes in several. */
export const MOST_IN_DELIVERY = 50;

/** @example emptyOutbox('v', 'd').items.length // => 0 */
export const emptyOutbox = (visit: string, device: string, from = 0): Outbox => ({
  visit,
  device,
  items: [],
  from,
});

/** One more thing that happened; its id is made of the device's and the sequence. */
export function written(outbox: Outbox, seat: Seat, what: Happening, made: number): Outbox {
  const sequence = (outbox.items.at(-1)?.entry.sequence ?? outbox.from) + 1;
  const { visit, device } = outbox;
  const entry = { id: `${device}.${sequence}`, visit, device, sequence, made, seat, what };
  return { ...outbox, items: [...outbox.items, { entry, whereabouts: 'here', refusal: null }] };
}

/** What goes next, oldest first: what was sent and never answered goes again. */
export const delivery = (outbox: Outbox): readonly Entry[] =>
  outbox.items
    .filter(({ whereabouts }) => whereabouts === 'here' || whereabouts === 'sent')
    .slice(0, MOST_IN_DELIVERY)
    .map(({ entry }) => entry);

export const sent = (outbox: Outbox, ids: readonly string[]): Outbox =>
  moved(outbox, ids, (item) => (item.whereabouts === 'here' ? { ...item, whereabouts: 'sent' } : item));

/** No answer came, so nobody knows whether it arrived: it is on this device. */
export const unanswered = (outbox: Outbox, ids: readonly string[]): Outbox =>
  moved(outbox, ids, (item) => (item.whereabouts === 'sent' ? { ...item, whereabouts: 'here' } : item));

export const stored = (outbox: Outbox, ids: readonly string[]): Outbox =>
  moved(outbox, ids, (item) => ({ ...item, whereabouts: 'stored', refusal: null }));

/** It will never be taken as it is: kept and shown, not sent again and again. */
export const refused = (outbox: Outbox, ids: readonly string[], why: string): Outbox =>
  moved(outbox, ids, (item) =>
    item.whereabouts === 'stored' ? item : { ...item, whereabouts: 'refused', refusal: why },
  );

function moved(outbox: Outbox, ids: readonly string[], move: (item: OutboxItem) => OutboxItem): Outbox {
  const those = new Set(ids);
  return { ...outbox, items: outbox.items.map((item) => (those.has(item.entry.id) ? move(item) : item)) };
}

/**
 * How long to wait after so many failures in a row, in milliseconds: a second, doubled up to half a
 * minute, spread by `chance` (0 to 1) so that sixty tablets don't come back in the same moment.
 *
 * @example untilNextTry(0, 0.5) // => 1000
 */
export const untilNextTry = (failures: number, chance: number): number =>
  Math.min(1000 * 2 ** failures, 30_000) * (0.5 + chance);
