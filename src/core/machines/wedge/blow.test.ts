import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { liftingWedge, splittingWedge } from '../../../../test/stations/wedge.ts';
import { isNotDefined } from '../../description/not-defined.ts';
import { kilograms, metres, metresPerSecondSquared, newtons } from '../../quantities/brands.ts';
import { atBest } from '../../uncertainty/propagate.ts';
import { type Blow, blowOn, meanResistance, penetration, plasticShare } from './blow.ts';
import type { Wedge } from './station.ts';

const said = {
  angle: (7.5 * Math.PI) / 180,
  friction: 0.3,
  preTension: 3,
  stiffness: 250,
  mallet: { mass: 0.3, falls: 0.2, share: 0.5 },
};
function blow(wedge: Wedge, load = 0): Blow {
  const found = blowOn(wedge, atBest, newtons(load));
  if (isNotDefined(found)) throw new Error(found.because);
  return found;
}

describe('what a blow adds', () => {
  it('spends the energy that arrives on the push along its way', () => {
    const { energy, advance, meanForce } = blow(splittingWedge(said));
    expect(energy).toBeCloseTo(0.5 * 0.3 * 9.80665 * 0.2, 12);
    expect(meanForce * advance).toBeCloseTo(energy, 12);
    const turn = Math.tan(said.angle + Math.atan(said.friction));
    const start = 2 * said.preTension * turn;
    const end = 2 * (said.preTension + 250 * 2 * advance * Math.tan(said.angle)) * turn;
    expect(((start + end) / 2) * advance).toBeCloseTo(energy, 12);
  });

  it('drives less far the further the cords are stretched', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 0.05, noNaN: true }),
        fc.double({ min: 0.001, max: 0.05, noNaN: true }),
        (advance, more) => {
          const here = blow(splittingWedge({ ...said, advance }));
          const further = blow(splittingWedge({ ...said, advance: advance + more }));
          expect(further.advance).toBeLessThan(here.advance);
          expect(further.meanForce).toBeGreaterThan(here.meanForce);
        },
      ),
      { seed: 41 },
    );
  });

  it('gives far more force than the hand where the wedge hardly moves', () => {
    const stiff = blow(splittingWedge({ ...said, preTension: 100, stiffness: 50_000 }));
    expect(stiff.meanForce).toBeGreaterThan(80);
    expect(stiff.advance).toBeLessThan(0.005);
  });

  it('works under a load too, and is not defined without a mallet', () => {
    const plain = liftingWedge({ angle: 0.2, friction: 0.2, base: 0.2 });
    expect(blowOn(plain, atBest, newtons(10))).toMatchObject({ because: 'wedge.no-mallet' });
    const { malletMass, malletFalls, blowShare } = splittingWedge(said).inputs;
    if (malletMass === undefined || malletFalls === undefined || blowShare === undefined)
      throw new Error('the mallet is missing');
    const struck = { ...plain, inputs: { ...plain.inputs, malletMass, malletFalls, blowShare } };
    const { energy, advance } = blow(struck, 10);
    expect(advance).toBeCloseTo(energy / (10 * (Math.tan(0.2 + Math.atan(0.2)) + 0.2)), 12);
  });

  it('drives a pile as deep as its resistance says, and back', () => {
    const drive = {
      striker: kilograms(1500),
      struck: kilograms(750),
      drop: metres(0.6),
      gravity: metresPerSecondSquared(9.81),
    };
    const resistance = meanResistance(drive, metres(0.05));
    expect(penetration(drive, resistance)).toBeCloseTo(0.05, 12);
    expect(penetration(drive, newtons(2250 * 9.81))).toMatchObject({ because: 'wedge.sinks-by-weight' });
    expect(plasticShare(1500, 750)).toBeCloseTo(2 / 3, 12);
  });
});
