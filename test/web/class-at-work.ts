import { randomBytes } from 'node:crypto';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import type { Language } from '../../src/documents/sentences/language.ts';
import { createServer } from '../../src/server/create-server.ts';
import { inlineDesk } from '../../src/server/desk/inline-desk.ts';
import { partsOfVisit } from '../../src/server/desk/parts-of-visit.ts';
import { type VisitAtDesk, visitAtDesk } from '../../src/server/desk/visit-at-desk.ts';
import { pageFiles } from '../../src/server/http/page-files.ts';
import { openDatabase } from '../../src/server/storage/open-database.ts';
import { sqliteJournal } from '../../src/server/storage/sqlite-journal.ts';
import { sqlitePasses } from '../../src/server/storage/sqlite-passes.ts';
import { sqliteVisits } from '../../src/server/storage/sqlite-visits.ts';
import type { Stored } from '../../src/store/entry.ts';
import { type Change, demoOpened } from '../server/demo-desk.ts';
import { PLAIN_HOST } from './class-in-hand.ts';

/** The project's own server with the demo and the desk that judges it, for real browsers. */
export interface ClassAtWork {
  readonly code: string;
  readonly helperCode: string;
  readonly address: (host?: string) => string;
  /** Lets the teacher in, once. */
  readonly link: (host?: string) => string;
  readonly stored: () => Promise<readonly Stored[]>;
  readonly stop: () => Promise<void>;
}

/** What is made of files and language never changes: it is prepared once for all tests. */
const prepared = new Map<Language, VisitAtDesk>();

/** With other files than the demo's, what is prepared is made anew. */
export async function classAtWork(language: Language = 'en', changed?: Change): Promise<ClassAtWork> {
  const { connection } = openDatabase(':memory:');
  const chance = (bytes: number): Uint8Array => randomBytes(bytes);
  const journal = sqliteJournal(connection);
  const [visits, passes] = [sqliteVisits(connection, chance), sqlitePasses(connection, chance)];
  const { files } = demoOpened(changed);
  const { visit, code, helperCode } = visits.open({ label: null, language, files }, Date.now());
  const desk = inlineDesk({
    prepare: (opened) => {
      const known = (changed === undefined ? prepared.get(language) : undefined) ?? visitAtDesk(opened);
      if (changed === undefined) prepared.set(language, known);
      const at = { ...known, opened };
      return { visit: at, parts: partsOfVisit(at) };
    },
  });
  let port = 0;
  const address = (host = '127.0.0.1'): string => `http://${host}:${port}`;
  const server = createServer({
    journal,
    visits,
    passes,
    desk,
    clock: Date.now,
    chance,
    pages: pageFiles(join('dist', 'web')),
    addresses: () => [address(PLAIN_HOST)],
    names: [PLAIN_HOST],
    version: '0.0.0',
    log: null,
  });
  await server.app.listen({ host: '0.0.0.0', port: 0 });
  port = (server.app.server.address() as AddressInfo).port;
  await desk.open({ visit, code, addresses: [address(PLAIN_HOST)], label: null, language, files });
  return {
    code,
    helperCode,
    address,
    link: (host) => `${address(host)}/enter/${passes.newLink(Date.now())}`,
    stored: () => journal.since(visit, 0),
    stop: async () => {
      await server.stop();
      await journal.close();
    },
  };
}
