import type { Activity, ActivityTable } from './files/activity.ts';
import type { Known } from './files/bench-readings.ts';
import { castRoles } from './files/casting.ts';
import { plainDay } from './files/day-words.ts';
import type { Visit } from './files/visit-file.ts';
import type { Kit, KitPart } from './kit/kit.ts';
import { type Fit, fitOf, type Role } from './kit/role.ts';
import { bringTogether, type Prepared, type PreparedSetup, type PreparedTable } from './prepare.ts';

/** One part missing from one role of a table, and one part that can stand in, or none. */
export interface Substitution {
  readonly table: string;
  readonly role: string;
  /** Mark of the part that plays the role today, were it not there. */
  readonly missing: string;
  /** Mark of the part that stands in; `null` where nothing in the boxes can. */
  readonly substitute: string | null;
  /** How it stands to the role: made for it, good enough, or of the right kind only. */
  readonly fit: Fit | null;
  /** The table as it then stands: every setup that can still be built and read, prepared anew. */
  readonly setups: readonly PreparedSetup[];
  /** Marks of the setups that the missing part stands in: their steps or their key change. */
  readonly concerns: readonly string[];
  /** Marks of the setups that fall away. */
  readonly without: readonly string[];
  /** Nothing is left to read: close the table. */
  readonly closes: boolean;
}

/**
 * What to do when a part is lost: for every part that plays a role today, the parts of its kind that
 * lie unused in the boxes, spares included, best first, each with the key that then holds. A part that
 * stands on another table is never taken from it. Arrival readings belong to the lost part: none is followed.
 */
export function substitutionsOf(prepared: Prepared): readonly Substitution[] {
  const { kit, activity } = prepared;
  if (kit === null || activity === null) return [];
  const known = prepared.bench?.known ?? null;
  const visit = prepared.visit ?? emptyVisit(kit, activity);
  const { casting } = castRoles(kit, activity, visit);
  const inUse = new Set([...casting.values()].flatMap((cast) => [...cast.values()].map(({ mark }) => mark)));
  const gone = new Set(visit.missing.map(({ mark }) => mark));
  const free = kit.parts.filter(({ mark, isFaulty }) => !isFaulty && !inUse.has(mark) && !gone.has(mark));
  return activity.tables.flatMap((table) => {
    const cast = new Map(casting.get(table.mark) ?? []);
    const packed = preparedWith(kit, activity, visit, table, cast, known);
    if (packed === null) return [];
    return table.roles.flatMap((role) => {
      const lost = cast.get(role.name);
      if (lost === undefined) return [];
      return forLost({ kit, activity, visit, table, cast, packed, known }, role, lost, free);
    });
  });
}

interface Today {
  readonly kit: Kit;
  readonly activity: Activity;
  readonly visit: Visit;
  readonly table: ActivityTable;
  /** Which part plays which role at the table. */
  readonly cast: ReadonlyMap<string, KitPart>;
  readonly packed: PreparedTable;
  /** What the bench readings tell; it goes with the parts. */
  readonly known: Known | null;
}

function forLost(today: Today, role: Role, lost: KitPart, free: readonly KitPart[]): readonly Substitution[] {
  const { table, packed } = today;
  const concerns = table.setups
    .filter((setup) => [setup, ...setup.stages].some(({ roles }) => Object.values(roles).includes(role.name)))
    .map(({ mark }) => mark);
  const lostHere = { table: table.mark, role: role.name, missing: lost.mark, concerns };
  const found = free
    .filter((part) => part.kind === role.kind)
    .flatMap((part): readonly Substitution[] => {
      const setups = withSubstitute(today, role, lost, part).filter((setup) => isRead(setup, packed));
      if (!setups.some(({ setup }) => concerns.includes(setup.mark))) return [];
      return [{ ...lostHere, substitute: part.mark, fit: fitOf(part, role), ...standing(packed, setups) }];
    })
    .sort((a, b) => worthOf(b, table) - worthOf(a, table));
  if (found.length > 0) return found;
  const rest = packed.setups.filter(({ setup }) => !concerns.includes(setup.mark));
  return [{ ...lostHere, substitute: null, fit: null, ...standing(packed, rest) }];
}

const standing = (packed: PreparedTable, setups: readonly PreparedSetup[]) => {
  const marks = setups.map(({ setup }) => setup.mark);
  return {
    setups,
    without: packed.setups.map(({ setup }) => setup.mark).filter((mark) => !marks.includes(mark)),
    closes: setups.length === 0,
  };
};

/** The table's setups with another part in the role, through the same preparation as everything. */
function withSubstitute(today: Today, role: Role, lost: KitPart, part: KitPart): readonly PreparedSetup[] {
  const { kit, activity, visit, table, cast, known } = today;
  const missing = [...visit.missing, { mark: lost.mark, path: [] }];
  const roles = new Map(cast).set(role.name, part);
  return preparedWith(kit, activity, { ...visit, missing }, table, roles, known)?.setups ?? [];
}

/** The table with these parts in its roles, before any arrival reading; `null` where it can't be prepared. */
function preparedWith(
  kit: Kit,
  activity: Activity,
  visit: Visit,
  table: ActivityTable,
  cast: ReadonlyMap<string, KitPart>,
  known: Known | null,
): PreparedTable | null {
  const roles = Object.fromEntries([...cast].map(([role, { mark }]) => [role, mark]));
  const alone = { ...visit, arrival: [], roles: { [table.mark]: roles } };
  return bringTogether(kit, { ...activity, tables: [table] }, alone, known).tables[0] ?? null;
}

/** A setup can be read where it gives a figure, or where it gives what it gave before. */
function isRead({ setup, prediction }: PreparedSetup, packed: PreparedTable): boolean {
  const { kind } = prediction.outcome;
  if (kind === 'reading' || kind === 'band' || kind === 'ease') return true;
  return packed.setups.find((each) => each.setup.mark === setup.mark)?.prediction.outcome.kind === kind;
}

const FITS: Readonly<Record<Fit, number>> = { exact: 2, enough: 1, 'kind-only': 0, 'other-kind': 0 };
/** More setups kept go before a better fit, and a better fit before fewer findings. */
const worthOf = (found: Substitution, table: ActivityTable): number =>
  10000 * (found.setups.length - table.setups.length) + 1000 * fitWorth(found) - findingsOf(found);

const fitWorth = ({ fit }: Substitution): number => FITS[fit ?? 'other-kind'];
const findingsOf = ({ setups }: Substitution): number =>
  setups.reduce((sum, { prediction }) => sum + prediction.diagnostics.length, 0);

/** Why one part is named before another to stand in for the same lost one. */
export type Preference = 'keeps-more' | 'fits-better' | 'shows-better' | 'named-first';

/** What made the first of two come before the second; where nothing did, the kit names it first. */
export function preferenceOf(first: Substitution, second: Substitution): Preference {
  if (first.setups.length > second.setups.length) return 'keeps-more';
  if (fitWorth(first) > fitWorth(second)) return 'fits-better';
  return findingsOf(first) < findingsOf(second) ? 'shows-better' : 'named-first';
}

const emptyVisit = (kit: Kit, activity: Activity): Visit => ({
  file: '',
  kit: kit.file,
  activity: activity.file,
  date: null,
  decimal: 'point',
  gravity: null,
  groups: null,
  groupLabels: [],
  groupLanguages: {},
  cardsIn: null,
  keyIn: null,
  pupils: null,
  helpers: null,
  period: null,
  day: plainDay,
  readingsIn: null,
  roles: {},
  missing: [],
  arrival: [],
});
