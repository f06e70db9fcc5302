import type { Entry, Stored } from './entry.ts';
import type { Delivery, Journal } from './journal.ts';

/** A journal that ends with the process: for tests, and a private window. */
export function memoryJournal(): Journal {
  const visits = new Map<string, Stored[]>();
  const known = new Map<string, Stored>();
  const keep = (entry: Entry, { received, sent }: Delivery): Stored => {
    const key = `${entry.visit}\n${entry.id}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    const journal = visits.get(entry.visit) ?? [];
    const stored = { entry, position: journal.length + 1, received, behind: received - sent };
    journal.push(stored);
    visits.set(entry.visit, journal);
    known.set(key, stored);
    return stored;
  };
  return {
    append: async (delivery) => delivery.entries.map((entry) => keep(entry, delivery)),
    since: async (visit, position) => (visits.get(visit) ?? []).slice(position),
    close: async () => undefined,
  };
}
