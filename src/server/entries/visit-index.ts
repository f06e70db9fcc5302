import type { Stored } from '../../store/entry.ts';
import type { Journal } from '../../store/journal.ts';

/** What has to be known of a visit's entries to say whether another may be taken. */
export interface KnownEntries {
  readonly ids: ReadonlySet<string>;
  readonly readings: ReadonlyMap<string, { readonly group: string; readonly setup: string }>;
  /** Which device took a group last, and when, by the server's clock. */
  readonly handed: ReadonlyMap<string, Handed>;
}

export interface Handed {
  readonly device: string;
  readonly when: number;
}

export interface VisitIndex {
  readonly of: (visit: string) => Promise<KnownEntries>;
  readonly add: (visit: string, stored: readonly Stored[]) => Promise<void>;
  readonly forget: (visit: string) => void;
}

/** Read once from the journal, then kept up to date with what is stored. */
export function visitIndex(journal: Journal): VisitIndex {
  const visits = new Map<string, Promise<Growing>>();
  const load = async (visit: string): Promise<Growing> => {
    const known = { ids: new Set<string>(), readings: new Map(), handed: new Map() };
    for (const stored of await journal.since(visit, 0)) take(known, stored);
    return known;
  };
  const of = (visit: string): Promise<Growing> => {
    const found = visits.get(visit) ?? load(visit);
    visits.set(visit, found);
    // A reading that failed is tried again by the next who asks.
    found.catch(() => visits.delete(visit));
    return found;
  };
  return {
    of,
    add: async (visit, stored) => {
      const known = await of(visit);
      for (const each of stored) take(known, each);
    },
    forget: (visit) => visits.delete(visit),
  };
}

interface Growing extends KnownEntries {
  readonly ids: Set<string>;
  readonly readings: Map<string, { readonly group: string; readonly setup: string }>;
  readonly handed: Map<string, Handed>;
}

function take(known: Growing, stored: Stored): void {
  const { id, device, what } = stored.entry;
  known.ids.add(id);
  if (what.kind === 'reading') known.readings.set(id, { group: what.group, setup: what.setup });
  if (what.kind !== 'handed') return;
  const when = whenOf(stored.entry.made, stored);
  if (when >= (known.handed.get(what.group)?.when ?? Number.NEGATIVE_INFINITY))
    known.handed.set(what.group, { device, when });
}

/** When something was made, by the server's clock; nothing was made after it came. */
export const whenOf = (made: number, { received, behind }: Pick<Stored, 'received' | 'behind'>): number =>
  Math.min(received, made + behind);
