import type { Graduations } from '../instruments/graduations.ts';
import { nearestGraduation } from '../instruments/graduations.ts';
import type { GoodRange, Prediction } from '../setups/prediction.ts';
import type { Setup } from '../setups/setup.ts';
import { type Cause, causesOf } from './causes.ts';
import { ownUnit } from './judgement.ts';

/**
 * A number that gives its cause away: who writes about this at this setup has most likely done that.
 * Several causes that lead to the same figure stand together, the likeliest first.
 */
export interface TellingFigure {
  readonly codes: readonly string[];
  /** How often each of them happens, an assumption. */
  readonly rates: readonly number[];
  /** The rates of its causes together. */
  readonly rate: number;
  /** Number as it would be written without a unit; `null` where the pointer rests on its stop. */
  readonly number: number | null;
  /** Marks that the number is rounded to: the scale's own, its other column, or those of the other unit. */
  readonly marks: Graduations;
}

/** Rarer causes, one weight of many, only stand in the way of likelier ones: common practice, no source. */
const WORTH_TELLING = 0.004;
/** Its figure is the partner's own, which stands in the key beside this one. */
const SWAPPED = 'setup.swapped';

/**
 * The figures of the likely causes that lie outside the good range, likeliest first. Causes within a
 * graduation of each other, or closer than a reading can tell apart, share one figure. A number in
 * another unit is listed only where the instrument has a column in that unit.
 */
export function tellingFigures(setup: Setup, prediction: Prediction): readonly TellingFigure[] {
  const good = 'good' in prediction.outcome ? prediction.outcome.good : null;
  if (good === null) return [];
  const own = setup.marks ?? setup.scale?.graduations;
  if (own === undefined) return [];
  const found = causesOf(setup, ownUnit(setup))
    .filter(({ code, rate }) => rate >= WORTH_TELLING && code !== SWAPPED)
    .flatMap((cause) => figureOfCause(cause, setup, own, good));
  const clusters: Seen[][] = [];
  for (const each of [...found].sort((a, b) => b.rate - a.rate)) {
    const near = clusters.find(([first]) => first !== undefined && isAlike(first, each));
    if (near === undefined) clusters.push([each]);
    else near.push(each);
  }
  return clusters
    .flatMap((cluster): readonly TellingFigure[] => {
      const [first] = cluster;
      if (first === undefined) return [];
      return [
        {
          codes: cluster.map(({ code }) => code),
          rates: cluster.map(({ rate }) => rate),
          rate: cluster.reduce((sum, { rate }) => sum + rate, 0),
          number: first.number,
          marks: first.marks,
        },
      ];
    })
    .sort((a, b) => b.rate - a.rate);
}

interface Seen {
  readonly code: string;
  readonly rate: number;
  readonly number: number | null;
  /** How near another figure can't be told from this one, in the same number. */
  readonly blur: number;
  readonly marks: Graduations;
}

function figureOfCause(cause: Cause, setup: Setup, own: Graduations, good: GoodRange): readonly Seen[] {
  if (cause.kind === 'good') return [];
  const { code, rate, figure } = cause;
  if (figure === null) return [{ code, rate, number: null, blur: 0, marks: own }];
  const marks = cause.unit === null ? own : columnOf(setup, cause.unit.si);
  if (marks === null) return [];
  const middle = nearestGraduation(marks, (figure.low + figure.high) / 2);
  const number = middle / marks.unitSi;
  // What is written is read against the good range in the scale's own unit, as a bare number is.
  const [from, to] = [good.from / own.unitSi, good.to / own.unitSi];
  const slack = (0.5 * marks.step) / marks.unitSi;
  if (number > from - slack && number < to + slack) return [];
  return [{ code, rate, number, blur: Math.max(marks.step, figure.u) / marks.unitSi, marks }];
}

/** A column of marks in that unit, where the scale has one; a ruler has millimetres and centimetres. */
function columnOf(setup: Setup, unitSi: number): Graduations | null {
  const near = (marks: Graduations | null): boolean =>
    marks !== null && Math.abs(marks.unitSi / unitSi - 1) < 1e-9;
  if (setup.scale !== null && setup.watched === 'pull')
    return [setup.scale.graduations, setup.scale.other].find(near) ?? null;
  if (setup.watched === 'travel' && Math.abs(unitSi / 0.01 - 1) < 1e-9 && setup.marks?.unit === 'mm')
    return { step: setup.marks.step, unit: 'cm', unitSi };
  return null;
}

const isAlike = (a: Seen, b: Seen): boolean =>
  a.number === null || b.number === null
    ? a.number === b.number
    : Math.abs(a.number - b.number) <= Math.max(a.blur, b.blur) * 1.001;
