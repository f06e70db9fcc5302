/** Whether some of the wishes can be kept together; `null` where the search ended before it knew. */
export type CanBeKept<T> = (some: readonly T[]) => boolean | null;

/** Wishes that can't be kept together, and how sure it is that no fewer clash. */
export interface SmallestClash<T> {
  readonly wishes: readonly T[];
  readonly proof: 'smallest' | 'minimal' | 'none';
}

/**
 * The smallest set of wishes that can't be kept together; without any one of them the others can. First wishes are
 * dropped one by one as long as the rest still clashes; that leaves a minimal set. Then smaller ones
 * are looked for: a clash has to share a wish with everything that has to be given up to end all clashes (Reiter 1987,
 * from memory), so the fewest wishes that share one with each such set seen so far either clash or lead to another.
 * `all` are known to clash. Giving up a wish never makes what is left harder to keep.
 *
 * @example
 * const canBeKept = (some) => !(some.includes(1) && some.includes(2)) && !(some.includes(3) && some.includes(4) && some.includes(5));
 * smallestClash([5, 4, 3, 2, 1], canBeKept) // => { wishes: [2, 1], proof: 'smallest' }
 */
export function smallestClash<T>(all: readonly T[], canBeKept: CanBeKept<T>): SmallestClash<T> {
  const minimal = minimalClash(all, canBeKept);
  if (minimal.proof === 'none') return minimal;
  const given: (readonly T[])[] = [];
  for (let turn = 0; turn < MOST_TURNS; turn += 1) {
    const hitting = fewestHitting(given, minimal.wishes.length);
    if (hitting === null || hitting.length >= minimal.wishes.length) return { ...minimal, proof: 'smallest' };
    const inOrder = all.filter((wish) => hitting.includes(wish));
    const isKept = canBeKept(inOrder);
    if (isKept === null) return minimal;
    if (!isKept) return { wishes: inOrder, proof: 'smallest' };
    const more = correction(all, inOrder, canBeKept);
    if (more === null) return minimal;
    given.push(more);
  }
  return minimal;
}

const MOST_TURNS = 200;

/** Drops wishes from the front as long as the rest clashes. */
function minimalClash<T>(all: readonly T[], canBeKept: CanBeKept<T>): SmallestClash<T> {
  let left = all;
  let isSure = true;
  for (const wish of all) {
    const without = left.filter((each) => each !== wish);
    const isKept = canBeKept(without);
    if (isKept === false) left = without;
    else if (isKept === null) isSure = false;
  }
  return { wishes: left, proof: isSure ? 'minimal' : 'none' };
}

/** What has to be given up where `kept` and as much else as can be is kept. */
function correction<T>(all: readonly T[], kept: readonly T[], canBeKept: CanBeKept<T>): readonly T[] | null {
  let most = kept;
  for (const wish of all) {
    if (most.includes(wish)) continue;
    const isKept = canBeKept([...most, wish]);
    if (isKept === null) return null;
    if (isKept) most = [...most, wish];
  }
  return all.filter((wish) => !most.includes(wish));
}

/** The fewest wishes of which each set has one; `null` where that takes as many as `tooMany`. */
function fewestHitting<T>(sets: readonly (readonly T[])[], tooMany: number): readonly T[] | null {
  let best: readonly T[] | null = null;
  const choose = (chosen: readonly T[]): void => {
    const open = sets.filter((set) => !set.some((wish) => chosen.includes(wish)));
    if (open.length === 0) best = chosen;
    const most = (best?.length ?? tooMany) - 1;
    if (open.length === 0 || chosen.length + 1 > most || chosen.length + disjoint(open) > most) return;
    const smallest = open.reduce((least, set) => (set.length < least.length ? set : least));
    for (const wish of smallest) choose([...chosen, wish]);
  };
  choose([]);
  return best;
}

/** At least so many wishes are needed: these sets share none. */
function disjoint<T>(sets: readonly (readonly T[])[]): number {
  const taken: (readonly T[])[] = [];
  for (const set of [...sets].sort((a, b) => a.length - b.length))
    if (!taken.some((other) => other.some((wish) => set.includes(wish)))) taken.push(set);
  return taken.length;
}
