import type { SourceText } from '../../core/files/source-text.ts';
import type { PreparationFiles } from '../../core/prepare.ts';
import { GROUP_CODE_LETTERS, HELPER_CODE_LETTERS, newCode } from '../doors/code.ts';
import type { Chance } from '../doors/secret.ts';
import type { VisitRecord, Visits } from '../visits/visits.ts';
import type { Connection } from './open-database.ts';

interface VisitRow {
  readonly visit: string;
  readonly opened: number;
  readonly closed: number | null;
  readonly code: string;
  readonly helper_code: string;
  readonly label: string | null;
  readonly language: string | null;
  readonly kit: string;
  readonly activity: string;
  readonly visit_file: string;
  readonly bench: string | null;
}

/** Visits in the file. A closed one keeps its entries; its codes may come again. */
export function sqliteVisits(connection: Connection, chance: Chance): Visits {
  const all = connection.prepare('SELECT * FROM visit ORDER BY opened DESC, visit');
  const one = connection.prepare('SELECT * FROM visit WHERE visit = ?');
  const coded = connection.prepare(
    'SELECT * FROM visit WHERE closed IS NULL AND (code = ? OR helper_code = ?)',
  );
  const insert = connection.prepare(
    `INSERT INTO visit (visit, opened, code, helper_code, label, language, kit, activity, visit_file, bench)
     VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)`,
  );
  const end = connection.prepare('UPDATE visit SET closed = ? WHERE visit = ? AND closed IS NULL');
  const files = connection.prepare(
    `UPDATE visit SET label = ?, language = ?, kit = ?, activity = ?, visit_file = ?, bench = ?
     WHERE visit = ?`,
  );
  const codes = connection.prepare('UPDATE visit SET code = ?, helper_code = ? WHERE visit = ?');
  const state = connection.prepare('SELECT closed FROM visit WHERE visit = ?');
  const latest = connection.prepare(
    'SELECT visit FROM visit WHERE closed IS NULL ORDER BY opened DESC, visit LIMIT 1',
  );
  const count = connection.prepare('SELECT max(position) AS entries FROM entry WHERE visit = ?');

  const find = (visit: string): VisitRecord | null => {
    const row = one.get(visit) as VisitRow | undefined;
    return row === undefined ? null : recordOf(row);
  };
  /** One that no open visit has. */
  const freeCode = (letters: number): string => {
    for (;;) {
      const code = newCode(chance, letters);
      if (coded.get(code, code) === undefined) return code;
    }
  };
  return {
    list: () => (all.all() as VisitRow[]).map(recordOf),
    find,
    state: (visit) => {
      const row = state.get(visit) as { closed: number | null } | undefined;
      return row === undefined ? null : row.closed === null ? 'open' : 'over';
    },
    latest: () => (latest.get() as { visit: string } | undefined)?.visit ?? null,
    behind: (code) => {
      const row = coded.get(code, code) as VisitRow | undefined;
      if (row === undefined || code === '') return null;
      return { record: recordOf(row), opens: row.code === code ? 'group' : 'helper' };
    },
    open: (what, now) => {
      const visit = newCode(chance, 12);
      const both = [freeCode(GROUP_CODE_LETTERS), freeCode(HELPER_CODE_LETTERS)];
      insert.run(visit, now, ...both, what.label, what.language, ...textsOf(what.files));
      const record = find(visit);
      if (record === null) throw new Error('a visit that was written is not there');
      return record;
    },
    close: (visit, now) => {
      end.run(now, visit);
    },
    prepareAnew: (visit, what) => {
      files.run(what.label, what.language, ...textsOf(what.files), visit);
    },
    newCodes: (visit) => {
      codes.run(freeCode(GROUP_CODE_LETTERS), freeCode(HELPER_CODE_LETTERS), visit);
    },
    entries: (visit) => (count.get(visit) as { entries: number | null }).entries ?? 0,
  };
}

const textsOf = ({ kit, activity, visit, bench }: PreparationFiles): readonly (string | null)[] => [
  JSON.stringify(kit),
  JSON.stringify(activity),
  JSON.stringify(visit),
  bench === undefined || bench === null ? null : JSON.stringify(bench),
];

const recordOf = (row: VisitRow): VisitRecord => ({
  visit: row.visit,
  opened: row.opened,
  closed: row.closed,
  code: row.code,
  helperCode: row.helper_code,
  label: row.label,
  language: row.language,
  files: {
    kit: JSON.parse(row.kit) as SourceText,
    activity: JSON.parse(row.activity) as SourceText,
    visit: JSON.parse(row.visit_file) as SourceText | null,
    ...(row.bench === null ? {} : { bench: JSON.parse(row.bench) as SourceText }),
  },
});
