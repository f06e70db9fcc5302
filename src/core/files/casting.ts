import type { Diagnostic, Facts, Place, QuantityFact } from '../diagnostics/diagnostic.ts';
import type { Kit, KitPart } from '../kit/kit.ts';
import { candidates, fitOf, type Role, type RoleSize, sizeOf } from '../kit/role.ts';
import { type Activity, type ActivityTable, machinesAt } from './activity.ts';
import { nearestFact, type Path } from './context.ts';
import { type FileCode, fileFinding } from './file-code.ts';
import type { Visit } from './visit-file.ts';

/** Which part plays which role today, by table and role; roles without a part are left out. */
export type Casting = ReadonlyMap<string, ReadonlyMap<string, KitPart>>;

/**
 * Gives every role of the activity a part of the kit: the one that the visit names, else the only one
 * that fits. A part of the right kind that the visit puts in on purpose is taken with a warning, as
 * when 300 g stand where 250 g belong; among several that fit nothing is guessed.
 */
export function castRoles(
  kit: Kit,
  activity: Activity,
  visit: Visit | null,
): { readonly casting: Casting; readonly diagnostics: readonly Diagnostic[] } {
  const diagnostics: Diagnostic[] = [];
  if (visit !== null) diagnostics.push(...strayWords(kit, activity, visit));
  const missing = new Set(visit?.missing.map((each) => each.mark));
  const there = kit.parts.filter((part) => !missing.has(part.mark));
  const casting = new Map<string, Map<string, KitPart>>();
  for (const table of activity.tables) {
    const cast = new Map<string, KitPart>();
    for (const role of table.roles) {
      const mark = markIn(visit, table.mark, role.name);
      const chosen =
        visit !== null && mark !== null
          ? named(kit, visit, table, role, mark, missing)
          : onlyFitting(there, kit, activity, visit, table, role);
      diagnostics.push(...chosen.diagnostics);
      if (chosen.part !== null) cast.set(role.name, chosen.part);
    }
    casting.set(table.mark, cast);
  }
  diagnostics.push(...atTwoTables(casting, activity, visit));
  return { casting, diagnostics };
}

interface Chosen {
  readonly part: KitPart | null;
  readonly diagnostics: readonly Diagnostic[];
}

/** The part that the visit names for a role. */
function named(
  kit: Kit,
  visit: Visit,
  table: ActivityTable,
  role: Role,
  mark: string,
  missing: ReadonlySet<string>,
): Chosen {
  const at = inVisit(visit, ['roles', table.mark, role.name]);
  const refuse = (code: FileCode, facts: Facts): Chosen => ({
    part: null,
    diagnostics: [fileFinding(code, at, facts)],
  });
  const part = kit.parts.find((each) => each.mark === mark);
  if (part === undefined) {
    const known = kit.parts.filter((each) => each.kind === role.kind).map((each) => each.mark);
    const nearest = nearestFact(
      mark,
      kit.parts.map((each) => each.mark),
    );
    return refuse('unknown-part', { written: mark, known, ...nearest });
  }
  if (missing.has(mark)) return refuse('part-missing-today', { part: mark });
  if (part.isFaulty && part.kind === '') return { part, diagnostics: [] };
  const fit = fitOf(part, role);
  if (fit === 'other-kind') {
    const known = kit.parts.filter((each) => each.kind === role.kind).map((each) => each.mark);
    const facts = { part: mark, is: part.kind, role: role.name, wanted: role.kind, known };
    return refuse('part-of-other-kind', facts);
  }
  if (fit !== 'kind-only' || role.size === null || part.isFaulty) return { part, diagnostics: [] };
  const has = sizeOf(part, role.size.asks);
  const facts = { part: mark, role: role.name, asks: role.text, ...(has ? { has: fact(has) } : {}) };
  return { part, diagnostics: [fileFinding('substitute', at, facts, 'warning')] };
}

