import { predictScale } from '../setups/predict-scale.ts';
import { predictTally } from '../setups/predict-tally.ts';
import type { Outcome } from '../setups/prediction.ts';
import type { Setup } from '../setups/setup.ts';

/**
 * Kept with the setup, which never changes: a mistake leads to the same setup for causes, for what lies beyond
 * the marks, and for the test that tells it from another.
 */
const known = new WeakMap<Setup, Outcome>();

/** What is read at a setup, before any arrival reading. */
export function outcomeAt(setup: Setup): Outcome {
  const before = known.get(setup);
  if (before !== undefined) return before;
  const { outcome } = (setup.watched === 'pull' ? predictScale : predictTally)(setup);
  known.set(setup, outcome);
  return outcome;
}
