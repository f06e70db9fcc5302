import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyLeverSetup, leverSetup } from '../../../test/stations/lever-setups.ts';
import { recompute } from '../../../test/stations/working.ts';
import { predict } from './predict.ts';

const lines = (said: Parameters<typeof leverSetup>[0]) => predict(leverSetup(said)).working();
/** A line that rounds to a graduation may fall on the next one from rounded figures. */
const isRounded = (formula: string): boolean => /floor|ceil/.test(formula);

describe('the working of a setup', () => {
  it('gives every printed figure again from the numbers beside it', () => {
    fc.assert(
      fc.property(anyLeverSetup, (said) => {
        for (const line of lines(said)) {
          const off = Math.abs(recompute(line) - line.value);
          expect(off, `${line.what}: ${line.formula}`).toBeLessThanOrEqual(
            1e-9 * Math.max(1, Math.abs(line.value)),
          );
        }
      }),
      { seed: 30, numRuns: 200 },
    );
  });

  it('gives it again from six digits, to a hundredth of a percent of its largest term', () => {
    fc.assert(
      fc.property(anyLeverSetup, (said) => {
        for (const line of lines(said)) {
          if (isRounded(line.formula)) continue;
          const largest = Math.max(Math.abs(line.value), ...Object.values(line.values).map(Math.abs), 1e-3);
          expect(Math.abs(recompute(line, 6) - line.value), line.what).toBeLessThanOrEqual(1e-4 * largest);
        }
      }),
      { seed: 31, numRuns: 200 },
    );
  });

  it('names a source on every line', () => {
    const [said] = fc.sample(anyLeverSetup, { seed: 32, numRuns: 1 });
    if (said === undefined) throw new Error('no setup');
    const all = lines(said);
    expect(all.length).toBeGreaterThan(8);
    for (const line of all) expect(line.source, line.what).not.toBe('');
  });
});
