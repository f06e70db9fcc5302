import type { Parts, TeacherParts, TeacherTable } from '../../store/wire.ts';
import type { Desk } from '../desk/desk.ts';

/** Which groups, tables and setups a visit has: what the door shows, and what a seat is held to. */
export interface VisitPlan {
  readonly title: string;
  readonly language: string;
  readonly groups: readonly string[];
  readonly tables: readonly {
    readonly mark: string;
    readonly title: string;
    readonly setups: readonly string[];
  }[];
}

export async function visitPlan(desk: Desk, visit: string): Promise<VisitPlan> {
  const parts = (await desk.parts(visit, { kind: 'teacher' })) as Parts<TeacherParts>;
  const tables = Object.entries(parts).flatMap(([name, part]) =>
    name.startsWith('table/') && part ? [part as TeacherTable] : [],
  );
  return {
    title: parts.visit?.title ?? '',
    language: parts.visit?.language ?? 'en',
    groups: (parts.groups ?? []).map(({ label }) => label),
    tables: tables.map(({ mark, title, setups }) => ({
      mark,
      title,
      setups: setups.map((setup) => setup.mark),
    })),
  };
}
