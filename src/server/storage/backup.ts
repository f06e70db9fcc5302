import { copyFileSync, existsSync, mkdirSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { type Connection, copyTo, openDatabase, StorageFault } from './open-database.ts';
import { takeServingLock } from './serving-lock.ts';

/** Where a server keeps everything, in its folder. */
export const databaseIn = (folder: string): string => join(folder, 'visits.db');

export interface Copied {
  readonly visits: number;
  readonly entries: number;
}

/** A whole copy in one file, of one moment, while the server may go on writing; looked through before it counts. */
export function backup(folder: string, file: string): Copied {
  if (!existsSync(databaseIn(folder))) throw new StorageFault('missing', 'nothing has been stored here yet');
  if (existsSync(file)) throw new StorageFault('there', 'it is there already, and is not written over');
  const { connection } = openDatabase(databaseIn(folder));
  try {
    copyTo(connection, file);
  } finally {
    connection.close();
  }
  return looked(file);
}

export interface Restored extends Copied {
  /** Where what was there before is kept; `null` where nothing was. */
  readonly before: string | null;
}

/** Puts a copy in the place of what is there, which is kept beside it. Refused while a server runs. */
export function restore(folder: string, file: string): Restored {
  if (!existsSync(file)) throw new StorageFault('missing', 'there is no such file');
  mkdirSync(folder, { recursive: true });
  const lock = takeServingLock(folder);
  try {
    const own = databaseIn(folder);
    const arriving = `${own}.arriving`;
    rmSync(arriving, { force: true });
    copyFileSync(file, arriving);
    const found = looked(arriving);
    const before = existsSync(own) ? freeName(`${own}.before-restore`) : null;
    if (before !== null) {
      // Opened and closed, so that what stands in the log beside it is in the file.
      openDatabase(own).connection.close();
      renameSync(own, before);
    }
    for (const rest of ['-wal', '-shm']) rmSync(`${own}${rest}`, { force: true });
    renameSync(arriving, own);
    return { ...found, before };
  } finally {
    lock.release();
  }
}

function looked(file: string): Copied {
  const { connection } = openDatabase(file);
  try {
    return { visits: countOf(connection, 'visit'), entries: countOf(connection, 'entry') };
  } finally {
    connection.close();
  }
}

const countOf = (connection: Connection, table: 'visit' | 'entry'): number =>
  (connection.prepare(`SELECT count(*) AS n FROM ${table}`).get() as { n: number }).n;

function freeName(name: string): string {
  let free = name;
  for (let n = 2; existsSync(free); n += 1) free = `${name}-${n}`;
  return free;
}
