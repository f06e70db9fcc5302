import type { Held, ShopModel } from './shop-model.ts';
import { addClaim, type ShopNet, setClaim } from './shop-net.ts';

/**
 * Resources for several at once. Intervals that overlap two by two overlap all at one time, so that a resource is
 * kept to where of every set of one too many some task is over before another begins. Those sets are too many to
 * write down; one is when a schedule breaks it.
 */
export interface CrowdBook {
  readonly resources: readonly Held[];
  /** Room for claims that may be needed. */
  readonly mostClaims: number;
  /** By resource and two tasks: the literal that claims that the first is over before the second begins. */
  readonly literals: Map<number, number>;
}

export function crowdBook(model: ShopModel): CrowdBook {
  const resources = model.resources.filter(({ capacity }) => capacity > 1);
  const mostClaims = resources.reduce((sum, { tasks }) => sum + tasks.length * (tasks.length - 1), 0);
  return { resources, mostClaims, literals: new Map() };
}

/** What the earliest beginnings break, a clause for each crowd; the literal that costs least stands first. */
export function crowdClauses(net: ShopNet, book: CrowdBook): readonly (readonly number[])[] {
  return book.resources.flatMap((held, resource) =>
    crowdsOf(net, held).map((places) => clauseOf(net, book, resource, held, places)),
  );
}

/** Sets of places one greater than the resource bears, at the times at which too many run. */
function crowdsOf(net: ShopNet, held: Held): readonly (readonly number[])[] {
  const { tasks, holds, capacity } = held;
  const start = (place: number): number => net.value[2 * (tasks[place] as number)] as number;
  const room = (place: number): number =>
    -(net.value[2 * (tasks[place] as number) + 1] as number) - start(place);
  const places = Array.from(tasks, (_, place) => place).sort((a, b) => start(a) - start(b) || a - b);
  const crowds: (readonly number[])[] = [];
  let running: number[] = [];
  for (const place of places) {
    running = running.filter((other) => start(other) + (holds[other] as number) > start(place));
    running.push(place);
    if (running.length <= capacity) continue;
    crowds.push([...running].sort((a, b) => room(a) - room(b) || a - b).slice(0, capacity + 1));
    running = running.filter((other) => other !== place);
  }
  return crowds;
}

function clauseOf(
  net: ShopNet,
  book: CrowdBook,
  resource: number,
  { tasks, holds }: Held,
  places: readonly number[],
): readonly number[] {
  const ways = places.flatMap((before) =>
    places
      .filter((after) => after !== before)
      .map((after) => {
        const first = tasks[before] as number;
        const then = tasks[after] as number;
        const hold = holds[before] as number;
        const pushed = (net.value[2 * first] as number) + hold + (net.value[2 * then + 1] as number);
        return { literal: literalOf(net, book, resource, first, then, hold), pushed };
      }),
  );
  return ways.sort((a, b) => a.pushed - b.pushed || a.literal - b.literal).map(({ literal }) => literal);
}

function literalOf(
  net: ShopNet,
  book: CrowdBook,
  resource: number,
  first: number,
  then: number,
  hold: number,
): number {
  const { count } = net.model;
  const key = (resource * count + first) * count + then;
  const known = book.literals.get(key);
  if (known !== undefined) return known;
  const literal = 2 * addClaim(net);
  setClaim(net, literal, first, then, hold);
  book.literals.set(key, literal);
  return literal;
}
