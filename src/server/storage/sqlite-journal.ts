import type { Entry, Happening, Seat, Stored } from '../../store/entry.ts';
import type { Delivery, Journal } from '../../store/journal.ts';
import type { Connection } from './open-database.ts';

interface EntryRow {
  readonly visit: string;
  readonly position: number;
  readonly id: string;
  readonly device: string;
  readonly sequence: number;
  readonly made: number;
  readonly received: number;
  readonly behind: number;
  readonly seat: string;
  readonly what: string;
}

interface Waiting {
  readonly delivery: Delivery;
  readonly answer: (stored: readonly Stored[]) => void;
  readonly fail: (fault: unknown) => void;
}

/** In milliseconds: a disk that stood still once keeps nobody waiting twice. */
const LONGEST_REST = 20;

/**
 * The journal in a file. All deliveries that come in one turn of the loop are written in one
 * transaction and answered after its commit: one wait for the disk serves a whole class. After a
 * commit the next one waits as long as that one took, so that a slow disk takes half of the time at
 * most and the more is written at once.
 */
export function sqliteJournal(connection: Connection): Journal {
  const known = connection.prepare('SELECT * FROM entry WHERE visit = ? AND id = ?');
  const last = connection.prepare('SELECT max(position) AS position FROM entry WHERE visit = ?');
  const insert = connection.prepare(
    `INSERT INTO entry (visit, position, id, device, sequence, made, received, behind, seat, what)
     VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)`,
  );
  const after = connection.prepare('SELECT * FROM entry WHERE visit = ? AND position > ? ORDER BY position');
  let waiting: Waiting[] = [];
  let free = 0;

  const keep = (entry: Entry, { received, sent }: Delivery): Stored => {
    const before = known.get(entry.visit, entry.id) as EntryRow | undefined;
    if (before !== undefined) return storedOf(before);
    const position = ((last.get(entry.visit) as { position: number | null }).position ?? 0) + 1;
    const { visit, id, device, sequence, made } = entry;
    const behind = received - sent;
    const texts = [JSON.stringify(entry.seat), JSON.stringify(entry.what)];
    insert.run(visit, position, id, device, sequence, made, received, behind, ...texts);
    return { entry, position, received, behind };
  };

  const flush = (): void => {
    const turn = waiting;
    waiting = [];
    // Closing has written what waited.
    if (turn.length === 0) return;
    const began = performance.now();
    let answers: readonly (readonly Stored[])[];
    try {
      connection.exec('BEGIN IMMEDIATE');
      answers = turn.map(({ delivery }) => delivery.entries.map((entry) => keep(entry, delivery)));
      connection.exec('COMMIT');
    } catch (fault) {
      if (connection.inTransaction) connection.exec('ROLLBACK');
      for (const { fail } of turn) fail(fault);
      return;
    } finally {
      const ended = performance.now();
      free = ended + Math.min(ended - began, LONGEST_REST);
    }
    for (const [n, { answer }] of turn.entries()) answer(answers[n] ?? []);
  };

  return {
    append: (delivery) =>
      new Promise((answer, fail) => {
        waiting.push({ delivery, answer, fail });
        if (waiting.length > 1) return;
        const rest = free - performance.now();
        if (rest <= 0) setImmediate(flush);
        else setTimeout(flush, rest);
      }),
    since: async (visit, position) => (after.all(visit, position) as EntryRow[]).map(storedOf),
    close: async () => {
      if (waiting.length > 0) flush();
      connection.close();
    },
  };
}

const storedOf = (row: EntryRow): Stored => ({
  entry: {
    id: row.id,
    visit: row.visit,
    device: row.device,
    sequence: row.sequence,
    made: row.made,
    seat: JSON.parse(row.seat) as Seat,
    what: JSON.parse(row.what) as Happening,
  },
  position: row.position,
  received: row.received,
  behind: row.behind,
});
