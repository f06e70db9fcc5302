import { isNotDefined, notDefined } from '../description/not-defined.ts';
import { standardUncertainty } from '../uncertainty/measured.ts';
import { atBest, propagate } from '../uncertainty/propagate.ts';
import { budgetOf, narrowingOf, without } from './budget.ts';
import { asRead, goodRange } from './good-range.ts';
import { onlyOutcome, type Reading } from './predict-scale.ts';
import { inputsOf } from './pull.ts';
import type { Setup } from './setup.ts';

/** What is counted (turns) or measured along (travel), where the machine has such a thing. */
export function predictTally(setup: Setup): Reading {
  const { machine, station, marks } = setup;
  if (machine.tally === undefined || marks === null) return onlyOutcome(notDefined('setup.nothing-to-count'));
  const best = machine.tally(station, atBest);
  if (isNotDefined(best)) return onlyOutcome(best);
  const shown = propagate((at) => {
    const tally = machine.tally?.(station, at);
    return tally === undefined || isNotDefined(tally) ? null : tally.value;
  }, inputsOf(setup));
  if (shown === null) return onlyOutcome(notDefined('setup.nothing-to-count'));
  // A count is not scattered by the hand, a length is read like any other scale.
  const read = asRead(shown, marks, 0);
  const range = (value: typeof read) => goodRange(value, marks, 0, Number.MAX_VALUE);
  const good = range(read);
  const budget = budgetOf(read);
  return {
    outcome: { kind: 'reading', expected: shown.value, u: standardUncertainty(read), good },
    read,
    shown,
    lower: null,
    budget,
    narrows: narrowingOf(budget, good, (unknown) => range(without(read, unknown))),
  };
}
