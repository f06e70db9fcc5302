import { roundsNeeded } from './round-bound.ts';
import type { Demand } from './round-demand.ts';
import {
  type Filling,
  fillToLevel,
  fits,
  hasRoom,
  type OnRound,
  place,
  ripeVisits,
} from './round-filling.ts';
import type { RoundSearch } from './round-state.ts';
import { earliestRound } from './round-times.ts';

/**
 * Every round worth trying next, those that keep the end soonest first: for each length, the visits that have
 * to be in it lest the end move past the limit, then as many more as there is room for.
 */
export function fillShortest(search: RoundSearch, ready: number, onRound: OnRound): boolean {
  const { book } = search;
  const needed = roundsNeeded(book, search.left);
  const ripe = ripeVisits(search);
  if (book.isFree) {
    const pivot = pivotOf(search, ripe);
    const level = book.levelOf[pivot] as number;
    return fillToLevel(search, ready, needed, ripe, level, onRound, (filling, from) =>
      place(filling, pivot, from, fill),
    );
  }
  const first = search.order[search.rounds.length];
  return book.lengths
    .map((_, level) => level)
    .filter((level) => ripe.some((visit) => book.levelOf[visit] === level))
    .sort((a, b) => Number(b === first) - Number(a === first) || a - b)
    .some((level) => fillToLevel(search, ready, needed, ripe, level, onRound, fill));
}

/** Where rounds may change places, the next can be that with the longest visit of the most loaded table. */
function pivotOf(search: RoundSearch, ripe: readonly number[]): number {
  const { book, left } = search;
  const levels = book.lengths.length;
  const longest = Math.min(...ripe.map((visit) => book.levelOf[visit] as number));
  const weight = (visit: number): number =>
    Math.max(
      ...(book.weighsOn[visit] as readonly number[]).map(
        (bearer) =>
          (left.loads[bearer * levels + longest] as number) / (book.bearers[bearer]?.capacity as number),
      ),
    );
  return ripe
    .filter((visit) => book.levelOf[visit] === longest)
    .reduce((best, visit) => (weight(visit) > weight(best) ? visit : best));
}

function fill(filling: Filling, from: number): boolean {
  const { search, demands, banned } = filling;
  search.stepsLeft -= 1;
  if (search.stepsLeft < 0) return true;
  if (filling.times >= search.breadth) {
    search.isCut = true;
    return false;
  }
  let tightest: Demand | null = null;
  let options: readonly number[] = [];
  for (const demand of demands) {
    if (demand.count <= 0) continue;
    const own = optionsOf(filling, demand);
    if (own.length < demand.count) return false;
    if (tightest !== null && own.length - demand.count >= options.length - tightest.count) continue;
    tightest = demand;
    options = own;
  }
  if (tightest === null) return fillUp(filling, from);
  const spare = options.length - tightest.count;
  let isDone = false;
  let tried = 0;
  for (; tried <= spare && !isDone; tried += 1) {
    isDone = place(filling, options[tried] as number, from, fill);
    banned[options[tried] as number] = 1;
  }
  for (let each = 0; each < tried; each += 1) banned[options[each] as number] = 0;
  return isDone;
}

function optionsOf(filling: Filling, demand: Demand): readonly number[] {
  const { levelOf } = filling.search.book;
  return filling.candidates.filter(
    (visit) =>
      demand.visits.includes(visit) && (levelOf[visit] as number) <= demand.level && hasRoom(filling, visit),
  );
}

/** Nothing more has to be in it: what still may. */
function fillUp(filling: Filling, from: number): boolean {
  const { banned, candidates } = filling;
  const next = candidates.find((visit) => hasRoom(filling, visit));
  if (next === undefined) return handOver(filling, from);
  const delays = delaysRound(filling, next, from);
  if (!delays && place(filling, next, from, fill)) return true;
  banned[next] = 1;
  const isDone = fill(filling, from);
  banned[next] = 0;
  return isDone || (delays && place(filling, next, from, fill));
}

function delaysRound(filling: Filling, visit: number, from: number): boolean {
  const { search, chosen, length, ready } = filling;
  return search.book.isTimed && earliestRound(search.book, [...chosen, visit], length, ready) !== from;
}

/**
 * A round that could hold one visit more and begin as soon is left out: taking it from a later round
 * breaks no rule and makes nothing later. Two fixed times in one round are the exception, so then all rounds count.
 */
function handOver(filling: Filling, from: number): boolean {
  const { search, banned, candidates, chosen } = filling;
  const { book } = search;
  if (book.problem.at.length < 2)
    for (const visit of candidates) {
      if (banned[visit] === 0 || !fits(filling, visit)) continue;
      if (!delaysRound(filling, visit, from)) return false;
    }
  filling.times += 1;
  return filling.onRound([...chosen], from, from + filling.length);
}
