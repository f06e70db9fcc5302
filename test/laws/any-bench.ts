import fc from 'fast-check';
import { type BenchFit, benchFit } from '../../src/core/calibration/bench-fit.ts';
import { candidatesAt } from '../../src/core/calibration/candidate.ts';
import { setupWithKnowledge } from '../../src/core/calibration/knowledge.ts';
import { observationAt } from '../../src/core/calibration/observation.ts';
import { confusedPairs } from '../../src/core/calibration/told-apart.ts';
import type { Prepared } from '../../src/core/prepare.ts';
import { setupsOf } from '../../src/core/review.ts';
import { predict } from '../../src/core/setups/predict.ts';
import type { Prediction } from '../../src/core/setups/prediction.ts';

/** Bench readings of one table: at odds with each other, absurd, and insisted upon. */
export interface AnyBench {
  readonly readings: readonly {
    readonly at: number;
    readonly factor: number;
    readonly decided: 'use' | 'leave out' | null;
  }[];
}

export const anyBench: fc.Arbitrary<AnyBench> = fc.record({
  readings: fc.array(
    fc.record({
      at: fc.nat(2),
      factor: fc.constantFrom(1, 1, 1.02, 0.98, 0.5, 2, 10, 1e6, 0, -1),
      decided: fc.constantFrom(null, null, 'use', 'leave out'),
    }),
    { minLength: 1, maxLength: 8 },
  ),
});

export interface FittedBench {
  readonly fit: BenchFit;
  readonly confused: ReturnType<typeof confusedPairs>;
  readonly predictions: readonly Prediction[];
}

/** What such readings make of the table. */
export function fittedBench(prepared: Prepared, { readings }: AnyBench): FittedBench {
  const setups = setupsOf(prepared);
  const observations = readings.flatMap(({ at, factor, decided }, n) => {
    const here = setups[at % setups.length];
    const { read = null } = here?.prediction ?? {};
    return here === undefined || read === null
      ? []
      : [{ ...observationAt(here.setup, String(n), `day ${n % 2}`, (read.value || 1) * factor), decided }];
  });
  const fit = benchFit(observations);
  const known = setups.map(({ setup }) => setupWithKnowledge(setup, fit.knowledge));
  return {
    fit,
    confused: confusedPairs(fit, candidatesAt(setups, [])),
    predictions: known.map((setup) => predict(setup)),
  };
}
