import type { Setup } from '../setups/setup.ts';
import type { Cause } from './causes.ts';
import { doingMistakes } from './doing-mistakes.ts';
import { outcomeAt } from './outcome-at.ts';

const known = new WeakMap<Setup, readonly Cause[]>();

/** What a figure beyond the marks is held to, as a share of itself: it was never printed, and is hardly known. */
const DOUBT = 0.1;

/**
 * Mistakes that take the pointer beyond the last mark: they explain "off the scale" and no number. The
 * figure is where it would stand if the scale went on.
 */
export function offScaleCauses(setup: Setup, rateFactor: number): readonly Cause[] {
  const found = known.get(setup) ?? beyond(setup);
  known.set(setup, found);
  return rateFactor === 1 ? found : found.map((cause) => ({ ...cause, rate: cause.rate * rateFactor }));
}

const beyond = (setup: Setup): readonly Cause[] =>
  setup.watched !== 'pull'
    ? []
    : doingMistakes(setup).flatMap(({ code, rate, persists, facts, changed }): readonly Cause[] => {
        const outcome = outcomeAt(changed);
        if (outcome.kind !== 'off the scale') return [];
        const { wouldShow } = outcome;
        const figure = { low: wouldShow, high: wouldShow, u: DOUBT * wouldShow };
        return [
          {
            code,
            kind: 'doing',
            rate,
            persists,
            figure,
            unit: null,
            ...(facts === undefined ? {} : { facts }),
          },
        ];
      });
