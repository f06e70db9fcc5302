import { isDeepStrictEqual } from 'node:util';
import type { Entry, Seat, Stored } from '../../store/entry.ts';
import type { Journal } from '../../store/journal.ts';
import type { EntriesAnswer, EntriesRequest, EntryRefusal } from '../../store/wire.ts';
import type { Desk } from '../desk/desk.ts';
import type { VisitPlan } from '../visits/visit-plan.ts';
import { entryRefusal, isSameSeat } from './entry-permission.ts';
import { type VisitIndex, whenOf } from './visit-index.ts';

/** Who sends: a teacher writes in every open visit, everybody else in one and under one device's name. */
export interface Sender {
  readonly visit: string | null;
  readonly device: string | null;
  /** Every seat that the device was given in this visit: what it wrote before it changed still counts. */
  readonly seats: readonly Seat[];
}

export interface TakingPlace {
  readonly journal: Journal;
  readonly desk: Desk;
  readonly index: VisitIndex;
  /** `null` where there is no such visit. */
  readonly state: (visit: string) => 'open' | 'over' | null;
  readonly plan: (visit: string) => Promise<VisitPlan>;
}

/**
 * Takes what may be taken and says of each entry what became of it. Answered after the commit; what
 * was stored before is answered as stored again, whatever has happened since.
 */
export async function takeEntries(
  place: TakingPlace,
  sender: Sender,
  request: EntriesRequest,
  received: number,
): Promise<EntriesAnswer> {
  const refused: { id: string; why: EntryRefusal }[] = [];
  const taken: Entry[] = [];
  for (const entry of request.entries) {
    const why = await refusalOf(place, sender, entry, { received, behind: received - request.sent });
    if (why === null) taken.push(entry);
    else refused.push({ id: entry.id, why });
  }
  const stored = await place.journal.append({ entries: taken, received, sent: request.sent });
  for (const [visit, own] of byVisit(stored)) {
    await place.index.add(visit, own);
    place.desk.take(visit, own);
  }
  const isOther = (n: number): boolean => {
    const [asked, found] = [taken[n], stored[n]?.entry];
    return !isDeepStrictEqual([asked?.what, asked?.seat], [found?.what, found?.seat]);
  };
  const answered: string[] = [];
  for (const [n, { id }] of taken.entries()) {
    if (isOther(n)) refused.push({ id, why: 'other' });
    else answered.push(id);
  }
  return { stored: answered, refused };
}

async function refusalOf(
  place: TakingPlace,
  sender: Sender,
  entry: Entry,
  times: Pick<Stored, 'received' | 'behind'>,
): Promise<EntryRefusal | null> {
  const { visit, device, id, sequence } = entry;
  if (sender.visit !== null && visit !== sender.visit) return 'visit';
  if (id !== `${device}.${sequence}` || (sender.device !== null && device !== sender.device)) return 'device';
  // What a group's device could not send is typed by the teacher from its screen, under its own id.
  const isCarried = sender.visit === null && entry.seat.kind === 'group';
  if (!isCarried && !sender.seats.some((seat) => isSameSeat(seat, entry.seat))) return 'seat';
  const state = place.state(visit);
  if (state === null) return 'visit';
  const known = await place.index.of(visit);
  if (known.ids.has(id)) return null;
  if (state === 'over') return 'over';
  // Only a helper's table has to be looked up: nobody else's answer waits for the desk.
  const plan = entry.seat.kind === 'helper' ? await place.plan(visit) : null;
  return entryRefusal(entry, { when: whenOf(entry.made, times), known, plan, isCarried });
}

function byVisit(stored: readonly Stored[]): ReadonlyMap<string, readonly Stored[]> {
  const visits = new Map<string, Stored[]>();
  for (const each of stored) {
    const own = visits.get(each.entry.visit);
    if (own === undefined) visits.set(each.entry.visit, [each]);
    else own.push(each);
  }
  return visits;
}
