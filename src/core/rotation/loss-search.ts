import { randomFrom } from '../uncertainty/random.ts';
import type { Tried } from './first-that-works.ts';
import type { LossProblem, LossRoom } from './loss-room.ts';
import { listLossSets, type OnLossSet, sampleLossSets } from './loss-sets.ts';
import type { LossLevel } from './loss-walk.ts';
import type { FoundPlan, PlanAnswer } from './plan-search.ts';
import type { GroupAtTable } from './round-chart.ts';

/** The plan of what is left, and what was left out of it. */
export interface LeanPlan {
  readonly plan: FoundPlan;
  readonly leftOut: readonly GroupAtTable[];
  /** `search`: every way to leave out fewer, or to share it out more fairly, was ruled out. */
  readonly proof: 'search' | 'none';
}

/** Looks for a plan of some visits that is over by the bell. */
export type PlanOf = (visits: readonly GroupAtTable[]) => PlanAnswer;

/** A search for what to leave out, as it runs. */
export interface LossSearch {
  readonly problem: LossProblem;
  readonly rooms: readonly LossRoom[];
  /** By group: the one before it that differs in nothing. */
  readonly alike: readonly number[];
  readonly planOf: PlanOf;
  readonly seed: number;
  readonly known: Map<string, PlanAnswer>;
  /** With the number that is being tried: searches for a plan, and those without an answer. */
  searched: number;
  unknown: number;
  looks: { left: number };
  /** Sets met so far of which it is not known whether the others can be planned. */
  open: number;
}

/** Of one number: plans that are searched for, searches without an answer, and ways of groups looked at to list sets. */
const MOST_SEARCHED = 200;
const MOST_UNKNOWN = 2;
const LOOKS_TO_LIST = 60_000;
/** Of one level and choice of rounds: ways of groups looked at for a sample, its sets; samples; choices of rounds. */
const LOOKS_TO_SAMPLE = 8000;
const MOST_SAMPLED = 5;
const SAMPLES = 3;
const MOST_ROOMS = 6;

/** A plan with so many left out, the fairest that is found: the fewest of one group, then of one table. */
export function leanWith(search: LossSearch, ordinary: number, all: number): Tried<LeanPlan> {
  const { asked } = search.problem;
  const tables = asked.runs.length;
  search.searched = 0;
  search.unknown = 0;
  search.looks = { left: LOOKS_TO_LIST };
  const anyLevel = { ordinary, all, ofGroup: tables, ofTable: asked.groups };
  if (!hasSample(search, anyLevel)) return fromList(search, anyLevel);
  let isSure = true;
  for (let ofGroup = Math.ceil(all / Math.max(1, asked.groups)); ofGroup <= tables; ofGroup += 1) {
    const least = Math.ceil(ordinary / Math.max(1, tables));
    for (let ofTable = least; ofTable <= asked.groups; ofTable += 1) {
      const tried = atLevel(search, { ordinary, all, ofGroup, ofTable });
      isSure = isSure && tried.isSure;
      if (tried.found !== null)
        return { found: { ...tried.found, proof: isSure ? 'search' : 'none' }, isSure };
      if (isTired(search)) return { found: null, isSure: false };
    }
  }
  return { found: null, isSure };
}

const isTired = ({ searched, unknown }: LossSearch): boolean =>
  searched >= MOST_SEARCHED || unknown >= MOST_UNKNOWN;

/** Choices of rounds that leave room for all but so many, those with the most room first. */
const roomsFor = ({ rooms }: LossSearch, level: LossLevel): readonly LossRoom[] =>
  rooms.filter(
    (room) =>
      room.leastOrdinary <= level.ordinary &&
      room.least <= level.all &&
      room.leastOfGroup <= level.ofGroup &&
      room.leastOfTable <= level.ofTable,
  );

const hasSample = (search: LossSearch, level: LossLevel): boolean =>
  roomsFor(search, level)
    .slice(0, MOST_ROOMS)
    .some((room) =>
      sampleLossSets(
        search.problem,
        room,
        level,
        () => 0,
        { left: LOOKS_TO_SAMPLE },
        () => true,
      ),
    );

/** Samples first: where there are many sets, most can be planned. */
function atLevel(search: LossSearch, level: LossLevel): Tried<LeanPlan> {
  const rooms = roomsFor(search, level).slice(0, MOST_ROOMS);
  for (let noise = 0; noise < SAMPLES; noise += 1)
    for (const room of rooms) {
      const random = randomFrom(search.seed + noise);
      const preferred = (): number => 3 * noise * random.even();
      const trying = tryingSets(search, MOST_SAMPLED);
      sampleLossSets(search.problem, room, level, preferred, { left: LOOKS_TO_SAMPLE }, trying.onSet);
      const found = trying.found();
      if (found !== null) return { found, isSure: true };
      if (isTired(search)) return { found: null, isSure: false };
    }
  return fromList(search, level);
}

/** Every set there is, as long as there are not too many. */
function fromList(search: LossSearch, level: LossLevel): Tried<LeanPlan> {
  const openBefore = search.open;
  let isAll = true;
  for (const room of roomsFor(search, level)) {
    const trying = tryingSets(search, MOST_SEARCHED);
    const listing = listLossSets(search.problem, room, level, search.alike, search.looks, trying.onSet);
    const found = trying.found();
    if (found !== null) return { found, isSure: true };
    if (listing !== 'all') isAll = false;
    if (isTired(search)) return { found: null, isSure: false };
  }
  return { found: null, isSure: isAll && search.open === openBefore };
}

/** Looks for a plan without each set, until one is found or so many had none. */
function tryingSets(
  search: LossSearch,
  most: number,
): { readonly onSet: OnLossSet; readonly found: () => LeanPlan | null } {
  let found: LeanPlan | null = null;
  let left = most;
  return {
    onSet: (lost) => {
      found = planWithout(search, lost);
      left -= 1;
      return found !== null || left <= 0 || isTired(search);
    },
    found: () => found,
  };
}

function planWithout(search: LossSearch, leftOut: readonly GroupAtTable[]): LeanPlan | null {
  const key = leftOut.map(({ group, table }) => `${group}.${table}`).join(' ');
  const isLost = ({ group, table }: GroupAtTable): boolean =>
    leftOut.some((each) => each.group === group && each.table === table);
  const known = search.known.get(key);
  const answer = known ?? search.planOf(search.problem.asked.visits.filter((visit) => !isLost(visit)));
  if (answer.kind === 'unknown') search.open += 1;
  if (known === undefined) {
    search.known.set(key, answer);
    search.searched += 1;
    if (answer.kind === 'unknown') search.unknown += 1;
  }
  return answer.kind === 'plan' ? { plan: answer, leftOut, proof: 'none' } : null;
}
