import { existsSync } from 'node:fs';
import Database from 'libsql';
import { MIGRATIONS } from './migrations.ts';

/** One connection to the file in which a server keeps everything. */
export type Connection = InstanceType<typeof Database>;

/** The file can't be used as it is: what is wrong, and what to do. Nothing has been changed in it. */
export class StorageFault extends Error {
  readonly code: 'damaged' | 'newer' | 'busy' | 'missing' | 'there';
  constructor(code: StorageFault['code'], message: string) {
    super(message);
    this.name = 'StorageFault';
    this.code = code;
  }
}

export interface Opened {
  readonly connection: Connection;
  /** Where a copy was put before the file was brought to a newer shape; `null` where none was needed. */
  readonly backup: string | null;
}

/**
 * Opens the file, or makes it. Every commit is on the disk before it is answered (WAL, full sync).
 * A damaged file is refused; an older one is copied beside itself and then brought up to date, step
 * by step, each in a transaction; a newer one is refused.
 */
export function openDatabase(file: string, migrations: readonly string[] = MIGRATIONS): Opened {
  const isNew = !existsSync(file);
  const connection = new Database(file);
  try {
    connection.exec('PRAGMA busy_timeout = 2000');
    const [check] = connection.prepare('PRAGMA quick_check').raw().all() as [[string]];
    if (check[0] !== 'ok') throw new StorageFault('damaged', String(check[0]));
    connection.exec('PRAGMA journal_mode = WAL');
    connection.exec('PRAGMA synchronous = FULL');
    connection.exec('PRAGMA foreign_keys = ON');
    return { connection, backup: broughtUpToDate(connection, file, isNew, migrations) };
  } catch (fault) {
    connection.close();
    if (fault instanceof StorageFault) throw fault;
    const text = fault instanceof Error ? fault.message : String(fault);
    if (/malformed|not a database|corrupt/i.test(text)) throw new StorageFault('damaged', text);
    if (/locked|busy/i.test(text)) throw new StorageFault('busy', text);
    throw fault;
  }
}

const versionOf = (connection: Connection): number => {
  const [row] = connection.prepare('PRAGMA user_version').raw().all() as [[number]];
  return row[0];
};

function broughtUpToDate(
  connection: Connection,
  file: string,
  isNew: boolean,
  migrations: readonly string[],
): string | null {
  const version = versionOf(connection);
  if (version > migrations.length)
    throw new StorageFault('newer', `shape ${version}, this program knows ${migrations.length}`);
  if (version === migrations.length) return null;
  const backup = isNew || version === 0 ? null : `${file}.before-shape-${migrations.length}`;
  if (backup !== null && !existsSync(backup)) copyTo(connection, backup);
  for (const [n, step] of migrations.entries()) {
    if (n < version) continue;
    connection.exec(`BEGIN IMMEDIATE; ${step}; PRAGMA user_version = ${n + 1}; COMMIT;`);
  }
  return backup;
}

/** A whole copy at one moment, while others go on writing. */
export function copyTo(connection: Connection, file: string): void {
  connection.prepare('VACUUM INTO ?').run(file);
}
