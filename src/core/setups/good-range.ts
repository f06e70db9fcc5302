import { type Graduations, graduationsOutward } from '../instruments/graduations.ts';
import { handScatter } from '../sources/scales.ts';
import { COVERAGE_95, type Measured, measured, plus, standardUncertainty } from '../uncertainty/measured.ts';
import type { GoodRange } from './prediction.ts';

/** What a careful group adds to a figure: its hand's scatter and the rounding to a graduation. */
export function asRead(shown: Measured, marks: Graduations, scatter: number): Measured {
  return plus(
    shown,
    measured(0, {
      id: 'reading/hand scatter',
      u: scatter * Math.abs(shown.value),
      shape: 'normal',
      origin: 'assumed',
      source: handScatter.source,
    }),
    measured(0, {
      id: 'reading/graduation',
      u: marks.step / Math.sqrt(12),
      shape: 'even',
      origin: 'stated',
      source: 'rounding to a graduation (JCGM 100, F.2.2.1)',
    }),
  );
}

/**
 * The good range of one figure: 19 of 20 careful readings, in whole graduations outward, cut at the
 * stop and at the end of the scale.
 */
export const goodRange = (read: Measured, marks: Graduations, least: number, most: number): GoodRange =>
  goodBand(read, read, marks, least, most);

/** The same for a band: each end is widened by what a careful reading at that end may differ. */
export function goodBand(
  lower: Measured,
  upper: Measured,
  marks: Graduations,
  least: number,
  most: number,
): GoodRange {
  const { from, to } = graduationsOutward(
    marks,
    lower.value - COVERAGE_95 * standardUncertainty(lower),
    upper.value + COVERAGE_95 * standardUncertainty(upper),
  );
  // Both ends are held to the marks: a scale that moves the machine may weigh more than it can show.
  const onTheMarks = (figure: number): number => Math.min(Math.max(figure, least), most);
  return { from: onTheMarks(from), to: onTheMarks(to) };
}
