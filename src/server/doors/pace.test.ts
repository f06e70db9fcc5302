import { describe, expect, it } from 'vitest';
import { pace } from './pace.ts';

describe('how fast one asker may come', () => {
  it('is so many at once, and then so many a second', () => {
    const { take } = pace({ atOnce: 3, perSecond: 2 });
    expect([1, 2, 3, 4].map(() => take('a', 0))).toEqual([0, 0, 0, 500]);
    expect([500, 500, 1000].map((now) => take('a', now))).toEqual([0, 500, 0]);
  });

  it('is counted for each asker, and a clock that goes back gives nothing away', () => {
    const { take } = pace({ atOnce: 1, perSecond: 1 });
    expect([take('a', 5000), take('b', 5000), take('a', 0)]).toEqual([0, 0, 1000]);
  });

  it('is kept of no more askers than fit, however many come', () => {
    const { take } = pace({ atOnce: 1, perSecond: 1 });
    for (let n = 0; n < 20_000; n += 1) take(`a${n}`, n / 10);
    expect(take('a19999', 2000)).toBeGreaterThan(0);
  });
});
