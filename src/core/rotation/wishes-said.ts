import type { Rotation } from './rotation.ts';
import type { Wish } from './wish.ts';

/** Every wish of a period by name, those too that nobody had to write down. */
export interface WishesSaid {
  /** What was wished, and the bell, the adults and how many there are of each table. */
  readonly wishes: readonly Wish[];
  /** That every group does each table that is open: what is left out first where the time is short. */
  readonly implied: readonly Wish[];
}

/**
 * The wishes of a rotation, made explicit so that a clash can name any of them. Of one table that every group
 * has to do for one reason, one wish is made.
 *
 * @example
 * import { exactly } from '../uncertainty/measured.ts';
 * const table = { mark: '4', run: exactly(seconds(360)), reset: exactly(seconds(60)), copies: 1, needsAdult: false, mayDo: false, beside: [] };
 * const rotation = { groups: [{ label: 'A', pupils: 4, arrives: seconds(0) }], tables: [table], adults: [], walk: seconds(30),
 *   begins: seconds(0), bell: seconds(2400), breaks: [], way: 'signal', wishes: [] };
 * wishesSaid(rotation).wishes.map(({ id }) => id) // => ['bell', 'copies 4']
 */
export function wishesSaid(rotation: Rotation): WishesSaid {
  const said = joined(rotation);
  const isSaid = (kind: Wish['kind']): boolean => said.some((wish) => wish.kind === kind);
  const needsAdult = rotation.tables.some((table) => table.needsAdult);
  return {
    wishes: [
      ...said,
      ...(isSaid('bell') ? [] : [{ kind: 'bell', id: 'bell', path: null } as const]),
      ...(isSaid('adults') || !needsAdult ? [] : [{ kind: 'adults', id: 'adults', path: null } as const]),
      ...rotation.tables
        .filter(({ mark }) => !said.some((wish) => wish.kind === 'copies' && wish.table === mark))
        .map(
          ({ mark, copies }): Wish => ({
            kind: 'copies',
            table: mark,
            copies,
            id: `copies ${mark}`,
            path: null,
          }),
        ),
    ],
    implied: rotation.tables
      .filter(({ mark }) => !isShut(rotation, mark))
      .map(({ mark }): Wish => ({ kind: 'does', table: mark, group: null, id: `does ${mark}`, path: null })),
  };
}

/** Whether nobody can be at a table from the beginning to the bell. */
export function isShut({ tables, wishes, begins, bell }: Rotation, mark: string): boolean {
  const table = tables.find((each) => each.mark === mark);
  if (table === undefined || table.copies < 1) return true;
  return wishes.some((wish) => {
    if (wish.kind === 'copies') return wish.table === mark && wish.copies < 1;
    if (wish.kind !== 'closed' || wish.table !== mark) return false;
    return wish.from <= begins && (wish.to === null || wish.to >= bell);
  });
}

/** A table that each group is said to have to do, in one place, is one wish. */
function joined({ wishes, groups }: Rotation): readonly Wish[] {
  const keyOf = (wish: Wish): string | null =>
    wish.kind === 'does' && wish.group !== null && wish.path !== null
      ? JSON.stringify([wish.table, wish.path])
      : null;
  const groupsOf = (key: string): number =>
    new Set(wishes.filter((wish) => keyOf(wish) === key).map((wish) => ('group' in wish ? wish.group : null)))
      .size;
  const taken = new Set<string>();
  return wishes.flatMap((wish): readonly Wish[] => {
    const key = keyOf(wish);
    if (wish.kind !== 'does' || key === null || groupsOf(key) < Math.max(2, groups.length)) return [wish];
    if (taken.has(key)) return [];
    taken.add(key);
    return [{ ...wish, group: null, id: `${wish.path?.join('/')}/${wish.table}` }];
  });
}