/** The one part of the kit that fits, where the visit names none. */
function onlyFitting(
  there: readonly KitPart[],
  kit: Kit,
  activity: Activity,
  visit: Visit | null,
  table: ActivityTable,
  role: Role,
): Chosen {
  const { best, ofKind } = candidates(there, role, machinesAt(table));
  if (best.length === 1) return { part: best[0] ?? null, diagnostics: [] };
  // A part that could not be read may be the one: its own fault has been told already.
  if (
    best.length === 0 &&
    kit.parts.some((part) => part.isFaulty && (part.kind === role.kind || part.kind === ''))
  )
    return { part: null, diagnostics: [] };
  const at = { file: activity.file, path: [...table.path, 'roles', role.name], on: 'value' } as const;
  const shared = { role: role.name, asks: role.text, table: table.mark };
  if (best.length > 1) {
    const facts = { ...shared, fitting: best.map((part) => part.mark), first: best[0]?.mark ?? '' };
    return { part: null, diagnostics: [fileFinding('several-parts-fit', at, facts)] };
  }
  const others = ofKind.map((part) => part.mark);
  const gone = (visit?.missing ?? []).map((each) => each.mark);
  const lost = kit.parts.filter((part) => part.kind === role.kind && gone.includes(part.mark));
  const facts = {
    ...shared,
    kind: role.kind,
    ...(others.length > 0 ? { others, first: others[0] ?? '' } : {}),
    ...(lost.length > 0 ? { lost: lost.map((part) => part.mark) } : {}),
  };
  return { part: null, diagnostics: [fileFinding('no-part-fits', at, facts)] };
}

/** Tables, roles and marks of the visit that nothing answers to. */
function strayWords(kit: Kit, activity: Activity, visit: Visit): readonly Diagnostic[] {
  const found: Diagnostic[] = [];
  const say = (code: FileCode, at: Place, facts: Facts) => found.push(fileFinding(code, at, facts));
  for (const [mark, roles] of Object.entries(visit.roles)) {
    const table = activity.tables.find((each) => each.mark === mark);
    const at = { ...inVisit(visit, ['roles', mark]), on: 'key' } as const;
    if (table === undefined) {
      const known = activity.tables.map((each) => each.mark);
      say('unknown-table', at, { written: mark, known, ...nearestFact(mark, known) });
      continue;
    }
    const known = table.roles.map((role) => role.name);
    for (const role of Object.keys(roles))
      if (!known.includes(role)) {
        const here = { ...inVisit(visit, ['roles', mark, role]), on: 'key' } as const;
        say('unknown-role', here, { written: role, known, ...nearestFact(role, known) });
      }
  }
  const marks = kit.parts.map((part) => part.mark);
  for (const { mark, path } of visit.missing)
    if (!marks.includes(mark))
      say('unknown-part', inVisit(visit, path), { written: mark, known: marks, ...nearestFact(mark, marks) });
  return found;
}

/** Tables run at the same time: one part can't stand on two of them. */
function atTwoTables(casting: Casting, activity: Activity, visit: Visit | null): readonly Diagnostic[] {
  const found: Diagnostic[] = [];
  const first = new Map<string, string>();
  for (const table of activity.tables)
    for (const [role, { mark }] of casting.get(table.mark) ?? []) {
      const before = first.get(mark);
      if (before === undefined) first.set(mark, table.mark);
      else if (before !== table.mark) {
        const at =
          visit !== null && markIn(visit, table.mark, role) !== null
            ? inVisit(visit, ['roles', table.mark, role])
            : ({ file: activity.file, path: [...table.path, 'roles', role], on: 'value' } as const);
        const facts = { part: mark, table: table.mark, other: before };
        found.push(fileFinding('part-at-two-tables', at, facts, 'note'));
      }
    }
  return found;
}

function markIn(visit: Visit | null, table: string, role: string): string | null {
  if (visit === null || !Object.hasOwn(visit.roles, table)) return null;
  const roles = visit.roles[table] ?? {};
  return Object.hasOwn(roles, role) ? (roles[role] ?? null) : null;
}

const inVisit = (visit: Visit, path: Path): Place => ({ file: visit.file, path, on: 'value' });

const fact = (size: Omit<RoleSize, 'asks'>): QuantityFact => ({ si: size.si, dimension: size.dimension });
