import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import { emptyOutbox, type Outbox, type OutboxItem } from '../../store/outbox.ts';
import { partingNotes } from './parting-notes.ts';

/**
 * What this device keeps for itself: its name, its pass, the last parts it was shown, and all that it
 * has written. Where the browser keeps nothing, all of it lives as long as the page.
 */
export interface DeviceStore {
  /** Whether it outlives the page; falls to `false` when the browser refuses. */
  readonly isKept: () => boolean;
  readonly note: (key: string) => Promise<unknown>;
  readonly keepNote: (key: string, value: unknown) => Promise<void>;
  /**
   * Changes the outbox in one transaction on what stands there now, so that two tabs of a browser never
   * give one number twice.
   */
  readonly change: (whose: Whose, alter: Alter) => Promise<Outbox>;
  readonly close: () => void;
}

/** An outbox, and after which number it begins where nothing stands in it. */
export type Whose = Pick<Outbox, 'visit' | 'device' | 'from'>;

export type Alter = (outbox: Outbox) => Outbox;

interface Shape extends DBSchema {
  item: { key: [string, string, number]; value: KeptItem };
  note: { key: string; value: unknown };
}

interface KeptItem {
  readonly visit: string;
  readonly device: string;
  readonly sequence: number;
  readonly item: OutboxItem;
}

/** A browser that neither opens nor refuses is taken at its silence. */
const PATIENCE = 4000;

export async function openDeviceStore(name: string, patience = PATIENCE): Promise<DeviceStore> {
  const memory = memoryStore();
  let base = await opened(name, patience);
  const parting = partingNotes(name);
  const or = async <T>(
    ask: (base: IDBPDatabase<Shape>) => Promise<T>,
    instead: () => Promise<T>,
  ): Promise<T> => {
    if (base === null) return instead();
    try {
      return await ask(base);
    } catch {
      base = null;
      return instead();
    }
  };
  const keepNote = async (key: string, value: unknown): Promise<void> => {
    if (base !== null) parting.begin(key, value);
    await memory.keepNote(key, value);
    await or(
      async (open) => {
        await open.put('note', value, key);
        parting.end(key, value);
      },
      async () => undefined,
    );
  };
  for (const { key, value } of parting.left()) await keepNote(key, value);
  return {
    isKept: () => base !== null,
    note: (key) =>
      or(
        (open) => open.get('note', key),
        () => memory.note(key),
      ),
    keepNote,
    change: async (whose, alter) => {
      const outbox = await or(
        (open) => changeKept(open, whose, alter),
        () => memory.change(whose, alter),
      );
      // What the database says is known by heart, for the day on which it refuses.
      if (base !== null) await memory.change(whose, () => outbox);
      return outbox;
    },
    close: () => base?.close(),
  };
}

async function opened(name: string, patience: number): Promise<IDBPDatabase<Shape> | null> {
  if (typeof indexedDB === 'undefined') return null;
  const tooLong = new Promise<null>((resolve) => {
    setTimeout(() => resolve(null), patience);
  });
  return Promise.race([orNull(name), tooLong]);
}

/** Some browsers refuse by an answer, some by throwing at once. */
async function orNull(name: string): Promise<IDBPDatabase<Shape> | null> {
  try {
    return await openDB<Shape>(name, 1, {
      upgrade: (base) => {
        base.createObjectStore('item', { keyPath: ['visit', 'device', 'sequence'] });
        base.createObjectStore('note');
      },
    });
  } catch {
    return null;
  }
}

async function changeKept(
  base: IDBPDatabase<Shape>,
  { visit, device, from }: Whose,
  alter: Alter,
): Promise<Outbox> {
  const transaction = base.transaction('item', 'readwrite', { durability: 'strict' });
  const range = IDBKeyRange.bound([visit, device, 0], [visit, device, Number.POSITIVE_INFINITY]);
  const kept = await transaction.store.getAll(range);
  const before: Outbox = { ...emptyOutbox(visit, device, from), items: kept.map(({ item }) => item) };
  const after = alter(before);
  const known = new Set(before.items);
  for (const item of after.items)
    if (!known.has(item)) await transaction.store.put({ visit, device, sequence: item.entry.sequence, item });
  await transaction.done;
  return after;
}

/** Lives as long as the page. */
export function memoryStore(): DeviceStore {
  const notes = new Map<string, unknown>();
  const boxes = new Map<string, Outbox>();
  return {
    isKept: () => false,
    note: async (key) => notes.get(key),
    keepNote: async (key, value) => void notes.set(key, value),
    change: async (whose, alter) => {
      const { visit, device, from } = whose;
      const key = `${visit}\n${device}`;
      const outbox = alter(boxes.get(key) ?? emptyOutbox(visit, device, from));
      boxes.set(key, outbox);
      return outbox;
    },
    close: () => undefined,
  };
}
