import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { journalContract } from '../../store/journal-contract.ts';
import { MIGRATIONS } from './migrations.ts';
import { openDatabase, StorageFault } from './open-database.ts';
import { sqliteJournal } from './sqlite-journal.ts';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'journal-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

describe('a journal in a file', () => {
  it.each(journalContract)('$what', async ({ faults }) => {
    const journal = sqliteJournal(openDatabase(join(folder, 'visits.db')).connection);
    expect(await faults(journal)).toEqual([]);
    await journal.close();
  });

  it('is there again when it is opened anew', async () => {
    const file = join(folder, 'visits.db');
    const first = sqliteJournal(openDatabase(file).connection);
    const entry = {
      id: 'a.1',
      visit: 'v',
      device: 'a',
      sequence: 1,
      made: 5.25,
      seat: { kind: 'teacher' },
      what: { kind: 'begun' },
    } as const;
    await first.append({ entries: [entry], received: 9, sent: 6 });
    await first.close();
    const again = sqliteJournal(openDatabase(file).connection);
    expect(await again.since('v', 0)).toEqual([{ entry, position: 1, received: 9, behind: 3 }]);
    await again.close();
  });

  it('refuses a file that is no database, and leaves it as it is', () => {
    const file = join(folder, 'visits.db');
    writeFileSync(file, 'these are not the pages you are looking for '.repeat(200));
    expect(() => openDatabase(file)).toThrow(StorageFault);
  });

  it('copies an older file before it changes its shape, and refuses a newer one', async () => {
    const file = join(folder, 'visits.db');
    openDatabase(file).connection.close();
    const next = [...MIGRATIONS, 'ALTER TABLE visit ADD COLUMN remark TEXT'];
    const shape = next.length;
    const { connection, backup } = openDatabase(file, next);
    expect(backup).toBe(`${file}.before-shape-${shape}`);
    connection.close();
    expect(() => openDatabase(file)).toThrow(`shape ${shape}`);
    openDatabase(backup ?? '').connection.close();
  });

  it('a shape that fails half way leaves the file as it was', () => {
    const file = join(folder, 'visits.db');
    openDatabase(file).connection.close();
    expect(() => openDatabase(file, [...MIGRATIONS, 'CREATE TABLE one (a); CREATE TABLE one (a)'])).toThrow();
    openDatabase(file).connection.close();
  });
});
