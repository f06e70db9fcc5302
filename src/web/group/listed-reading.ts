import type { Outbox, OutboxItem, Whereabouts } from '../../store/outbox.ts';
import type { OwnReading } from '../../store/wire.ts';

/** A reading as the group's list shows it: what it says now, and where it is. */
export interface ListedReading extends OwnReading {
  readonly whereabouts: Whereabouts;
  readonly refusal: string | null;
}

const ORDER: readonly Whereabouts[] = ['refused', 'here', 'sent', 'stored'];
const least = (a: Whereabouts, b: Whereabouts): Whereabouts => (ORDER.indexOf(a) <= ORDER.indexOf(b) ? a : b);

/**
 * What the server knows of a group's readings, and on top of it what this device wrote since: a reading
 * is *stored* only once all that was written about it is.
 */
export function listedReadings(
  known: readonly OwnReading[],
  outbox: Outbox,
  fresh: ReadonlySet<string>,
): readonly ListedReading[] {
  const list = new Map<string, ListedReading>();
  for (const reading of known) list.set(reading.id, { ...reading, whereabouts: 'stored', refusal: null });
  const isKnown = new Set(list.keys());
  for (const item of outbox.items) {
    const { id, what } = item.entry;
    if (what.kind === 'reading' && !isKnown.has(id))
      list.set(id, {
        id,
        setup: what.setup,
        written: what.written,
        before: [],
        isVoid: false,
        again: null,
        whereabouts: item.whereabouts,
        refusal: item.refusal,
      });
    else if (what.kind === 'correction' || what.kind === 'void' || what.kind === 'restore') {
      const before = list.get(what.of);
      const isTold = item.whereabouts === 'stored' && isKnown.has(what.of) && !fresh.has(id);
      if (before !== undefined && !isTold) list.set(what.of, changed(before, item));
    }
  }
  return [...list.values()];
}

function changed(reading: ListedReading, { entry, whereabouts, refusal }: OutboxItem): ListedReading {
  const { what } = entry;
  const where = {
    whereabouts: least(reading.whereabouts, whereabouts),
    refusal: reading.refusal ?? refusal,
  };
  // What was refused changes nothing; that it was is still shown.
  if (whereabouts === 'refused') return { ...reading, ...where };
  switch (what.kind) {
    case 'correction':
      return what.written === reading.written
        ? { ...reading, ...where }
        : {
            ...reading,
            ...where,
            written: what.written,
            before: [...reading.before, reading.written],
            again: null,
          };
    case 'void':
      return { ...reading, ...where, isVoid: true, again: null };
    case 'restore':
      return { ...reading, ...where, isVoid: false };
    default:
      return reading;
  }
}
