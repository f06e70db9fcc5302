import type { OpenVisit } from '../desk/desk.ts';
import type { House } from '../house.ts';
import { Refusal } from '../http/problem.ts';
import type { VisitRecord, VisitToOpen } from './visits.ts';

/** Opens a visit: kept, prepared, and its codes let in. Files that can't be prepared open nothing. */
export async function openVisit(house: House, what: VisitToOpen): Promise<VisitRecord> {
  const record = house.visits.open(what, house.clock());
  try {
    await tellDesk(house, record);
  } catch (fault) {
    house.visits.close(record.visit, house.clock());
    throw new Refusal('visit-unprepared', {
      errors: [{ pointer: '#/files', detail: fault instanceof Error ? fault.message : String(fault) }],
    });
  }
  return record;
}

/** Hands the desk a visit with all that is stored of it: when it is opened, and when the server starts again. */
export async function tellDesk(house: House, record: VisitRecord): Promise<void> {
  const { visit, code, label, language, files } = record;
  const ready = prepared(house, { visit, code, addresses: house.addresses(), label, language, files });
  house.forgetPlan(visit);
  house.preparing(visit, ready);
  await ready;
}

/** All that is stored follows at once, so that nobody is shown a visit without its entries. */
async function prepared({ desk, journal }: House, visit: OpenVisit): Promise<void> {
  const opening = desk.open(visit);
  // Looked at below; what goes wrong until then must not end the process.
  opening.catch(() => undefined);
  desk.take(visit.visit, await journal.since(visit.visit, 0));
  await opening;
}

/** Its passes end with it; what is stored stays. */
export function closeVisit(house: House, visit: string): void {
  house.visits.close(visit, house.clock());
  house.hub.end(visit);
  house.forgetPlan(visit);
  house.index.forget(visit);
}
