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
}

/** The table at which a group stood in a round of the plan that stood, or -1. */
export function stoodAt(search: RoundSearch, round: number, group: number): number {
  return search.book.problem.standing?.[round]?.[group] ?? -1;
}

/**
 * The least number of cells that differ from `round` on, group by group. A visit that is left and does not stand
 * ahead takes up one cell that changes; so does a cell ahead whose visit is not left; one cell may be both.
 */
export function fewestChanges(search: RoundSearch, round: number): number {
  let sum = 0;
  for (let group = 0; group < search.book.problem.groups; group += 1)
    sum += fewestOfGroup(search, round, group, null);
  return sum;
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

/** Every round that can come next, those nearest to the plan that stood first; none with more changes than allowed. */
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
  const choices = Array.from({ length: book.problem.groups }, (_, group) =>
    choicesOf(search, ripe, round, group),
  );
  const fewest = choices.map((list) => list[0]?.changes as number);
  const fill: Fill = (filling, from) =>
    fillGroup(filling, from, choices, fewest, 0, changes + fewest.reduce((sum, each) => sum + each, 0));
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
  const choice = (visit: number | null): Choice => {
    const table = visit === null ? -1 : (book.tableOf[visit] as number);
    return {
      visit,
      changes: Number(table !== stood) + fewestOfGroup(search, round + 1, group, visit),
    };
  };
  const like = (each: Choice): number => (each.visit === null ? -Infinity : (liking[each.visit] as number));
  return [...ripe.filter((visit) => book.groupOf[visit] === group).map(choice), choice(null)].sort(
    (a, b) => a.changes - b.changes || (like(a) > like(b) ? -1 : like(a) < like(b) ? 1 : 0),
  );
}

function fillGroup(
  filling: Filling,
  from: number,
  choices: readonly (readonly Choice[])[],
  fewest: readonly number[],
  group: number,
  changes: number,
): boolean {
  const { search } = filling;
  search.stepsLeft -= 1;
  if (search.stepsLeft < 0) return true;
  if (changes > search.mostChanges) {
    search.nextChanges = Math.min(search.nextChanges, changes);
    return false;
  }
  if (!canBeMet(filling, group)) return false;
  if (group === choices.length) return filling.onRound([...filling.chosen], from, from + filling.length);
  for (const choice of choices[group] as readonly Choice[]) {
    const after = changes - (fewest[group] as number) + choice.changes;
    if (after > search.mostChanges) {
      search.nextChanges = Math.min(search.nextChanges, after);
      break;
    }
    const goOn: Fill = (next, start) => fillGroup(next, start, choices, fewest, group + 1, after);
    if (choice.visit === null) {
      if (goOn(filling, from)) return true;
    } else if (filling.candidates.includes(choice.visit) && hasRoom(filling, choice.visit)) {
      if (place(filling, choice.visit, from, goOn)) return true;
    }
  }
  return false;
}

/** Whether the groups that have no place yet are enough for what has to be in the round. */
function canBeMet(filling: Filling, group: number): boolean {
  const { book } = filling.search;
  return filling.demands.every((demand) => {
    if (demand.count <= 0) return true;
    let options = 0;
    for (const visit of filling.candidates)
      if (
        (book.groupOf[visit] as number) >= group &&
        (book.levelOf[visit] as number) <= demand.level &&
        demand.visits.includes(visit) &&
        hasRoom(filling, visit)
      )
        options += 1;
    return options >= demand.count;
  });
}
