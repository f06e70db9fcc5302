import type { Seat } from '../../store/entry.ts';
import { LINK_LASTS, type Pass, type Passes } from '../doors/passes.ts';
import { type Chance, hashOf, newSecret } from '../doors/secret.ts';
import type { Connection } from './open-database.ts';

interface PassRow {
  readonly visit: string;
  readonly seat: string;
  readonly device: string;
  readonly given: number;
}

/** A teacher's pass is of no visit and no device; the file says so with an empty text. */
const NO_ONE = '';

/** Passes and links in the file, as hashes. */
export function sqlitePasses(connection: Connection, chance: Chance): Passes {
  const insert = connection.prepare('INSERT INTO pass VALUES (?, ?, ?, ?, ?)');
  const select = connection.prepare('SELECT visit, seat, device, given FROM pass WHERE secret_hash = ?');
  const selectSeats = connection.prepare('SELECT DISTINCT seat FROM pass WHERE visit = ? AND device = ?');
  const remove = connection.prepare('DELETE FROM pass WHERE secret_hash = ?');
  const voidLinks = connection.prepare('DELETE FROM link WHERE used IS NULL');
  const insertLink = connection.prepare('INSERT INTO link VALUES (?, ?, NULL)');
  const useLink = connection.prepare(
    'UPDATE link SET used = ? WHERE secret_hash = ? AND used IS NULL AND made > ?',
  );
  return {
    give: ({ visit, seat, device, given }) => {
      const secret = newSecret(chance);
      insert.run(hashOf(secret), visit ?? NO_ONE, JSON.stringify(seat), device ?? NO_ONE, given);
      return secret;
    },
    find: (secret) => {
      const row = select.get(hashOf(secret)) as PassRow | undefined;
      return row === undefined ? null : passOf(row);
    },
    seats: (visit, device) =>
      (selectSeats.all(visit, device) as { seat: string }[]).map(({ seat }) => JSON.parse(seat) as Seat),
    end: (secret) => {
      remove.run(hashOf(secret));
    },
    newLink: (now) => {
      const secret = newSecret(chance);
      voidLinks.run();
      insertLink.run(hashOf(secret), now);
      return secret;
    },
    useLink: (secret, now) => useLink.run(now, hashOf(secret), now - LINK_LASTS).changes === 1,
  };
}

const passOf = (row: PassRow): Pass => ({
  visit: row.visit === NO_ONE ? null : row.visit,
  seat: JSON.parse(row.seat) as Seat,
  device: row.device === NO_ONE ? null : row.device,
  given: row.given,
});
