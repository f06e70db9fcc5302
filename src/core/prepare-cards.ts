import type { Activity, ActivityTable } from './files/activity.ts';
import { castRoles } from './files/casting.ts';
import type { Kit, KitPart } from './kit/kit.ts';
import { candidates, type Role } from './kit/role.ts';
import { type Prepared, prepare } from './prepare.ts';

/** The name that the kit's own casting goes by; no user's file is called so. */
const CASTING = 'the kit as it lies in its boxes';

/**
 * The same kit and activity prepared for what is laminated once: no date, no place, nothing missing.
 * Where several parts fit a role, the part kept for the table's own machine plays it, then the one that
 * the kit names first; so cards follow from kit and activity alone, whatever a visit says.
 */
export function preparedForCards(prepared: Prepared): Prepared {
  const { kit, activity, sources } = prepared;
  const [kitSource, activitySource] = sources;
  if (kit === null || activity === null || kitSource === undefined || activitySource === undefined)
    return { ...prepared, visit: null };
  const text = `handspike: visit 1
kit: ${JSON.stringify(kit.file)}
activity: ${JSON.stringify(activity.file)}
roles: ${JSON.stringify(rolesForCards(kit, activity))}
`;
  const own = prepare({ kit: kitSource, activity: activitySource, visit: { name: CASTING, text } });
  return { ...own, visit: null, sources: [kitSource, activitySource] };
}

export type RolesForCards = Readonly<Record<string, Readonly<Record<string, string>>>>;

/** Part marks by table and role, as the cards have them; a role that no part fits is left out. */
export function rolesForCards(kit: Kit, activity: Activity): RolesForCards {
  return Object.fromEntries(activity.tables.map((table) => [table.mark, rolesOf(kit, table)]));
}

function rolesOf(kit: Kit, table: ActivityTable): Readonly<Record<string, string>> {
  const cast: Record<string, string> = {};
  for (const role of table.roles) {
    const part = usualPart(kit, table, role, Object.values(cast));
    if (part !== undefined) cast[role.name] = part.mark;
  }
  return cast;
}

function usualPart(
  kit: Kit,
  table: ActivityTable,
  role: Role,
  taken: readonly string[],
): KitPart | undefined {
  const stages = table.setups.flatMap((setup) => setup.stages.map((stage) => stage.machine));
  const { best } = candidates(kit.parts, role, [table.machine, ...stages]);
  const free = best.filter((part) => !taken.includes(part.mark));
  return free.find((part) => part.fits?.includes(table.machine) === true) ?? free[0];
}

/** A role that another part plays today than on the laminated card. */
export interface OtherThanOnCard {
  readonly table: string;
  readonly role: string;
  readonly onCard: string;
  /** `null` where nobody plays it today. */
  readonly today: string | null;
}

/** What today's casting has otherwise than the cards: the teacher lays a slip beside those. */
export function otherThanOnCards({ kit, activity, visit }: Prepared): readonly OtherThanOnCard[] {
  if (kit === null || activity === null || visit === null) return [];
  const { casting } = castRoles(kit, activity, visit);
  return Object.entries(rolesForCards(kit, activity)).flatMap(([table, roles]) =>
    Object.entries(roles).flatMap(([role, onCard]): readonly OtherThanOnCard[] => {
      const today = casting.get(table)?.get(role)?.mark ?? null;
      return today === onCard ? [] : [{ table, role, onCard, today }];
    }),
  );
}
