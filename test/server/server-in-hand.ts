import { createHash } from 'node:crypto';
import { createServer, type Server } from '../../src/server/create-server.ts';
import type { PageFiles } from '../../src/server/http/page-files.ts';
import { openDatabase } from '../../src/server/storage/open-database.ts';
import { sqliteJournal } from '../../src/server/storage/sqlite-journal.ts';
import { sqlitePasses } from '../../src/server/storage/sqlite-passes.ts';
import { sqliteVisits } from '../../src/server/storage/sqlite-visits.ts';
import type { VisitRecord } from '../../src/server/visits/visits.ts';
import type { Entry, Happening, Seat } from '../../src/store/entry.ts';
import { type StandInDesk, standInDesk } from './stand-in-desk.ts';

export interface Asked {
  readonly method?: 'GET' | 'HEAD' | 'POST' | 'PUT';
  readonly url: string;
  readonly headers?: Readonly<Record<string, string>>;
  readonly body?: object | string;
  readonly query?: Readonly<Record<string, string>>;
  readonly remoteAddress?: string;
}

export interface Answered {
  readonly statusCode: number;
  readonly headers: Readonly<Record<string, unknown>>;
  readonly body: string;
  readonly rawPayload: Buffer;
  // biome-ignore lint/suspicious/noExplicitAny: an answer is looked into, key by key
  readonly json: () => any;
}

/** A server that listens nowhere, with a visit open, a clock that is moved by hand and a chance that repeats. */
export interface ServerInHand extends Server {
  readonly desk: StandInDesk;
  readonly lines: string[];
  readonly record: VisitRecord;
  readonly pass: (milliseconds: number) => void;
  readonly now: () => number;
  readonly ask: (options: Asked) => Promise<Answered>;
  /** Joins; answers the cookie. */
  readonly join: (device: string, seat: Seat) => Promise<string>;
  /** Lets the teacher in by a link; answers the cookie. */
  readonly enter: () => Promise<string>;
  readonly write: (cookie: string, entries: readonly Entry[], sent?: number) => Promise<Answered>;
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
  const ask = async (asked: Asked): Promise<Answered> => server.app.inject(asked as object);
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

export const cookieOf = (answer: Answered): string =>
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
