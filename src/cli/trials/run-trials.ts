import { prepare } from '../../core/prepare.ts';
import { setupNamed } from '../../core/review.ts';
import { byTrialsOrLinear } from '../../core/setups/predict-by-trials.ts';
import type { TrialsJob, TrialsTold } from './trials-job.ts';

/** Trials of some setups one after the other, in a thread of their own. */
export function runTrials({ files, marks, seed }: TrialsJob, tell: (told: TrialsTold) => void): void {
  const prepared = prepare(files);
  const ranges = marks.flatMap((mark, n) => {
    const found = setupNamed(prepared, mark);
    if (found === null) return [];
    tell({ setup: mark, number: n + 1, of: marks.length });
    return [{ setup: mark, range: byTrialsOrLinear(found.setup, found.prediction, { seed, always: true }) }];
  });
  tell({ ranges });
}
