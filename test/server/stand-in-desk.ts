import type { Audience, Desk, DeskListener, SeatParts } from '../../src/server/desk/desk.ts';
import { audienceOf } from '../../src/server/desk/desk.ts';
import type { Seat, Stored } from '../../src/store/entry.ts';
import { visitLog } from '../../src/store/visit-log.ts';

/**
 * A desk that judges nothing: groups A and B, tables 1 and 2 with a setup each. It shows a group its own
 * readings, and a teacher or a helper what a group may never see, so that a leak is noticed.
 */
export interface StandInDesk extends Desk {
  readonly taken: Map<string, Stored[]>;
}

export const EXPECTED = 'expected 4.56 N';

const TABLES = [
  { mark: '1', title: 'The lever', setup: 'L1' },
  { mark: '2', title: 'The screw', setup: 'S1' },
];
const GROUPS = ['A', 'B'];

export function standInDesk(): StandInDesk {
  const listeners = new Set<DeskListener>();
  const open = new Map<string, string>();
  const taken = new Map<string, Stored[]>();
  const shown = (visit: string, audience: Audience): SeatParts => {
    const log = visitLog(taken.get(visit) ?? []);
    const clock = { now: 0, begun: log.begun, pausedSince: null, paused: 0, ends: null, round: null };
    const own = (group: string) => log.readings.filter(({ reading }) => reading.group === group);
    const table = ({ mark, title, setup }: (typeof TABLES)[number]) => ({
      mark,
      title,
      isClosed: log.closed.includes(mark),
      findings: [],
      setups: [
        {
          mark: setup,
          summary: '',
          strip: '',
          range: EXPECTED,
          readings: log.readings
            .filter(({ reading }) => reading.setup === setup)
            .map(({ id, reading, when, before, isVoid }) => ({
              id,
              group: reading.group,
              written: reading.written,
              before,
              when,
              isVoid,
              verdict: 'good' as const,
              verdictText: '',
              cause: null,
              say: null,
            })),
        },
      ],
    });
    const [kind, name = ''] = audience.split(':');
    if (kind === 'group')
      return {
        clock,
        readings: own(name).map(({ id, reading, before, isVoid }) => ({
          id,
          setup: reading.setup,
          written: reading.written,
          before,
          isVoid,
          again: null,
        })),
        writes: { device: log.holders[name] ?? null, freed: log.freed[name] ?? null },
      };
    const helped = TABLES.find(({ mark }) => mark === name);
    if (kind === 'helper')
      return (helped === undefined ? { clock } : { clock, table: table(helped) }) as SeatParts;
    const code = open.get(visit) ?? '';
    return {
      clock,
      visit: {
        title: 'Harbour day',
        language: 'en',
        code,
        addresses: [],
        telling: log.telling,
        way: 'signal',
      },
      groups: GROUPS.map((label) => ({
        label,
        table: null,
        since: null,
        next: null,
        behind: 0,
        device: null,
        heard: null,
        toLookAt: 0,
      })),
      ...Object.fromEntries(TABLES.map((each) => [`table/${each.mark}`, table(each)])),
    } as SeatParts;
  };
  return {
    taken,
    open: async ({ visit, code, files }) => {
      if (files.kit.text.includes('spoilt')) throw new Error('the kit file can not be read');
      open.set(visit, code);
    },
    door: async () => ({ title: 'Harbour day', language: 'en', groups: GROUPS, tables: TABLES }),
    take: (visit, stored) => {
      const known = taken.get(visit) ?? [];
      const ids = new Set(known.map(({ entry }) => entry.id));
      taken.set(visit, [...known, ...stored.filter(({ entry }) => !ids.has(entry.id))]);
      const audiences: Audience[] = [
        'teacher',
        ...GROUPS.map((group) => `group:${group}` as const),
        ...TABLES.map(({ mark }) => `helper:${mark}` as const),
      ];
      for (const listener of listeners)
        for (const audience of audiences) listener(visit, audience, shown(visit, audience));
    },
    parts: async (visit: string, seat: Seat) => shown(visit, audienceOf(seat)),
    onChange: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    close: async () => listeners.clear(),
  } as StandInDesk;
}
