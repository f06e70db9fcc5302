import type { Cause } from './causes.ts';
import { explanationsUnder } from './changed-table.ts';
import { type Explanation, tableKeyOf } from './explanation.ts';
import { causesOfReading, type StationTable, type TakenReading } from './station-table.ts';
import { priorOf, type Suspect, type TableHypothesis, tableHypotheses } from './table-hypothesis.ts';
import { evidenceOf, type Weighable, type Weighed, weigh } from './weighing.ts';

/** A table's readings, weighed under every hypothesis that is not hopeless. */
export interface TableWeights {
  readonly readings: readonly TakenReading[];
  /** Those of them that are weighed. */
  readonly numbers: readonly TakenReading[];
  /** Groups in the order in which they came. */
  readonly groups: readonly string[];
  readonly live: readonly LiveHypothesis[];
}

export interface LiveHypothesis {
  readonly hypothesis: TableHypothesis;
  readonly probability: number;
  readonly readings: readonly Weighable[];
  readonly weighed: Weighed;
}

/** Less probable than this, a hypothesis changes nothing that is said. */
const HOPELESS = 0.003;
/** More mistakes than this are not held to be everybody's. */
const MOST_SUSPECTS = 3;

export function tableWeights(table: StationTable, readings: readonly TakenReading[]): TableWeights {
  const groups = [...new Set(readings.map(({ reading }) => reading.group))];
  const numbers = readings.filter(({ opened }) => opened.written !== null);
  if (numbers.length === 0) return { readings, numbers, groups, live: [] };
  const priors = new Map<string, readonly (readonly number[])[]>();
  const under = new Map<string, readonly Explanation[]>();
  const seen = tableHypotheses(suspectsOf(table, numbers), groups.length).map((hypothesis) => {
    const { apparatus, change, noisier } = hypothesis;
    const prior = priors.get(apparatus) ?? priorOf(table.apparatus, apparatus);
    priors.set(apparatus, prior);
    const weighable = numbers.map((taken, n): Weighable => {
      const { setup, unexplained } = taken;
      if (change === null) return { setup, unexplained, explanations: taken.explanations };
      const order = groups.indexOf(taken.reading.group);
      const isHit = order >= change.from && (change.setup === null || change.setup === setup);
      const key = isHit ? `${n} ${change.kind} ${change.key}` : '';
      const explanations =
        key === '' ? taken.explanations : (under.get(key) ?? explanationsUnder(table, taken, change, order));
      if (key !== '') under.set(key, explanations);
      return { setup, unexplained, explanations };
    });
    const { evidence } = evidenceOf(weighable, prior, noisier);
    return { hypothesis, readings: weighable, prior, score: evidence + Math.log(hypothesis.prior) };
  });
  const best = Math.max(...seen.map(({ score }) => score));
  const kept = seen.filter(({ score }) => Math.exp(score - best) > HOPELESS);
  const total = kept.reduce((sum, { score }) => sum + Math.exp(score - best), 0);
  return {
    readings,
    numbers,
    groups,
    live: kept.map(({ hypothesis, readings: weighable, prior, score }) => ({
      hypothesis,
      probability: Math.exp(score - best) / total,
      readings: weighable,
      weighed: weigh(weighable, prior, hypothesis.noisier),
    })),
  };
}

/** Mistakes that the readings of at least two groups point to, the most often pointed to first. */
function suspectsOf(table: StationTable, readings: readonly TakenReading[]): readonly Suspect[] {
  const found = new Map<string, Map<number, Set<string>>>();
  for (const { points, setup, reading } of readings)
    for (const key of points) {
      const at = found.get(key) ?? new Map<number, Set<string>>();
      at.set(setup, (at.get(setup) ?? new Set<string>()).add(reading.group));
      found.set(key, at);
    }
  const several = [...found].filter(
    ([, at]) => new Set([...at.values()].flatMap((each) => [...each])).size >= 2,
  );
  if (several.length === 0) return [];
  const rates = ratesOf(table, readings);
  const all = [...rates.values()].reduce((sum, { rate }) => sum + rate, 0);
  return several
    .map(([key, at]) => ({
      key,
      count: [...at.values()].reduce((sum, groups) => sum + groups.size, 0),
      setups: [...at].flatMap(([setup, groups]) => (groups.size >= 2 ? [setup] : [])),
      share: (rates.get(key)?.rate ?? 0) / all,
      stays: rates.get(key)?.stays ?? false,
    }))
    .sort((a, b) => b.count - a.count || b.share - a.share || (a.key < b.key ? -1 : 1))
    .slice(0, MOST_SUSPECTS);
}

/** Base rates of the mistakes that can be made at the setups of these readings. */
function ratesOf(table: StationTable, readings: readonly TakenReading[]) {
  const rates = new Map<string, { readonly rate: number; readonly stays: boolean }>();
  const seen = new Set<number>();
  for (const { setup, opened } of readings) {
    if (seen.has(setup) || opened.written === null) continue;
    seen.add(setup);
    for (const cause of causesOfReading(table, setup, opened.written))
      if (cause.kind !== 'good') rates.set(tableKeyOf(cause), { rate: cause.rate, stays: stays(cause) });
  }
  return rates;
}

/** What a group can leave behind: weights, pins, line, the zero of a scale, two setups in each other's place. */
const stays = ({ code, persists }: Cause): boolean =>
  persists === 'station' || code.startsWith('scale.zero-') || code === 'setup.swapped';
