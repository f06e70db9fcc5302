import { describe, expect, it } from 'vitest';
import { leverStation } from '../../../../test/stations/lever.ts';
import { mistakes } from './mistakes.ts';
import type { Lever } from './station.ts';

const holes = Array.from({ length: 11 }, (_, n) => 0.05 + 0.05 * n);
/** Load in hole 3, pin in hole 5, pull in hole 11, counted from the left. */
const station = leverStation({ load: 0.15, fulcrum: 0.25, pull: 0.55, holes });

function changedBy(code: string, lever: Lever = station): Lever | null {
  const mistake = mistakes.find((each) => each.code === code);
  if (mistake === undefined) throw new Error(`no ${code}`);
  return mistake.change(lever);
}

describe('a mistake at the lever', () => {
  it.each([
    ['lever.load-hole-left', 'load', 2],
    ['lever.load-hole-right', 'load', 4],
    ['lever.pull-hole-left', 'pull', 10],
    ['lever.fulcrum-hole-left', 'fulcrum', 4],
    ['lever.fulcrum-hole-right', 'fulcrum', 6],
  ] as const)('moves one hook by one hole and nothing else: %s', (code, what, hole) => {
    const changed = changedBy(code);
    expect(changed?.holes).toEqual({ load: 3, fulcrum: 5, pull: 11, [what]: hole });
    expect(changed?.inputs[what].value).toBeCloseTo(0.05 * hole, 12);
    expect({ ...changed?.inputs, [what]: 0 }).toEqual({ ...station.inputs, [what]: 0 });
  });

  it('needs a hole to go to', () => {
    expect(changedBy('lever.pull-hole-right')).toBeNull();
  });

  it('needs an arm that is left over', () => {
    const beside = leverStation({ load: 0.2, fulcrum: 0.25, pull: 0.55, holes });
    expect(changedBy('lever.load-hole-right', beside)).toBeNull();
    expect(changedBy('lever.fulcrum-hole-left', beside)).toBeNull();
  });

  it('is not thought of where the bar would turn the other way', () => {
    // Hole 3 counted from the right is hole 9, on the side of the pull.
    expect(changedBy('lever.load-counted-from-the-other-end')).toBeNull();
    expect(changedBy('lever.pull-counted-from-the-other-end')).toBeNull();
  });

  it('can be a hole counted from the other end on the same side of the pin', () => {
    const pinned = leverStation({ load: 0.15, fulcrum: 0.05, pull: 0.55, holes });
    expect(changedBy('lever.load-counted-from-the-other-end', pinned)?.holes).toMatchObject({ load: 9 });
  });

  it('by holes does not happen to a bar without holes', () => {
    const plain = leverStation({ load: 0.15, fulcrum: 0.25, pull: 0.55 });
    for (const { change } of mistakes) expect(change(plain)).toBeNull();
  });
});
