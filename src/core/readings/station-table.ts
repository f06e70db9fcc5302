import type { Predicted } from '../setups/difference.ts';
import { type Apparatus, type ApparatusAtSetup, apparatusOf } from './apparatus.ts';
import { type Cause, causesOf } from './causes.ts';
import {
  type Explanation,
  explanationOf,
  likelihoodOf,
  tableKeyOf,
  unexplainedLikelihood,
  type Written,
} from './explanation.ts';
import { isHabit } from './group-habit.ts';
import { type Opened, opened, ownUnit } from './judgement.ts';
import type { ByKind } from './likely-cause.ts';
import { offScaleCauses } from './off-scale-causes.ts';
import type { WrittenReading } from './written-reading.ts';

/** A table as its readings are judged: what its setups share, and what may happen at each. */
export interface StationTable {
  readonly mark: string;
  readonly apparatus: Apparatus;
  /** Base rates of mistakes, times this: 1 unless somebody tries how much hangs on them. */
  readonly rateFactor: number;
}

export interface TableSource {
  readonly mark: string;
  readonly setups: readonly Predicted[];
}

/** Share of readings that nothing on the list explains: common practice, no source. */
export const UNEXPLAINED_RATE = 0.03;

export const stationTable = ({ mark, setups }: TableSource, rateFactor: number): StationTable => ({
  mark,
  apparatus: apparatusOf(setups),
  rateFactor,
});

/** One reading of a table, taken as far as it goes without the others. */
export interface TakenReading {
  readonly reading: WrittenReading;
  readonly setup: number;
  readonly opened: Opened;
  /** Everything that may have happened, and what of it the number leaves possible. */
  readonly causes: readonly Cause[];
  readonly explanations: readonly Explanation[];
  readonly unexplained: number;
  /** How probable each kind of mistake is before it is read. */
  readonly expected: ByKind;
  /** The part of that which can be a group's habit. */
  readonly ofHabits: ByKind;
  /** Mistakes, by what they are called for the table, that its number would have shown. */
  readonly possible: ReadonlySet<string>;
  /** Those of them that can be a group's habit, with their share of all that may happen. */
  readonly habits: ReadonlyMap<string, number>;
  /** Mistakes, by what they are called for the table, that explain it better than a good reading does. */
  readonly points: readonly string[];
}

export function taken(table: StationTable, reading: WrittenReading, setup: number): TakenReading {
  const at = table.apparatus.setups[setup];
  if (at === undefined) throw new RangeError(`table ${table.mark} has no setup ${setup}`);
  const open = opened(reading, at.at);
  const none = {
    reading,
    setup,
    opened: open,
    causes: [],
    explanations: [],
    unexplained: 1,
    expected: NONE_EXPECTED,
    ofHabits: NONE_EXPECTED,
    points: [],
    possible: new Set<string>(),
    habits: new Map<string, number>(),
  };
  if (open.written === null) return none;
  const { written } = open;
  const causes = causesOfReading(table, setup, written);
  const explanations = plausible(
    causes.map((cause) => explanationOf(cause, written, at.at.setup, at)),
    at,
  );
  const unexplained = UNEXPLAINED_RATE * table.rateFactor * unexplainedLikelihood(written, at.at.setup);
  return {
    ...none,
    causes,
    explanations,
    unexplained,
    points: pointsTo(explanations, at.shared),
    ...expectedOf(causes, UNEXPLAINED_RATE * table.rateFactor),
    possible: new Set(causes.map(tableKeyOf)),
    habits: habitsAmong(causes, UNEXPLAINED_RATE * table.rateFactor),
  };
}

function habitsAmong(causes: readonly Cause[], unexplained: number): ReadonlyMap<string, number> {
  const all = causes.reduce((sum, { rate }) => sum + rate, unexplained);
  return new Map(causes.filter(isHabit).map((cause) => [tableKeyOf(cause), cause.rate / all]));
}

function expectedOf(causes: readonly Cause[], unexplained: number) {
  const sums = { good: 0, doing: 0, reading: 0 };
  const habits = { good: 0, doing: 0, reading: 0 };
  for (const cause of causes) {
    sums[cause.kind] += cause.rate;
    if (isHabit(cause)) habits[cause.kind] += cause.rate;
  }
  const all = sums.good + sums.doing + sums.reading + unexplained;
  return {
    expected: { doing: sums.doing / all, reading: sums.reading / all, unexplained: unexplained / all },
    ofHabits: { doing: habits.doing / all, reading: habits.reading / all, unexplained: 0 },
  };
}

const NONE_EXPECTED: ByKind = { doing: 0, reading: 0, unexplained: 0 };

/** Causes of a reading at a setup, with the rates that are assumed today. */
function causesOfReading(table: StationTable, setup: number, written: Written): readonly Cause[] {
  const at = table.apparatus.setups[setup]?.at;
  if (at === undefined) return [];
  const { rateFactor } = table;
  if (typeof written !== 'string')
    return causesOf(at.setup, written.unit, at.prediction, { rateFactor, number: written.number });
  const causes = causesOf(at.setup, ownUnit(at.setup), at.prediction, { rateFactor });
  return written === 'at the stop' ? causes : [...causes, ...offScaleCauses(at.setup, rateFactor)];
}

/** Farther than this from its figure, counted in the widest doubt that a hypothesis allows. */
const FAR = 4;
const WIDEST_SHARE = 0.25;

/** Without what no hypothesis could make probable; the good explanation always stays. */
export const plausible = (
  explanations: readonly Explanation[],
  { shared }: ApparatusAtSetup,
): readonly Explanation[] =>
  explanations.filter((each) => {
    if (each.kind === 'good') return true;
    if (each.fixed !== null) return each.fixed > 0;
    const middle = (each.low + each.high) / 2;
    if (each.beyond !== null)
      return likelihoodOf(each, 0, shared + (WIDEST_SHARE * each.high) ** 2, 1) > 0.01;
    const u = Math.sqrt(9 * shared * each.gain ** 2 + (WIDEST_SHARE * middle) ** 2 + 3 * each.noise);
    return Math.abs(each.value - middle) < (each.high - each.low) / 2 + FAR * u;
  });

/** A mistake is pointed to where it beats the good reading and comes near the best of all. */
const NEAR_THE_BEST = 0.1;

function pointsTo(explanations: readonly Explanation[], shared: number): readonly string[] {
  const seen = explanations.map((each) => likelihoodOf(each, 0, shared, 1));
  const best = Math.max(...seen);
  const good = seen[explanations.findIndex(({ kind }) => kind === 'good')] ?? 0;
  return explanations.flatMap(({ tableKey, kind }, n) =>
    kind !== 'good' && (seen[n] ?? 0) > good && (seen[n] ?? 0) >= NEAR_THE_BEST * best ? [tableKey] : [],
  );
}
