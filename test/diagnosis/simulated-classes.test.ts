import { describe, expect, it } from 'vitest';
import { fewest, most } from '../../bench/diagnosis/binomial.mjs';
import { drawClass } from '../../bench/diagnosis/classes.mjs';
import { judgeClass } from '../../bench/diagnosis/judging.mjs';
import { chanceFrom } from '../../bench/diagnosis/mersenne.mjs';
import { add, newScore } from '../../bench/diagnosis/score.mjs';
import { prepare } from '../../src/core/prepare.ts';
import { review } from '../../src/core/review.ts';

const CLASSES = 40;
/** A count that the goal alone would lead to less often than this is a fault. */
const RARE = 0.01;

interface Bin {
  readonly all: number;
  readonly right: number;
  readonly said: number;
}

// The whole measurement is `npm run bench -- diagnosis`; the goals here are the same, and only what
// chance can do to a small sample is allowed. Readings of one class hang together, so that the binomial
// law is somewhat too strict: the seed is fixed.
describe('simulated classes of another make', () => {
  const score = newScore();
  for (let n = 0; n < CLASSES; n += 1)
    add(score, judgeClass({ prepare, review }, drawClass(chanceFrom(40_000 + n)), { rateFactor: 1 }));
  const { clear, honest, held, bins } = score;

  it('have enough of each to tell anything', () => {
    expect(clear.all).toBeGreaterThan(100);
    expect(honest.all).toBeGreaterThan(2000);
    expect(held.all).toBeGreaterThan(100);
  });

  it('have their clear mistakes flagged in 95 of 100, and the true cause among the first two in 90', () => {
    expect(clear.flagged).toBeGreaterThanOrEqual(fewest(clear.all, 0.95, RARE));
    expect(clear.firstTwo).toBeGreaterThanOrEqual(fewest(clear.all, 0.9, RARE));
  });

  it('are not asked to look again at more than 2 of 100 honest readings, also where it is held still', () => {
    expect(honest.of).toBeLessThanOrEqual(most(honest.all, 0.02, RARE));
    expect(held.of).toBeLessThanOrEqual(most(held.all, 0.02, RARE));
  });

  // Below nine tenths a small sample has too few readings, and they hang together by class: the whole
  // table of what is said against what is right is the bench's.
  it('have the first cause right about as often as is said, where that is nearly always', () => {
    const { all, right, said } = (bins as Bin[])[9] ?? { all: 0, right: 0, said: 0 };
    expect(all).toBeGreaterThan(1000);
    const share = said / all;
    expect(share - 0.05).toBeGreaterThan(0.8);
    expect(right).toBeGreaterThanOrEqual(fewest(all, share - 0.05, RARE));
  });
});
