import { randomBytes } from 'node:crypto';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import type { Language } from '../../src/documents/sentences/language.ts';
import { createServer } from '../../src/server/create-server.ts';
import { audienceOf, type Desk, type DeskListener, type SeatParts } from '../../src/server/desk/desk.ts';
import { pageFiles } from '../../src/server/http/page-files.ts';
import { openDatabase } from '../../src/server/storage/open-database.ts';
import { sqliteJournal } from '../../src/server/storage/sqlite-journal.ts';
import { sqlitePasses } from '../../src/server/storage/sqlite-passes.ts';
import { sqliteVisits } from '../../src/server/storage/sqlite-visits.ts';
import type { Seat, Stored } from '../../src/store/entry.ts';
import { type VisitLog, visitLog } from '../../src/store/visit-log.ts';
import type { GroupParts } from '../../src/store/wire.ts';
import { FILES } from '../server/server-in-hand.ts';
import { cardsOfDemo } from './cards-of-demo.ts';

/** A name that is no secure context over http, as an address of the LAN is none. */
export const PLAIN_HOST = 'bench-laptop.test';

const GROUPS = ['A', 'B', 'C'];
const MINUTE = 60_000;

/** The project's own server with the pages and the demo's cards, for real browsers. */
export interface ClassInHand {
  readonly code: string;
  readonly helperCode: string;
  readonly address: (host?: string) => string;
  readonly stored: () => readonly Stored[];
  /** The server is gone, as if its plug were drawn: nobody listens at its port. */
  readonly goAway: () => Promise<void>;
  readonly comeBack: () => Promise<void>;
  readonly stop: () => Promise<void>;
}

export async function classInHand(language: Language = 'en', file = ':memory:'): Promise<ClassInHand> {
  const { connection } = openDatabase(file);
  const chance = (bytes: number): Uint8Array => randomBytes(bytes);
  const journal = sqliteJournal(connection);
  const [visits, passes] = [sqliteVisits(connection, chance), sqlitePasses(connection, chance)];
  const record = visits.open({ label: null, language, files: FILES }, Date.now());
  const open = { visit: record.visit, code: record.code, addresses: [], label: null, language, files: FILES };
  let all: readonly Stored[] = [];
  let port = 0;
  const start = async () => {
    const desk = cardDesk(language, await journal.since(record.visit, 0));
    await desk.open(open);
    const server = createServer({
      journal: { ...journal, close: async () => undefined },
      visits,
      passes,
      desk,
      clock: Date.now,
      chance,
      pages: pageFiles(join('dist', 'web')),
      addresses: () => [],
      names: [PLAIN_HOST],
      version: '0.0.0',
      log: null,
    });
    await server.app.listen({ host: '0.0.0.0', port });
    port = (server.app.server.address() as AddressInfo).port;
    return server;
  };
  let server = await start();
  return {
    code: record.code,
    helperCode: record.helperCode,
    address: (host = '127.0.0.1') => `http://${host}:${port}`,
    stored: () => all,
    goAway: () => server.stop(),
    comeBack: async () => {
      server = await start();
    },
    stop: async () => {
      await server.stop();
      await journal.close();
    },
  };

  /** A desk that asks for every reading of 99 once more and judges nothing else. */
  function cardDesk(speaks: Language, before: readonly Stored[]): Desk {
    const cards = cardsOfDemo(speaks);
    const marks = Object.keys(cards).slice(0, 4);
    const listeners = new Set<DeskListener>();
    all = before;
    const began = Date.now() - 4 * MINUTE;
    const shown = (group: string): Partial<GroupParts> => {
      const log = visitLog(all);
      return {
        clock: {
          now: Date.now(),
          begun: began,
          pausedSince: log.pausedSince,
          paused: 0,
          ends: null,
          round: null,
        },
        group: { label: group, language: speaks, title: 'Harbour day' },
        route: { stops: stopsOf(log, group), waiting: null },
        cards,
        readings: log.readings
          .filter(({ reading }) => reading.group === group)
          .map(({ id, reading, before: old, isVoid }) => ({
            id,
            setup: reading.setup,
            written: reading.written,
            before: old,
            isVoid,
            again: reading.written.startsWith('99')
              ? { say: 'Read it once more.', tryThis: 'Look at the scale at the height of your eyes.' }
              : null,
          })),
        writes: { device: log.holders[group] ?? null, freed: log.freed[group] ?? null },
      };
    };
    const stopsOf = (log: VisitLog, group: string): GroupParts['route']['stops'] => {
      const own = log.stays.filter((stay) => stay.group === group);
      const open = own.find(({ to }) => to === null)?.table ?? (own.length === 0 ? marks[0] : undefined);
      return marks.map((table, n) => ({
        table,
        title: cards[table]?.title ?? '',
        from: n * 12 * MINUTE,
        to: (n + 1) * 12 * MINUTE,
        state: table === open ? 'here' : own.some((stay) => stay.table === table) ? 'done' : 'next',
      }));
    };
    const planShown = {
      visit: { title: 'Harbour day', language: speaks },
      groups: GROUPS.map((label) => ({ label })),
      ...Object.fromEntries(
        marks.map((mark) => {
          const { title = '', setups = [] } = cards[mark] ?? {};
          return [`table/${mark}`, { mark, title, setups: setups.map((setup) => ({ mark: setup.mark })) }];
        }),
      ),
    };
    return {
      open: async () => undefined,
      take: (visit: string, stored: readonly Stored[]) => {
        const known = new Set(all.map(({ entry }) => entry.id));
        all = [...all, ...stored.filter(({ entry }) => !known.has(entry.id))];
        for (const listener of listeners)
          for (const group of GROUPS) listener(visit, `group:${group}`, shown(group) as SeatParts);
      },
      parts: async (_visit: string, seat: Seat) =>
        (seat.kind === 'group' ? shown(audienceOf(seat).slice('group:'.length)) : planShown) as SeatParts,
      onChange: (listener: DeskListener) => {
        listeners.add(listener);
        return () => listeners.delete(listener);
      },
      close: async () => listeners.clear(),
    } as Desk;
  }
}
