import { readFileSync } from 'node:fs';

/** ln of a coming stay by prior and likelihood summed over a grid; `times-from-visits.py` writes it. */
interface VisitTimesCase {
  readonly name: string;
  readonly value: number;
  readonly u: number;
  readonly past: readonly (readonly [date: string, seconds: number])[];
  readonly shares: readonly number[];
  readonly quantiles: readonly number[];
}

export const visitTimes = (
  JSON.parse(readFileSync(new URL('./times-from-visits.json', import.meta.url), 'utf8')) as {
    readonly cases: readonly VisitTimesCase[];
  }
).cases;
