import { existsSync, mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { createServer, type Server } from './create-server.ts';
import { threadDesk } from './desk/thread-desk.ts';
import { doorInTerminal } from './doors/door-picture.ts';
import { systemChance } from './doors/secret.ts';
import { pageFiles } from './http/page-files.ts';
import { listen, networkAddresses, ownNames, type Place } from './listening.ts';
import { rollingLog } from './rolling-log.ts';
import { databaseIn } from './storage/backup.ts';
import { openDatabase } from './storage/open-database.ts';
import { servingAddress, takeServingLock } from './storage/serving-lock.ts';
import { sqliteJournal } from './storage/sqlite-journal.ts';
import { sqlitePasses } from './storage/sqlite-passes.ts';
import { sqliteVisits } from './storage/sqlite-visits.ts';
import { closeVisit, openVisit, tellDesk } from './visits/open-visit.ts';
import type { VisitRecord, VisitToOpen } from './visits/visits.ts';

export interface Serve extends Place {
  /** Where everything is kept. */
  readonly folder: string;
  /** Opened, or gone on with where it is open; `null`: whatever is open. */
  readonly visit: VisitToOpen | null;
  /** Not gone on with: closed, and opened afresh. */
  readonly isAfresh: boolean;
  /** More names by which the server may be asked. */
  readonly names: readonly string[];
  /** The folder with the built pages. */
  readonly pages: string;
  readonly version: string;
  /** The program of the desk's thread. */
  readonly deskScript: string;
}

/** A server that listens. */
export interface Serving {
  /** The visit that it was started for; `null` where none is open. */
  readonly record: VisitRecord | null;
  readonly title: string;
  /** How many entries it had already. */
  readonly entries: number;
  readonly addresses: readonly string[];
  /** Lets the teacher in, once, on this machine. */
  readonly link: string;
  /** The groups' door as a QR code, for a terminal with colours or as bare text. */
  readonly picture: (isColoured: boolean) => Promise<string>;
  /** Where the file was copied before it was brought to a newer shape. */
  readonly backup: string | null;
  readonly stop: () => Promise<void>;
}

/** Opens the folder, prepares its open visits and listens. */
export async function serve(what: Serve): Promise<Serving> {
  mkdirSync(what.folder, { recursive: true });
  const lock = takeServingLock(what.folder);
  const clock = (): number => Date.now();
  let server: Server | null = null;
  try {
    const { connection, backup } = openDatabase(databaseIn(what.folder));
    const visits = sqliteVisits(connection, systemChance);
    const passes = sqlitePasses(connection, systemChance);
    let addresses: readonly string[] = [];
    server = createServer({
      journal: sqliteJournal(connection),
      visits,
      passes,
      desk: threadDesk({ script: what.deskScript }),
      clock,
      chance: systemChance,
      pages: pageFiles(what.pages),
      addresses: () => addresses,
      names: [...ownNames(), ...what.names],
      version: what.version,
      log: rollingLog(join(what.folder, 'server.log')),
    });
    const { house, app } = server;
    const port = await listen(app, what);
    const local = `http://127.0.0.1:${port}`;
    const outside = what.isOnNetwork ? networkAddresses().map((address) => `http://${address}:${port}`) : [];
    addresses = outside.length === 0 ? [local] : outside;
    const record = await openedFor(server, what);
    lock.tell(local);
    const stopped = server;
    return {
      record,
      title: record === null ? '' : (await house.plan(record.visit)).title,
      entries: record === null ? 0 : visits.entries(record.visit),
      addresses,
      link: `${local}/enter/${passes.newLink(clock())}`,
      picture: async (isColoured) =>
        record === null ? '' : doorInTerminal(`${addresses[0]}/group#${record.code}`, isColoured),
      backup,
      stop: async () => {
        await stopped.stop();
        lock.release();
      },
    };
  } catch (fault) {
    await server?.stop();
    lock.release();
    throw fault;
  }
}

/** Every open visit goes on; the one that is asked for is prepared anew from its files as they are now. */
async function openedFor({ house, app }: Server, { visit, isAfresh }: Serve): Promise<VisitRecord | null> {
  const open = house.visits.list().filter(({ closed }) => closed === null);
  const same = visit === null ? undefined : open.find((each) => isSame(each, visit));
  if (same !== undefined && isAfresh) closeVisit(house, same.visit);
  else if (same !== undefined && visit !== null) house.visits.prepareAnew(same.visit, visit);
  const goingOn = open.map(({ visit: name }) => house.visits.find(name)).filter((record) => record !== null);
  const told = goingOn
    .filter(({ closed }) => closed === null)
    .map(async (record) => {
      try {
        await tellDesk(house, record);
      } catch {
        // Its entries are still taken and kept; only what is made of them is not shown.
        app.log.error('a visit that is open can not be prepared');
      }
    });
  await Promise.all(told);
  if (visit === null) return open[0] ?? null;
  return same === undefined || isAfresh ? openVisit(house, visit) : house.visits.find(same.visit);
}

/** By the names of its files, so that a file that was put right goes on with its visit. */
const isSame = (record: VisitRecord, { files, label }: VisitToOpen): boolean =>
  record.label === label &&
  record.files.visit?.name === files.visit?.name &&
  record.files.kit.name === files.kit.name &&
  record.files.activity.name === files.activity.name;

/** Another link for the teacher of a server that runs on this machine; `null` where none does. */
export function furtherLink(folder: string): string | null {
  const address = existsSync(databaseIn(folder)) ? servingAddress(folder) : null;
  if (address === null) return null;
  const { connection } = openDatabase(databaseIn(folder));
  try {
    return `${address}/enter/${sqlitePasses(connection, systemChance).newLink(Date.now())}`;
  } finally {
    connection.close();
  }
}

export { backup, restore } from './storage/backup.ts';
