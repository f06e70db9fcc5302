import { explanationsUnder, LED } from './changed-table.ts';
import { type Evidence, evidenceOf } from './evidence.ts';
import type { Explanation } from './explanation.ts';
import type { StationTable, TakenReading } from './station-table.ts';
import { suspectsOf } from './suspect-mistakes.ts';
import {
  hypothesesOf,
  type PossibleChange,
  possibleChanges,
  priorOf,
  type TableHypothesis,
} from './table-hypothesis.ts';
import { likelyAlone, type Weighable } from './weighable.ts';
import { type Weighed, weigh } from './weighing.ts';

/** A table's readings, weighed under every hypothesis that is not hopeless. */
export interface TableWeights {
  readonly readings: readonly TakenReading[];
  /** Those of them that are weighed. */
  readonly numbers: readonly TakenReading[];
  /** Groups in the order in which they came. */
  readonly groups: readonly string[];
  readonly live: readonly LiveHypothesis[];
  /** Evidence of every hypothesis that was weighed, by its name: one more reading goes on from there. */
  readonly evidence: ReadonlyMap<string, Evidence>;
}

export interface LiveHypothesis {
  readonly hypothesis: TableHypothesis;
  readonly probability: number;
  readonly readings: readonly Weighable[];
  readonly weighed: Weighed;
}

/** Less probable than this, a hypothesis changes nothing that is said. */
const HOPELESS = 0.01;

/** Weighs a table's readings; `before`: the same table with fewer of them. */
export function tableWeights(
  table: StationTable,
  readings: readonly TakenReading[],
  before?: TableWeights,
): TableWeights {
  const groups = [...new Set(readings.map(({ reading }) => reading.group))];
  const numbers = readings.filter(({ opened }) => opened.written !== null);
  if (numbers.length === 0) return { readings, numbers, groups, live: [], evidence: new Map() };
  const priors = new Map<string, readonly (readonly number[])[]>();
  const evidence = new Map<string, Evidence>();
  const weighed = (weighable: readonly Weighable[], hypothesis: TableHypothesis): Seen => {
    const { apparatus, noisier } = hypothesis;
    const prior = priors.get(apparatus) ?? priorOf(table.apparatus, apparatus);
    priors.set(apparatus, prior);
    const name = nameOf(hypothesis);
    const found = evidenceOf(weighable, prior, noisier, before?.evidence.get(name));
    evidence.set(name, found);
    return { hypothesis, evidence: found, prior, score: found.logarithm + Math.log(hypothesis.prior) };
  };
  const seen: Seen[] = [];
  let highest = Number.NEGATIVE_INFINITY;
  for (const { possible, weighable } of screened(table, numbers, groups)) {
    // A change that is hopeless with a kit as its file says is so with any other.
    for (const [n, hypothesis] of hypothesesOf(possible).entries()) {
      const found = weighed(weighable, hypothesis);
      if (possible.change !== null && n === 0 && found.score < highest - FAR_BEHIND) break;
      seen.push(found);
      highest = Math.max(highest, found.score);
    }
  }
  const best = Math.max(...seen.map(({ score }) => score));
  const kept = seen.filter(({ score }) => Math.exp(score - best) > HOPELESS);
  const total = kept.reduce((sum, { score }) => sum + Math.exp(score - best), 0);
  return {
    readings,
    numbers,
    groups,
    evidence,
    live: kept.map(({ hypothesis, evidence: found, prior, score }) => ({
      hypothesis,
      probability: Math.exp(score - best) / total,
      readings: found.readings,
      weighed: weigh(found, prior, hypothesis.noisier),
    })),
  };
}

const nameOf = ({ apparatus, noisier, change }: TableHypothesis): string =>
  change === null
    ? `${apparatus}\n${noisier}`
    : `${apparatus}\n${noisier}\n${change.kind}\n${change.key}\n${change.setup}\n${change.from}`;

interface Seen {
  readonly hypothesis: TableHypothesis;
  readonly evidence: Evidence;
  readonly prior: readonly (readonly number[])[];
  readonly score: number;
}

interface Screened {
  readonly possible: PossibleChange;
  readonly weighable: readonly Weighable[];
}

/** As many changes are weighed in full; of the rest a rough look has shown that they are far behind. */
const MOST_CHANGES = 5;
/** So far behind (as a logarithm) the best of them, or behind no change at all, a change is not weighed. */
const FAR_BEHIND = 8;

/** Kept with what may have happened at a reading: every further reading of the table asks for the same again. */
const knownRough = new WeakMap<readonly Explanation[], number>();

/**
 * Changes worth weighing: each reading is looked at by itself, with the apparatus anywhere that it may be, and
 * what explains the readings best in this rough way is weighed with all of them together.
 */
function screened(
  table: StationTable,
  numbers: readonly TakenReading[],
  groups: readonly string[],
): readonly Screened[] {
  const plain = numbers.map(
    ({ setup, unexplained, explanations, reading }): Weighable => ({
      setup,
      unexplained,
      explanations,
      group: reading.group,
      led: null,
    }),
  );
  const [none, ...changes] = possibleChanges(suspectsOf(numbers), groups.length);
  const whole: readonly Screened[] = none === undefined ? [] : [{ possible: none, weighable: plain }];
  if (changes.length === 0) return whole;
  const orders = numbers.map(({ reading }) => groups.indexOf(reading.group));
  const rough = (reading: Weighable): number => {
    const known = knownRough.get(reading.explanations);
    if (known !== undefined) return known;
    const found = Math.log(likelyAlone(reading, table.apparatus.setups[reading.setup]));
    knownRough.set(reading.explanations, found);
    return found;
  };
  const roughPlain = plain.map(rough);
  // What a change makes of a reading does not hang on which group came first.
  const under = new Map<string, readonly { readonly reading: Weighable; readonly rough: number }[]>();
  const found = changes.flatMap((possible) => {
    const { change } = possible;
    if (change === null) return [];
    const name = `${change.kind}\n${change.key}`;
    const made =
      under.get(name) ??
      numbers.map((taken) => {
        const explanations = explanationsUnder(table, taken, change.kind, change.key);
        const { setup, unexplained } = taken;
        // A setup that knows no such mistake leads nobody.
        const led = explanations === taken.explanations ? null : LED[change.kind];
        const reading = { setup, unexplained, explanations, group: taken.reading.group, led };
        return { reading, rough: rough(reading) };
      });
    under.set(name, made);
    const isHit = (n: number): boolean =>
      (orders[n] ?? 0) >= change.from && (change.setup === null || change.setup === plain[n]?.setup);
    const score = made.reduce(
      (sum, each, n) => sum + (isHit(n) ? each.rough : (roughPlain[n] ?? 0)),
      Math.log(possible.prior),
    );
    const weighable = () => plain.map((each, n) => (isHit(n) ? (made[n]?.reading ?? each) : each));
    return [{ possible, score, weighable }];
  });
  found.sort((a, b) => b.score - a.score);
  const best = roughPlain.reduce((sum, each) => sum + each, 0);
  const least = Math.max(best, found[0]?.score ?? best) - FAR_BEHIND;
  return [
    ...whole,
    ...found
      .filter(({ score }) => score > least)
      .slice(0, MOST_CHANGES)
      .map(({ possible, weighable }) => ({ possible, weighable: weighable() })),
  ];
}
