import type { AskedPlan } from './asked-plan.ts';
import type { GroupAtTable } from './round-chart.ts';
import { solveRounds } from './round-solve.ts';
import type { SearchEffort } from './shop.ts';
import { solveShop } from './shop-solve.ts';
import type { Proof } from './timetable.ts';
import { toRounds } from './to-rounds.ts';
import { toShop } from './to-shop.ts';

/** What a search for a plan came to, whichever way groups move. */
export type PlanAnswer =
  | {
      readonly kind: 'plan';
      readonly visits: readonly PlannedVisit[];
      /** Where all move on a signal. */
      readonly rounds: readonly { readonly from: number; readonly to: number }[] | null;
      readonly end: number;
      readonly bound: number;
      readonly proof: Proof;
    }
  | { readonly kind: 'impossible' }
  | { readonly kind: 'unknown'; readonly bound: number };

export type FoundPlan = Extract<PlanAnswer, { kind: 'plan' }>;

export interface PlannedVisit extends GroupAtTable {
  readonly from: number;
  /** Place of its round; `null` where tables free up. */
  readonly round: number | null;
}

/** What else a search is told. */
export interface PlanAim {
  /** Nothing ends after it; `null`: as soon as it can be. */
  readonly bell: number | null;
  /** By round and group the table, or -1: where all move on a signal, the fewest changes from it come first. */
  readonly standing: readonly (readonly number[])[] | null;
  /** Any plan that is over by the bell will do, where tables free up; the next question is another one. */
  readonly isAny?: boolean;
}

/** The plan that ends soonest, as asked, or that there is none. */
export function searchPlan(asked: AskedPlan, aim: PlanAim, effort: SearchEffort): PlanAnswer {
  if (asked.isAgainstItself) return { kind: 'impossible' };
  if (asked.visits.length === 0) return nothing(asked);
  if (hasCircle(asked) || lacksRoom(asked)) return { kind: 'impossible' };
  return asked.way === 'signal' ? inRounds(asked, aim, effort) : asTablesFreeUp(asked, aim, effort);
}

/** Where there is no visit, nothing is needed. */
const nothing = ({ way, begins }: AskedPlan): FoundPlan => ({
  kind: 'plan',
  visits: [],
  rounds: way === 'signal' ? [] : null,
  end: begins,
  bound: begins,
  proof: 'bound',
});

function inRounds(asked: AskedPlan, { bell, standing }: PlanAim, effort: SearchEffort): PlanAnswer {
  const answer = solveRounds(toRounds(asked, standing, bell), effort);
  if (answer.kind !== 'rounds') return answer;
  const { chart, from, to, end, bound, proof } = answer;
  return {
    kind: 'plan',
    visits: chart.flatMap((tables, round) =>
      tables.flatMap((table, group) =>
        table < 0 ? [] : [{ group, table, from: from[round] as number, round }],
      ),
    ),
    rounds: from.map((begin, round) => ({ from: begin, to: to[round] as number })),
    end,
    bound,
    proof,
  };
}

function asTablesFreeUp(asked: AskedPlan, { bell, isAny }: PlanAim, effort: SearchEffort): PlanAnswer {
  const answer = solveShop(
    toShop(asked, bell),
    effort,
    isAny === true ? { enough: bell ?? Number.MAX_SAFE_INTEGER } : {},
  );
  if (answer.kind !== 'schedule') return answer;
  const { starts, end, bound, proof } = answer;
  return {
    kind: 'plan',
    visits: asked.visits.map((visit, task) => ({ ...visit, from: starts[task] as number, round: null })),
    rounds: null,
    end,
    bound,
    proof,
  };
}

/** Tables that are all to come before each other, for a group that does them. */
function hasCircle({ visits, before, groups }: AskedPlan): boolean {
  return Array.from({ length: groups }, (_, group) => group).some((group) => {
    const left = new Set(visits.filter((visit) => visit.group === group).map(({ table }) => table));
    const rules = before.filter((rule) => rule.group === null || rule.group === group);
    for (let isTaken = true; isTaken; ) {
      const next = [...left].find(
        (table) => !rules.some(({ first, then }) => then === table && left.has(first)),
      );
      isTaken = next !== undefined;
      if (next !== undefined) left.delete(next);
    }
    return left.size > 0;
  });
}

/** A visit at a table that is not there, or that nobody may stand at. */
const lacksRoom = ({ visits, copies, limits }: AskedPlan): boolean =>
  visits.some(
    ({ table }) =>
      (copies[table] as number) < 1 ||
      limits.some((limit) => limit.capacity < 1 && limit.tables.includes(table)),
  );
