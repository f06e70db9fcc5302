import { createHash } from 'node:crypto';
import type { InjectOptions, LightMyRequestResponse } from 'fastify';
import { createServer, type Server } from '../../src/server/create-server.ts';
import type { PageFiles } from '../../src/server/http/page-files.ts';
import { openDatabase } from '../../src/server/storage/open-database.ts';
import { sqliteJournal } from '../../src/server/storage/sqlite-journal.ts';
import { sqlitePasses } from '../../src/server/storage/sqlite-passes.ts';
import { sqliteVisits } from '../../src/server/storage/sqlite-visits.ts';
import type { VisitRecord } from '../../src/server/visits/visits.ts';
import type { Entry, Happening, Seat } from '../../src/store/entry.ts';
import { type StandInDesk, standInDesk } from './stand-in-desk.ts';

/** A server that listens nowhere, with a visit open, a clock that is moved by hand and a chance that repeats. */
export interface ServerInHand extends Server {
  readonly desk: StandInDesk;
  readonly lines: string[];
  readonly record: VisitRecord;
  readonly pass: (milliseconds: number) => void;
  readonly now: () => number;
  readonly ask: (options: InjectOptions) => Promise<LightMyRequestResponse>;
  /** Joins; answers the cookie. */
  readonly join: (device: string, seat: Seat) => Promise<string>;
  /** Lets the teacher in by a link; answers the cookie. */
  readonly enter: () => Promise<string>;
  readonly write: (
    cookie: string,
    entries: readonly Entry[],
    sent?: number,
  ) => Promise<LightMyRequestResponse>;
}

export const FILES = {
  kit: { name: 'k.kit.yaml', text: 'handspike: kit 1' },
  activity: { name: 'a.activity.yaml', text: 'handspike: activity 1' },
  visit: { name: 'v.visit.yaml', text: 'handspike: visit 1' },
};

export async function serverInHand(
  options: { readonly pages?: PageFiles; readonly file?: string } = {},
): Promise<ServerInHand> {
  const { connection } = openDatabase(options.file ?? ':memory:');
  let drawn = 0;
  const chance = (bytes: number): Uint8Array => {
    drawn += 1;
    return createHash('sha512').update(`chance ${drawn}`).digest().subarray(0, bytes);
  };
  let now = 1_700_000_000_000;
  const desk = standInDesk();
  const lines: string[] = [];
  const visits = sqliteVisits(connection, chance);
  const passes = sqlitePasses(connection, chance);
  const server = createServer({
    journal: sqliteJournal(connection),
    visits,
    passes,
    desk,
    clock: () => now,
    chance,
    pages: options.pages ?? new Map(),
    addresses: () => ['http://192.168.1.7:8377'],
    names: ['bench-laptop'],
    version: '0.0.0',
    log: { write: (line) => lines.push(line) },
  });
  const record = visits.open({ label: null, language: null, files: FILES }, now);
  await desk.open({
    visit: record.visit,
    code: record.code,
    addresses: [],
    label: null,
    language: null,
    files: FILES,
  });
  const ask = async (asked: InjectOptions): Promise<LightMyRequestResponse> => server.app.inject(asked);
  return {
    ...server,
    desk,
    lines,
    record,
    ask,
    pass: (milliseconds) => {
      now += milliseconds;
    },
    now: () => now,
    join: async (device, seat) => {
      const code = seat.kind === 'helper' ? record.helperCode : record.code;
      const answer = await ask({ method: 'POST', url: '/api/join', body: { code, device, seat } });
      if (answer.statusCode !== 200) throw new Error(answer.body);
      return cookieOf(answer);
    },
    enter: async () => cookieOf(await ask({ url: `/enter/${passes.newLink(now)}` })),
    write: async (cookie, entries, sent = now) =>
      ask({ method: 'POST', url: '/api/entries', headers: { cookie }, body: { sent, entries } }),
  };
}

export const cookieOf = (answer: LightMyRequestResponse): string =>
  String(answer.headers['set-cookie']).split(';')[0] ?? '';

export const groupSeat = (group: string): Seat => ({ kind: 'group', group });

export const reading = (group: string, setup: string, written: string): Happening => ({
  kind: 'reading',
  group,
  setup,
  written,
  ease: null,
  turns: null,
  note: null,
});

/** What a device writes. */
export const entryOf = (
  visit: string,
  device: string,
  sequence: number,
  seat: Seat,
  what: Happening,
  made = 1_700_000_000_000,
): Entry => ({ id: `${device}.${sequence}`, visit, device, sequence, made, seat, what });
