import type { Graduations } from '../../core/instruments/graduations.ts';

/** A graduation on the strip: where on paper, its value, and how long it is drawn. */
export interface StripMark {
  readonly at: number;
  readonly si: number;
  readonly rank: 'numbered' | 'middle' | 'plain';
}

/** Nearer than this two graduations run together in print, and numbers run into each other. */
const LEAST_BETWEEN_MARKS = 0.55;
const LEAST_BETWEEN_NUMBERS = 9;

/**
 * The graduations from one value to another along so many millimetres of paper: every one of the
 * instrument's where they can be told apart, else every second, fifth, tenth; numbers at round ones.
 */
export function stripMarks(
  {
    graduations,
    from,
    to,
  }: { readonly graduations: Graduations; readonly from: number; readonly to: number },
  length: number,
): readonly StripMark[] {
  const { step } = graduations;
  const between = (step / (to - from)) * length;
  const drawn = roundMultiple((multiple) => multiple * between >= LEAST_BETWEEN_MARKS, graduations);
  const numbered = roundMultiple(
    (multiple) => multiple * between >= LEAST_BETWEEN_NUMBERS && multiple % drawn === 0,
    graduations,
  );
  const middle = numbered % 2 === 0 && (numbered / 2) % drawn === 0 ? numbered / 2 : numbered;
  // A zero without a sign: the ceiling of a hair below nothing is -0.
  const first = Math.ceil(from / step / drawn - 1e-9) * drawn + 0;
  const last = Math.floor(to / step / drawn + 1e-9) * drawn;
  const marks: StripMark[] = [];
  for (let n = first; n <= last; n += drawn) {
    const si = n * step;
    const rank = n % numbered === 0 ? 'numbered' : n % middle === 0 ? 'middle' : 'plain';
    marks.push({ at: ((si - from) / (to - from)) * length, si, rank });
  }
  return marks;
}

/** The least number of steps that comes to a round value in the instrument's unit and does what is asked. */
function roundMultiple(isEnough: (multiple: number) => boolean, { step, unitSi }: Graduations): number {
  const inUnit = step / unitSi;
  if (isEnough(1) && isRound(inUnit)) return 1;
  for (let power = 10 ** Math.floor(Math.log10(inUnit)); power < inUnit * 1e7; power *= 10)
    for (const lead of [1, 2, 5]) {
      const multiple = (lead * power) / inUnit;
      const whole = Math.round(multiple);
      if (whole >= 1 && Math.abs(multiple - whole) < 1e-6 && isEnough(whole)) return whole;
    }
  return isEnough(1) ? 1 : 1e7;
}

const isRound = (value: number): boolean => {
  const lead = value / 10 ** Math.floor(Math.log10(value) + 1e-9);
  return [1, 2, 2.5, 5].some((each) => Math.abs(lead - each) < 1e-6);
};
