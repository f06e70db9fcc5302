import { roundsNeeded } from './round-bound.ts';
import {
  type Fill,
  type Filling,
  fillToLevel,
  hasRoom,
  type OnRound,
  place,
  ripeVisits,
} from './round-filling.ts';
import type { RoundSearch } from './round-state.ts';

/** What a group may do in a round, and how many changes it has then, in this round and later, at least. */
interface Choice {
  readonly visit: number | null;
  readonly changes: number;
  /** Of choices with as many changes: to stay, a table that nobody stood at, nothing, a table that another stood at. */
  readonly rank: number;
}

/** The table at which a group stood in a round of the plan that stood, or -1. */
export function stoodAt(search: RoundSearch, round: number, group: number): number {
  return search.book.problem.standing?.[round]?.[group] ?? -1;
}

/**
 * The least number of cells that differ from `round` on. Group by group: a visit that is left and does not stand
 * ahead takes up one cell that changes; so does a cell ahead whose visit is not left; one cell may be both.
 * Round by round: where more stand at a table, or at the tables of a limit, than can be there.
 */
export function fewestChanges(search: RoundSearch, round: number): number {
  let sum = 0;
  for (let group = 0; group < search.book.problem.groups; group += 1)
    sum += fewestOfGroup(search, round, group, null);
  return Math.max(sum, search.book.crowded[round] ?? 0);
}

function fewestOfGroup(search: RoundSearch, round: number, group: number, without: number | null): number {
  const { book, left } = search;
  const standing = book.problem.standing ?? [];
  let open = 0;
  let kept = 0;
  let ahead = 0;
  const stands = new Set<number>();
  for (let each = round; each < standing.length; each += 1) {
    const table = stoodAt(search, each, group);
    if (table < 0) continue;
    ahead += 1;
    stands.add(table);
  }
  for (const visit of book.bearers[group]?.visits ?? []) {
    if (left.open[visit] === 0 || visit === without) continue;
    open += 1;
    if (stands.has(book.tableOf[visit] as number)) kept += 1;
  }
  return Math.max(open, ahead) - kept;
}

/** The groups of a round in the order in which they are placed, and what each may do. */
interface Choosing {
  readonly order: readonly number[];
  /** By group: its place in the order. */
  readonly turnOf: readonly number[];
  /** By group, fewest changes first. */
  readonly choices: readonly (readonly Choice[])[];
}

/**
 * Every round that can come next, those nearest to the plan that stood first; none with more changes than allowed.
 * Groups that can stay where they stood are placed before those that have to look for something else.
 */
export function fillNearStanding(
  search: RoundSearch,
  ready: number,
  changes: number,
  onRound: OnRound,
): boolean {
  const { book } = search;
  const round = search.rounds.length;
  const needed = roundsNeeded(book, search.left);
  const ripe = ripeVisits(search);
  const groups = Array.from({ length: book.problem.groups }, (_, group) => group);
  const choices = groups.map((group) => choicesOf(search, ripe, round, group));
  const order = groups.toSorted(
    (a, b) => (choices[a]?.[0]?.rank ?? 0) - (choices[b]?.[0]?.rank ?? 0) || a - b,
  );
  const choosing: Choosing = { order, turnOf: groups.map((group) => order.indexOf(group)), choices };
  const fewest = choices.reduce((sum, list) => sum + (list[0] as Choice).changes, changes);
  const fill: Fill = (filling, from) => fillGroup(filling, from, choosing, 0, fewest);
  return levelsNearStanding(search, ripe, round).some((level) =>
    fillToLevel(search, ready, needed, ripe, level, onRound, fill),
  );
}

/** The length that the round had comes first, then the others, longest first. */
function levelsNearStanding(search: RoundSearch, ripe: readonly number[], round: number): readonly number[] {
  const { book } = search;
  const stood = ripe.filter(
    (visit) => stoodAt(search, round, book.groupOf[visit] as number) === book.tableOf[visit],
  );
  const longest = Math.min(...stood.map((visit) => book.levelOf[visit] as number));
  const levels = book.lengths
    .map((_, level) => level)
    .filter((level) => ripe.some((visit) => book.levelOf[visit] === level));
  return levels.sort((a, b) => Number(b === longest) - Number(a === longest) || a - b);
}

function choicesOf(
  search: RoundSearch,
  ripe: readonly number[],
  round: number,
  group: number,
): readonly Choice[] {
  const { book, liking } = search;
  const stood = stoodAt(search, round, group);
  const taken = new Set(book.problem.standing?.[round] ?? []);
  const choice = (visit: number | null): Choice => {
    const table = visit === null ? -1 : (book.tableOf[visit] as number);
    const rank = table === stood ? 0 : visit === null ? 2 : taken.has(table) ? 3 : 1;
    return {
      visit,
      changes: Number(table !== stood) + fewestOfGroup(search, round + 1, group, visit),
      rank,
    };
  };
  const like = (each: Choice): number => (each.visit === null ? 0 : (liking[each.visit] as number));
  return [...ripe.filter((visit) => book.groupOf[visit] === group).map(choice), choice(null)].sort(
    (a, b) => a.changes - b.changes || a.rank - b.rank || like(b) - like(a),
  );
}

function fillGroup(
  filling: Filling,
  from: number,
  choosing: Choosing,
  turn: number,
  changes: number,
): boolean {
  const { search } = filling;
  search.stepsLeft -= 1;
  if (search.stepsLeft < 0) return true;
  if (changes > search.mostChanges) {
    search.nextChanges = Math.min(search.nextChanges, changes);
    return false;
  }
  if (!canBeMet(filling, choosing, turn)) return false;
  const group = choosing.order[turn];
  if (group === undefined) return filling.onRound([...filling.chosen], from, from + filling.length);
  const choices = choosing.choices[group] as readonly Choice[];
  for (const choice of choices) {
    const after = changes - (choices[0] as Choice).changes + choice.changes;
    if (after > search.mostChanges) {
      search.nextChanges = Math.min(search.nextChanges, after);
      break;
    }
    const goOn: Fill = (next, start) => fillGroup(next, start, choosing, turn + 1, after);
    if (choice.visit === null) {
      if (goOn(filling, from)) return true;
    } else if (filling.candidates.includes(choice.visit) && hasRoom(filling, choice.visit)) {
      if (place(filling, choice.visit, from, goOn)) return true;
    }
  }
  return false;
}

/** Whether the groups that have no place yet are enough for what has to be in the round. */
function canBeMet(filling: Filling, choosing: Choosing, turn: number): boolean {
  const { book } = filling.search;
  return filling.demands.every((demand) => {
    if (demand.count <= 0) return true;
    let options = 0;
    for (const visit of filling.candidates)
      if (
        (choosing.turnOf[book.groupOf[visit] as number] as number) >= turn &&
        (book.levelOf[visit] as number) <= demand.level &&
        demand.visits.includes(visit) &&
        hasRoom(filling, visit)
      )
        options += 1;
    return options >= demand.count;
  });
}
