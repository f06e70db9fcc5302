import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { setupsOf } from '../../src/core/review.ts';
import type { Audience, OpenVisit } from '../../src/server/desk/desk.ts';
import { type PartsOfVisit, partsOfVisit, type ShownParts } from '../../src/server/desk/parts-of-visit.ts';
import { type VisitAtDesk, visitAtDesk } from '../../src/server/desk/visit-at-desk.ts';
import type { Happening, Seat, Stored } from '../../src/store/entry.ts';
import type { GroupParts, HelperParts, TeacherParts, TeacherTable } from '../../src/store/wire.ts';

export type Change = (text: string, file: 'kit' | 'activity' | 'visit') => string;

/** The demo's visit as a server opens it; a file's text may be changed first. */
export function demoOpened(changed: Change = (text) => text): OpenVisit {
  const file = (kind: 'kit' | 'activity' | 'visit', name: string) => ({
    name,
    text: changed(readFileSync(join('examples', 'brackwater', name), 'utf8'), kind),
  });
  return {
    visit: 'demo',
    code: 'BOAT-42',
    addresses: ['http://192.0.2.7:8080'],
    label: null,
    language: null,
    files: {
      kit: file('kit', 'boathouse.kit.yaml'),
      activity: file('activity', 'harbour-day.activity.yaml'),
      visit: file('visit', 'harbour-day.visit.yaml'),
    },
  };
}

export const demoAtDesk = (changed?: Change): VisitAtDesk => visitAtDesk(demoOpened(changed));

/** The demo in so many groups, A and so on. */
export const inGroups =
  (groups: number): Change =>
  (text, file) =>
    file === 'visit'
      ? text.replace(/^groups: .*$/m, `groups: ${groups}`).replace(/^pupils: .*$/m, `pupils: ${4 * groups}`)
      : text;

/** When the visits of these tests begin, by the server's clock. */
export const START = 1_780_000_000_000;

/** Entries one after the other, so many seconds after the start, each device with its own count. */
export function storedEntries(
  happened: readonly (readonly [seconds: number, seat: Seat, what: Happening, device?: string])[],
): readonly Stored[] {
  const counts = new Map<string, number>();
  return happened.map(([at, seat, what, device = deviceOf(seat)], n) => {
    const sequence = (counts.get(device) ?? 0) + 1;
    counts.set(device, sequence);
    const made = START + 1000 * at;
    const entry = { id: `e${n + 1}`, visit: 'demo', device, sequence, made, seat, what };
    return { entry, position: n + 1, received: made + 40, behind: 0 };
  });
}

const deviceOf = (seat: Seat): string => (seat.kind === 'group' ? `tablet ${seat.group}` : seat.kind);

export const teacher: Seat = { kind: 'teacher' };
export const ofGroup = (group: string): Seat => ({ kind: 'group', group });
export const reading = (group: string, setup: string, written: string): Happening => ({
  kind: 'reading',
  group,
  setup,
  written,
  ease: null,
  turns: null,
  note: null,
});

/** Parts of the demo after these entries. */
export const shownAfter = (visit: VisitAtDesk, entries: readonly Stored[], now = START): ShownParts =>
  partsOfVisit(visit)(entries, now);

export const asGroup = (shown: ShownParts, label: string): GroupParts =>
  partsOf(shown, `group:${label}`) as GroupParts;
export const asTeacher = (shown: ShownParts): TeacherParts => partsOf(shown, 'teacher') as TeacherParts;
export const asHelper = (shown: ShownParts, mark: string): HelperParts =>
  partsOf(shown, `helper:${mark}`) as HelperParts;

function partsOf(shown: ShownParts, audience: Audience) {
  const parts = shown.get(audience);
  if (parts === undefined) throw new RangeError(`nobody is ${audience}`);
  return parts;
}

export function tableOf(parts: TeacherParts, mark: string): TeacherTable {
  const table = parts[`table/${mark}`];
  if (table === undefined) throw new RangeError(`no table ${mark}`);
  return table;
}

export type { PartsOfVisit };

/** Setups of the demo whose reading is one figure, as it is expected, in the instrument's own unit. */
export const expectedFigures = ({ prepared }: VisitAtDesk) =>
  setupsOf(prepared).flatMap(({ setup, prediction }) => {
    const { outcome, graduations } = prediction;
    return outcome.kind === 'reading' && graduations !== null
      ? [
          {
            setup: setup.mark,
            table: setup.table,
            expected: outcome.expected / graduations.unitSi,
            graduations,
            good: outcome.good,
          },
        ]
      : [];
  });
