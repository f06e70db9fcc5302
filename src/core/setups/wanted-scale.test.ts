import { describe, expect, it } from 'vitest';
import { leverStation } from '../../../test/stations/lever.ts';
import { scaleOf, setupOf } from '../../../test/stations/setup.ts';
import { lever } from '../machines/lever/index.ts';
import { roundedDown, wantedScale } from './wanted-scale.ts';

describe('the scale that would do', () => {
  it('shows the pull on five graduations, and reaches past it', () => {
    // 1.96133 N x 0.02/0.4 = 0.098067 N: a fifth is 0.0196 N, so 0.01 N; and 0.098067/0.8 = 0.12258 N.
    const wanted = wantedScale(setupOf(lever, leverStation({ load: 0.02, pull: 0.4 })));
    expect(wanted?.graduation).toBe(0.01);
    expect(wanted?.range).toBeCloseTo(0.12258, 5);
  });

  it('is none where nothing is pulled', () => {
    const said = { watched: 'ease', scale: scaleOf() } as const;
    expect(wantedScale(setupOf(lever, leverStation({ load: 0.02, pull: 0.4 }), said))).toBeNull();
  });

  it.each([
    [0.0499, 0.02],
    [0.05, 0.05],
    [0.999, 0.5],
    [1, 1],
    [23, 20],
  ])('has steps of one, two and five: %d comes to %d', (value, step) => {
    expect(roundedDown(value)).toBe(step);
  });
});
