import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'libsql';
import { StorageFault } from './open-database.ts';

/** One server a folder: it holds this until it ends, in whatever way it ends. */
export interface ServingLock {
  /** Where the server is reached, for commands that are run beside it. */
  readonly tell: (address: string) => void;
  readonly release: () => void;
}

const ADDRESS = 'address.txt';

/**
 * The lock is the operating system's own, on a file that holds nothing: it goes with the process, killed
 * or not. Refused while another holds it.
 */
export function takeServingLock(folder: string): ServingLock {
  const held = new Database(join(folder, 'serving.lock'));
  try {
    held.exec('PRAGMA busy_timeout = 0');
    held.exec('BEGIN EXCLUSIVE');
  } catch {
    held.close();
    throw new StorageFault('busy', 'another server uses this folder');
  }
  return {
    tell: (address) => writeFileSync(join(folder, ADDRESS), address),
    release: () => {
      rmSync(join(folder, ADDRESS), { force: true });
      held.close();
    },
  };
}

/** Where a server of this folder listens; `null` where none runs. */
export function servingAddress(folder: string): string | null {
  try {
    takeServingLock(folder).release();
    return null;
  } catch (fault) {
    if (!(fault instanceof StorageFault)) throw fault;
    return readFileSync(join(folder, ADDRESS), 'utf8');
  }
}
