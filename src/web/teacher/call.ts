import type { TeacherGroup, TeacherParts, TeacherReading, TeacherTable } from '../../store/wire.ts';

/** Somebody whom the teacher should go to, and why. */
export type Call =
  | { readonly kind: 'table'; readonly table: string; readonly finding: string }
  | {
      readonly kind: 'reading';
      readonly table: string;
      readonly setup: string;
      /** Where the group is by now. */
      readonly now: string | null;
      readonly reading: TeacherReading;
    }
  | { readonly kind: 'late'; readonly group: string; readonly table: string; readonly minutes: number };

/** The tables of the parts, in the order in which they came. */
export const tablesOf = (parts: Partial<TeacherParts>): readonly TeacherTable[] =>
  Object.entries(parts).flatMap(([key, part]) => (key.startsWith('table/') ? [part as TeacherTable] : []));

/**
 * Whole tables first, since what is wrong there is wrong for all who come; then readings to look at, of a
 * group and setup the last one alone, newest first; then who stays longer than planned.
 */
export function callsOf(tables: readonly TeacherTable[], groups: readonly TeacherGroup[]): readonly Call[] {
  const now = new Map(groups.map(({ label, table }) => [label, table]));
  const whole = tables.flatMap(({ mark, findings }) =>
    findings.map((finding): Call => ({ kind: 'table', table: mark, finding })),
  );
  const readings = tables.flatMap(({ mark, setups }) =>
    setups.flatMap((setup) =>
      lastOfGroups(setup.readings)
        .filter(({ verdict }) => verdict === 'look-again')
        .map((reading) => ({
          kind: 'reading' as const,
          table: mark,
          setup: setup.mark,
          now: now.get(reading.group) ?? null,
          reading,
        })),
    ),
  );
  const late = groups.flatMap(({ label, table, behind }): readonly Call[] =>
    behind > 0 && table !== null
      ? [{ kind: 'late', group: label, table, minutes: Math.round(behind / 60_000) }]
      : [],
  );
  return [...whole, ...[...readings].sort((a, b) => b.reading.when - a.reading.when), ...late];
}

/** What was read again since is past, and so is what was struck through. */
function lastOfGroups(readings: readonly TeacherReading[]): readonly TeacherReading[] {
  const last = new Map<string, TeacherReading>();
  for (const reading of readings) if (!reading.isVoid) last.set(reading.group, reading);
  return [...last.values()];
}
