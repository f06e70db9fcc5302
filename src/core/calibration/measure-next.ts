import type { Predicted } from '../setups/difference.ts';
import type { GoodRange } from '../setups/prediction.ts';
import { COVERAGE_95, type Measured, standardUncertainty } from '../uncertainty/measured.ts';
import type { Candidate, Measurement } from './candidate.ts';
import { persistentOf } from './persistence.ts';
import { rangeOf } from './rekey.ts';

/** A measurement with what it would make of the good ranges of a table. */
export interface NextMeasurement {
  readonly measurement: Measurement;
  readonly setups: readonly NarrowedSetup[];
  /** By how many graduations all good ranges of the table together get narrower. */
  readonly narrows: number;
}

export interface NarrowedSetup {
  readonly setup: string;
  readonly before: GoodRange;
  readonly after: GoodRange;
  /** Standard uncertainty of a reading, SI. */
  readonly uBefore: number;
  readonly uAfter: number;
}

/** Three readings take thrice the time: they must narrow more than one by this share of it. */
const WORTH_REPEATING = 1.25;
/** Together less than half a graduation: nobody would see it. */
const WORTH_MEASURING = 0.5;

/**
 * The one short measurement that narrows the good ranges of a table most, and the ranges that then follow;
 * `null` where none narrows them by half a graduation.
 *
 *     u after = root(u^2 - C^2 / V),   C covariance with the measurement, V its variance
 *
 * Linear law of JCGM 100 (5.2) with Bayes for normal unknowns: how far the ranges narrow does not depend
 * on what will be read. Ranges after are told about the reading that is expected.
 */
export function measureNext(
  table: readonly Predicted[],
  candidates: readonly Candidate[],
): NextMeasurement | null {
  const ranked = candidates
    .flatMap((candidate) => {
      const found = narrowedBy(table, candidate);
      return found === null ? [] : [found];
    })
    .sort((a, b) => worthOf(b) - worthOf(a));
  const [best] = ranked;
  return best === undefined || best.narrows < WORTH_MEASURING ? null : best;
}

const worthOf = ({ measurement, narrows }: NextMeasurement): number =>
  measurement.kind === 'reading' && measurement.times > 1 ? narrows / WORTH_REPEATING : narrows;

/** What one measurement would do; `null` where it has no figure. */
export function narrowedBy(table: readonly Predicted[], candidate: Candidate): NextMeasurement | null {
  const figure = candidate.law.figureAt(new Map());
  if (figure === null) return null;
  const told = toldBy(figure, candidate);
  const setups = table.flatMap((at): readonly (NarrowedSetup & { readonly step: number })[] => {
    const { read, lower, graduations } = at.prediction;
    if (read === null || graduations === null) return [];
    const before = rangeOf(at.setup, lower ?? read, read);
    const upper = narrowed(read, told);
    const after = rangeOf(at.setup, lower === null ? upper : narrowed(lower, told), upper);
    return [
      {
        setup: at.setup.mark,
        before,
        after,
        uBefore: standardUncertainty(read),
        uAfter: standardUncertainty(upper),
        step: graduations.step,
      },
    ];
  });
  const narrows = setups.reduce(
    (sum, { uBefore, uAfter, step }) => sum + (2 * COVERAGE_95 * (uBefore - uAfter)) / step,
    0,
  );
  return { measurement: candidate.measurement, setups: setups.map(({ step: _, ...rest }) => rest), narrows };
}

interface Told {
  readonly slopes: ReadonlyMap<string, number>;
  readonly variance: number;
}

/** What a measurement tells of the apparatus, and its whole variance, repeated as often as it says. */
function toldBy(figure: Measured, { law, measurement }: Candidate): Told {
  const { parts, scatter } = persistentOf(figure, { setting: law.setting, date: '' }, 0);
  const times = measurement.kind === 'reading' ? measurement.times : 1;
  const own = scatter.reduce((sum, { part }) => {
    const variance = (part.slope * part.unknown.u) ** 2;
    return sum + (part.unknown.id.startsWith('reading/') ? variance / times : variance);
  }, 0);
  return {
    slopes: new Map(parts.map(({ unknown, slope }) => [unknown.id, slope])),
    variance: own + parts.reduce((sum, { unknown, slope }) => sum + (slope * unknown.u) ** 2, 0),
  };
}

/** The figure at its value, its doubt what is left once the measurement is known. */
function narrowed(read: Measured, told: Told): Measured {
  const variance = standardUncertainty(read) ** 2;
  const shared = read.parts.reduce(
    (sum, { unknown, slope }) => sum + slope * (told.slopes.get(unknown.id) ?? 0) * unknown.u ** 2,
    0,
  );
  if (told.variance === 0 || shared === 0) return read;
  const u = Math.sqrt(Math.max(0, variance - shared ** 2 / told.variance));
  return {
    value: read.value,
    parts: [{ unknown: { id: 'reading/after', u, shape: 'normal', origin: 'stated' }, slope: 1 }],
  };
}
