import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Kit, KitPart } from '../kit/kit.ts';
import { candidates, type Role } from '../kit/role.ts';
import { type Activity, machinesAt } from './activity.ts';
import type { Casting } from './casting.ts';
import { fileFinding } from './file-code.ts';
import type { Visit } from './visit-file.ts';

/**
 * A table that is set up more than once needs its parts more than once: what lies unused in the boxes, spares among it, has to
 * fit each of its roles. What the kit lacks a school may have, so it is said as a warning.
 */
export function secondCopies(
  kit: Kit,
  casting: Casting,
  activity: Activity,
  visit: Visit,
): readonly Diagnostic[] {
  const closed = visit.day.closed.flatMap(({ table, from, until }) =>
    from === null && until === null ? [table] : [],
  );
  const open = [...casting].filter(([table]) => !closed.includes(table));
  const used = new Set(open.flatMap(([, cast]) => [...cast.values()]));
  const missing = visit.missing.map(({ mark }) => mark);
  const there = kit.parts.filter((part) => !used.has(part) && !missing.includes(part.mark));
  const unused = there.map((part) => ({ ...part, isSpare: false }));
  return visit.day.copies.flatMap(({ table: mark, copies, path }) => {
    const table = activity.tables.find((each) => each.mark === mark);
    if (table === undefined) return [];
    const lacking = table.roles.filter(
      (role) => taken(unused, role, machinesAt(table), copies - 1) < copies - 1,
    );
    if (lacking.length === 0) return [];
    const facts = { table: mark, copies, roles: lacking.map(({ name }) => name) };
    const at = { file: visit.file, path, on: 'key' } as const;
    return [fileFinding('copies-without-parts', at, facts, 'warning')];
  });
}

/** Takes up to so many parts for a role out of those that are unused; how many there were. */
function taken(unused: KitPart[], role: Role, machines: readonly string[], count: number): number {
  const parts = candidates(unused, role, machines).best.slice(0, count);
  for (const part of parts) unused.splice(unused.indexOf(part), 1);
  return parts.length;
}
