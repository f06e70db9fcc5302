import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { screwStation } from '../../../../test/stations/screw.ts';
import { recompute } from '../../../../test/stations/working.ts';
import { isNotDefined } from '../../description/not-defined.ts';
import { atBest } from '../../uncertainty/propagate.ts';
import type { Tally } from '../machine.ts';
import { mistakes } from './mistakes.ts';
import type { Screw } from './station.ts';
import { tally } from './tally.ts';

function counted(screw: Screw | null): Tally {
  const found = screw === null ? null : tally(screw, atBest);
  if (found === null || isNotDefined(found)) throw new Error(found?.because ?? 'no station');
  return found;
}
const mistaken = (code: string, screw: Screw): Screw | null => {
  const mistake = mistakes.find((each) => each.code === code);
  if (mistake === undefined) throw new Error(`no mistake is called ${code}`);
  return mistake.change(screw);
};

describe('turns and travel of a screw', () => {
  it('moves an M8 screw 10 mm in 8 turns', () => {
    expect(counted(screwStation({ pitch: 0.00125, turns: 8 }))).toMatchObject({
      what: 'travel',
      value: 0.01,
    });
    expect(counted(screwStation({ pitch: 0.00125, travel: 0.01 }))).toMatchObject({
      what: 'turns',
      value: 8,
    });
  });

  it('goes twice as far a turn with two starts', () => {
    expect(counted(screwStation({ pitch: 0.002, starts: 2, turns: 5 })).value).toBeCloseTo(0.02, 12);
  });

  it('loses the start gap once, whatever the turns', () => {
    const gap = { pitch: 0.001, startGap: 0.0004 };
    const lost = (turns: number) => {
      const { value, textbook } = counted(screwStation({ ...gap, turns }));
      return textbook - value;
    };
    expect(lost(3)).toBeCloseTo(0.0004, 12);
    expect(lost(12)).toBeCloseTo(0.0004, 12);
  });

  it('counts the turns that give back the travel', () => {
    fc.assert(
      fc.property(
        fc.record({
          pitch: fc.double({ min: 0.0005, max: 0.01, noNaN: true }),
          starts: fc.integer({ min: 1, max: 4 }),
          gapShare: fc.double({ min: -0.9, max: 0.9, noNaN: true }),
        }),
        fc.integer({ min: 1, max: 50 }),
        ({ gapShare, ...said }, turns) => {
          const plain = { ...said, startGap: gapShare * said.pitch * said.starts };
          const travel = counted(screwStation({ ...plain, turns })).value;
          const back = counted(screwStation({ ...plain, travel }));
          expect(back.value).toBeCloseTo(turns, 9);
          for (const line of back.working) expect(recompute(line)).toBeCloseTo(line.value, 9);
        },
      ),
      { seed: 21 },
    );
  });

  it('says so where the screw never reaches the face, or nothing is counted', () => {
    expect(tally(screwStation({ pitch: 0.001, turns: 2, startGap: 0.003 }), atBest)).toMatchObject({
      because: 'screw.never-touches',
      facts: { gap: { si: 0.003 }, advance: { si: 0.002 } },
    });
    expect(tally(screwStation({ pitch: 0.001, travel: 0.001, startGap: -0.002 }), atBest)).toMatchObject({
      because: 'screw.already-past',
    });
    expect(tally(screwStation({ pitch: 0.001 }), atBest)).toMatchObject({ because: 'screw.nothing-counted' });
  });
});

describe('usual mistakes at a screw', () => {
  const byTurns = screwStation({ pitch: 0.00125, turns: 8 });
  const byTravel = screwStation({ pitch: 0.00125, travel: 0.01 });

  it('one turn too many counted gives a count of one more, or (n - 1)/n of the travel', () => {
    expect(counted(mistaken('screw.turn-more', byTurns)).value / 0.01).toBeCloseTo(7 / 8, 12);
    expect(counted(mistaken('screw.turn-more', byTravel)).value).toBeCloseTo(9, 12);
  });

  it('one turn too few counted gives (n + 1)/n of the travel; the only turn can not be counted twice', () => {
    expect(counted(mistaken('screw.turn-less', byTurns)).value / 0.01).toBeCloseTo(9 / 8, 12);
    expect(mistaken('screw.turn-more', screwStation({ pitch: 0.001, turns: 1 }))).toBeNull();
  });

  it('half turns counted as turns halve the travel, or double the count', () => {
    expect(counted(mistaken('screw.half-turns', byTurns)).value).toBeCloseTo(0.005, 12);
    expect(counted(mistaken('screw.half-turns', byTravel)).value).toBeCloseTo(16, 12);
  });

  it('a start that is not flush takes off half a lead, the same for few and many turns', () => {
    expect(counted(mistaken('screw.not-flush', byTurns)).value).toBeCloseTo(0.01 - 0.000625, 12);
    expect(counted(mistaken('screw.not-flush', byTravel)).value).toBeCloseTo(8.5, 12);
  });

  it('none of them touches the textbook value, nor a screw that is only pulled', () => {
    for (const { code } of mistakes) {
      expect(counted(mistaken(code, byTurns)).textbook).toBeCloseTo(0.01, 12);
      expect(mistaken(code, screwStation({ pitch: 0.001, arm: 0.1 }))).toBeNull();
    }
  });
});
