import { graduationsOutward } from '../instruments/graduations.ts';
import { COVERAGE_95 } from '../uncertainty/measured.ts';
import type { ChangedStation } from './judgement.ts';
import type { StationTable, TakenReading } from './station-table.ts';
import type { LiveHypothesis, TableWeights } from './table-weights.ts';

/** From here on a changed station is believed, with what only looks like one: groups have the benefit. */
const BELIEVED = 0.5;
const LEAST_STATION = 0.3;

/**
 * The station as it probably stands for one reading: groups are judged against it. Where "the station has changed" and "the
 * card leads everybody there" can't be told apart, no group is asked for what may be the station's.
 */
export function changedStation(
  table: StationTable,
  weights: TableWeights,
  taken: TakenReading,
  n: number,
): ChangedStation | null {
  if (weights.live.every(({ hypothesis }) => hypothesis.change === null)) return null;
  const order = weights.groups.indexOf(taken.reading.group);
  const byKey = new Map<string, { station: number; all: number; best: LiveHypothesis }>();
  for (const live of weights.live) {
    const { change } = live.hypothesis;
    if (change === null || (change.setup !== null && change.setup !== taken.setup)) continue;
    const isStation = change.kind === 'station';
    if (isStation && order < change.from) continue;
    const sum = byKey.get(change.key) ?? { station: 0, all: 0, best: live };
    sum.all += live.probability;
    if (isStation) sum.station += live.probability;
    if (
      isStation &&
      (sum.best.hypothesis.change?.kind !== 'station' || live.probability > sum.best.probability)
    )
      sum.best = live;
    byKey.set(change.key, sum);
  }
  const found = [...byKey.values()].find(({ all, station }) => all > BELIEVED && station > LEAST_STATION);
  const read = found?.best.readings[n]?.explanations.find(({ ofStation }) => ofStation);
  if (found === undefined || read === undefined || read.fixed !== null) return null;
  const { belief } = found.best.weighed;
  const doubt = belief.spread[taken.setup]?.[taken.setup] ?? 0;
  const shift = (belief.mean[taken.setup] ?? 0) * read.gain;
  const half = COVERAGE_95 * Math.sqrt(read.gain ** 2 * doubt + read.noise);
  const at = table.apparatus.setups[taken.setup]?.at.setup;
  const marks = at?.marks ?? at?.scale?.graduations;
  const [low, high] = [read.low + shift - half, read.high + shift + half];
  return {
    code: read.code,
    ...(read.facts === undefined ? {} : { facts: read.facts }),
    probability: found.station,
    good: marks === undefined ? { from: low, to: high } : graduationsOutward(marks, low, high),
  };
}
