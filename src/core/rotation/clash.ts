import type { Arrangement } from './arrangement.ts';
import { askedPlan } from './asked-plan.ts';
import { searchPlan } from './plan-search.ts';
import type { Rotation } from './rotation.ts';
import type { SearchEffort } from './shop.ts';
import { type CanBeKept, type SmallestClash, smallestClash } from './smallest-clash.ts';
import { visitsOf, wantedVisits } from './visits-wished.ts';
import type { Wish } from './wish.ts';
import { wishesSaid } from './wishes-said.ts';

export type Clash = Extract<Arrangement, { kind: 'clash' }>;

/**
 * What is asked of a clash. `must`: what was wished by name clashes, however many other visits are left out.
 * `order`: even with all the time there is, not all can be done. `any`: nothing fits at all.
 */
export type ClashAbout = 'must' | 'order' | 'any';

/**
 * The wishes of a rotation that can't be kept together: the smallest such set, and others that share no wish with
 * it. `null` where the wishes can all be kept, or where that could not be found out. `except`: without these.
 *
 * @example
 * import { exactly } from '../uncertainty/measured.ts';
 * const table = (mark) => ({ mark, run: exactly(360), reset: exactly(60), copies: 1, needsAdult: false, mayDo: false, beside: [] });
 * const before = (first, then) => ({ kind: 'before', first, then, group: null, id: `${first} ${then}`, path: null });
 * const rotation = { groups: [{ label: 'A', pupils: 4, arrives: 0 }], tables: [table('1'), table('2')], adults: [], walk: 30,
 *   begins: 0, bell: 2400, breaks: [], way: 'signal', wishes: [before('1', '2'), before('2', '1')] };
 * clash(rotation, 'order', { seed: 1, steps: 1000 }).wishes.map(({ id }) => id) // => ['1 2', '2 1']
 */
export function clash(
  rotation: Rotation,
  about: ClashAbout,
  effort: SearchEffort,
  except: readonly Wish[] = [],
): Clash | null {
  const { wishes, implied } = wishesSaid(rotation);
  const all = inOrderOfNaming([
    ...wishes.filter((wish) => about !== 'order' || !isOfTime(wish)),
    ...(about === 'must' ? [] : implied),
  ]).filter(({ id }) => !except.some((each) => each.id === id));
  const canBeKept = keeper(rotation, all, about, effort);
  if (canBeKept(all) !== false) return null;
  const sets: SmallestClash<Wish>[] = [];
  let left = all;
  while (sets.length < MOST_SETS && canBeKept(left) === false) {
    const set = smallestClash(left, canBeKept);
    sets.push(set);
    left = left.filter((wish) => !set.wishes.includes(wish));
    if (set.wishes.length === 0) break;
  }
  const [first, ...others] = sets as [SmallestClash<Wish>, ...SmallestClash<Wish>[]];
  return {
    kind: 'clash',
    wishes: first.wishes,
    alsoClashing: others.map((set) => set.wishes).filter((set) => set.length > 0),
    proof: first.proof,
  };
}

/**
 * What clashes even with all the time there is, and beside it what was wished by name and clashes for want of time: who
 * mends the one is not to find the other only then. The smaller set comes first.
 */
export function clashes(rotation: Rotation, effort: SearchEffort): Clash | null {
  const order = clash(rotation, 'order', effort);
  if (order === null) return null;
  const must = clash(rotation, 'must', effort);
  const isLess = must !== null && must.wishes.length < order.wishes.length && must.wishes.length > 0;
  const first = isLess ? must : order;
  const named = [first.wishes, ...first.alsoClashing].flat();
  if (must === null || named.length === 0) return first;
  const others = clash(rotation, isLess ? 'order' : 'must', effort, named);
  if (others === null) return first;
  const more = [others.wishes, ...others.alsoClashing].filter((set) => set.length > 0);
  return { ...first, alsoClashing: [...first.alsoClashing, ...more].slice(0, MOST_SETS - 1) };
}

/** More clashes at once than anybody mends at once. */
const MOST_SETS = 4;

/** A wish that takes time away: without it more visits fit. */
export const isOfTime = ({ kind }: Wish): boolean => kind === 'bell' || kind === 'closed' || kind === 'away';

/** What nobody wrote is given up first where one of several would do, so that what is named was written. */
const inOrderOfNaming = (wishes: readonly Wish[]): readonly Wish[] =>
  [...wishes].sort((a, b) => Number(a.path !== null) - Number(b.path !== null));

/** Whether some of the wishes can be kept, each time the same answer without asking twice. */
function keeper(
  rotation: Rotation,
  all: readonly Wish[],
  about: ClashAbout,
  effort: SearchEffort,
): CanBeKept<Wish> {
  const known = new Map<string, boolean | null>();
  const wanted = wantedVisits(rotation);
  return (some) => {
    const key = all.map((wish) => (some.includes(wish) ? '1' : '0')).join('');
    const before = known.get(key);
    if (before !== undefined) return before;
    const asked = askedPlan(rotation, some, visitsOf(rotation, some, wanted, about !== 'must'));
    const answer = searchPlan(asked, { bell: asked.bell, standing: null, isAny: true }, effort);
    const isKept = answer.kind === 'unknown' ? null : answer.kind === 'plan';
    known.set(key, isKept);
    return isKept;
  };
}
