import type { Stored } from './entry.ts';

/** An entry and when it happened, as well as can be told. */
export interface Dated {
  readonly stored: Stored;
  readonly when: number;
}

/**
 * Entries in the order in which they happened, whatever their devices' clocks say and however they
 * came. What one device wrote keeps its sequence. Between devices the clock counts, set right by what
 * it was wrong at sending; nothing happened after it came, nor after what the same device wrote next.
 */
export function inSaneOrder(entries: readonly Stored[]): readonly Dated[] {
  const byDevice = new Map<string, Stored[]>();
  for (const each of entries) {
    const own = byDevice.get(each.entry.device);
    if (own === undefined) byDevice.set(each.entry.device, [each]);
    else own.push(each);
  }
  const dated = [...byDevice.values()].flatMap((own) => datedOf(own));
  return dated.sort((a, b) => a.when - b.when || ofDevice(a.stored, b.stored));
}

function datedOf(own: readonly Stored[]): readonly Dated[] {
  let next = Number.POSITIVE_INFINITY;
  return [...own]
    .sort((a, b) => b.entry.sequence - a.entry.sequence)
    .map((stored) => {
      next = Math.min(next, stored.received, stored.entry.made + stored.behind);
      return { stored, when: next };
    });
}

const ofDevice = (a: Stored, b: Stored): number =>
  a.entry.device === b.entry.device
    ? a.entry.sequence - b.entry.sequence
    : a.entry.device < b.entry.device
      ? -1
      : 1;
