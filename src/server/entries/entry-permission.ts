import type { Entry, Happening, Seat } from '../../store/entry.ts';
import type { EntryRefusal } from '../../store/wire.ts';
import type { VisitPlan } from '../visits/visit-plan.ts';
import type { KnownEntries } from './visit-index.ts';

/** When the entry was made, by the server's clock, and what is known of its visit. */
export interface Circumstances {
  readonly when: number;
  readonly known: KnownEntries;
  /** Only asked of a helper. */
  readonly plan: VisitPlan | null;
  /** Brought by the teacher: that another device has the group by now is known to her. */
  readonly isCarried: boolean;
}

/**
 * Whether this seat may write this, or why not. A teacher may write whatever there is; a group what is
 * its own; a helper what belongs to her table.
 */
export function entryRefusal(
  entry: Entry,
  { when, known, plan, isCarried }: Circumstances,
): EntryRefusal | null {
  const { seat, what, device } = entry;
  switch (seat.kind) {
    case 'teacher':
      return null;
    case 'helper':
      return seat.table !== null && isOfTable(entry, seat.table, plan, known) ? null : 'seat';
    case 'group': {
      if (!isOfGroup(what, seat.group, device, known)) return 'seat';
      if (isCarried) return null;
      const handed = known.handed.get(seat.group);
      const isGone = handed !== undefined && handed.device !== device && when > handed.when;
      return isGone && what.kind !== 'handed' ? 'handed' : null;
    }
  }
}

function isOfGroup(what: Happening, group: string, device: string, known: KnownEntries): boolean {
  switch (what.kind) {
    case 'reading':
    case 'arrived':
    case 'done':
    case 'handed':
      return what.group === group;
    case 'correction':
    case 'void':
    case 'restore': {
      const of = known.readings.get(what.of);
      // What has not come yet can only be this device's own.
      return of === undefined ? what.of.startsWith(`${device}.`) : of.group === group;
    }
    default:
      return false;
  }
}

function isOfTable(
  { what, device }: Entry,
  table: string,
  plan: VisitPlan | null,
  known: KnownEntries,
): boolean {
  const isHere = (setup: string | undefined): boolean =>
    plan !== null &&
    setup !== undefined &&
    plan.tables.some(({ mark, setups }) => mark === table && setups.includes(setup));
  switch (what.kind) {
    case 'reading':
    case 'arrival':
      return isHere(what.setup);
    case 'correction':
    case 'void':
    case 'restore':
      return isHere(known.readings.get(what.of)?.setup);
    case 'recalled':
      return what.of.startsWith(`${device}.`);
    case 'arrived':
    case 'done':
    case 'closed':
    case 'opened':
      return what.table === table;
    default:
      return false;
  }
}

export const isSameSeat = (one: Seat, other: Seat): boolean => seatKey(one) === seatKey(other);

const seatKey = (seat: Seat): string =>
  seat.kind === 'group'
    ? `group ${seat.group}`
    : seat.kind === 'helper'
      ? `helper ${seat.table ?? ''}`
      : 'teacher';
