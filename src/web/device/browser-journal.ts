import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { Entry, Stored } from '../../store/entry.ts';
import type { Delivery, Journal } from '../../store/journal.ts';

interface Shape extends DBSchema {
  entry: {
    key: [string, number];
    value: Stored & { readonly visit: string; readonly id: string };
    indexes: { once: [string, string] };
  };
}

/**
 * The journal in the browser's own database: a visit without any server. Each delivery is one
 * transaction, and is answered when the browser says that it is complete.
 */
export async function browserJournal(name: string): Promise<Journal> {
  const base = await openDB<Shape>(name, 1, {
    upgrade: (opened) => {
      const entries = opened.createObjectStore('entry', { keyPath: ['visit', 'position'] });
      entries.createIndex('once', ['visit', 'id'], { unique: true });
    },
  });
  return {
    append: (delivery) => append(base, delivery),
    since: async (visit, position) => {
      const rows = await base.getAll('entry', IDBKeyRange.bound([visit, position + 1], [visit, Infinity]));
      return rows.map(storedOf);
    },
    close: async () => base.close(),
  };
}

async function append(base: IDBPDatabase<Shape>, delivery: Delivery): Promise<readonly Stored[]> {
  const { received, sent } = delivery;
  const transaction = base.transaction('entry', 'readwrite', { durability: 'strict' });
  const answers: Stored[] = [];
  const keep = async (entry: Entry): Promise<Stored> => {
    const { visit, id } = entry;
    const before = await transaction.store.index('once').get([visit, id]);
    if (before !== undefined) return storedOf(before);
    const last = await transaction.store.openKeyCursor(
      IDBKeyRange.bound([visit, 0], [visit, Infinity]),
      'prev',
    );
    const position = (last === null ? 0 : last.key[1]) + 1;
    const stored = { entry, position, received, behind: received - sent };
    await transaction.store.add({ ...stored, visit, id });
    return stored;
  };
  for (const entry of delivery.entries) answers.push(await keep(entry));
  await transaction.done;
  return answers;
}

const storedOf = ({ entry, position, received, behind }: Stored): Stored => ({
  entry,
  position,
  received,
  behind,
});
