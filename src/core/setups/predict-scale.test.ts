import { describe, expect, it } from 'vitest';
import { leverStation } from '../../../test/stations/lever.ts';
import { filled, type SaidOfScale, scaleOf, setupOf } from '../../../test/stations/setup.ts';
import { isNotDefined } from '../description/not-defined.ts';
import { springScaleOf } from '../instruments/spring-scale.ts';
import { lever } from '../machines/lever/index.ts';
import { kilograms } from '../quantities/brands.ts';
import { exactly } from '../uncertainty/measured.ts';
import { predict } from './predict.ts';
import { predictScale } from './predict-scale.ts';
import type { Outcome } from './prediction.ts';
import type { Setup } from './setup.ts';

const G = 9.80665;
const grams = (mass: number): Setup['load'] => ({ kind: 'mass', mass: exactly(kilograms(mass / 1000)) });

/** The heavy bar of the own sheet on levers: raising asks 0.243 N of a scale that weighs 0.74 N. */
const heavyBar = leverStation({ load: -0.03, pull: 0.3, barMass: 1.2, pinRadius: 0.004, friction: 0.25 });
const underTheScale = (said: SaidOfScale = {}, more: Partial<Setup> = {}): Setup =>
  setupOf(lever, heavyBar, {
    scale: scaleOf({ grams: 75, movingGrams: 11, springGrams: 6, range: 2.5, ...said }),
    hang: 'upside down',
    ...more,
  });
/** A bar that passes on what hangs on it: 200 g straight on the scale. */
const straight = (said: SaidOfScale, more: Partial<Setup> = {}): Setup =>
  setupOf(lever, leverStation({ load: 0.3, pull: 0.3 }), { scale: scaleOf(said), ...more });

const outcomeOf = (setup: Setup): Outcome => predictScale(setup).outcome;

describe('a scale that hangs from the machine by its hook', () => {
  it('raises the load by its own weight where less is needed, and then shows its turn-over figure', () => {
    const outcome = outcomeOf(underTheScale());
    if (outcome.kind !== 'moves under the scale') throw new Error(outcome.kind);
    expect(outcome.needed).toBeCloseTo(0.243, 3);
    expect(outcome.ownWeight).toBeCloseTo(0.7355, 4);
    // Mg - D with D = 2 (11 g + 3 g) g.
    expect(outcome.shows).toBeCloseTo((0.075 - 2 * 0.014) * G, 9);
    expect(outcome.good.from).toBeLessThanOrEqual(outcome.shows);
    expect(outcome.good.to).toBeGreaterThanOrEqual(outcome.shows);
  });

  it('shows its whole weight then where it was zeroed as it hangs', () => {
    expect(outcomeOf(underTheScale({}, { zeroed: 'in place' }))).toMatchObject({
      kind: 'moves under the scale',
      shows: expect.closeTo(0.075 * G, 9),
    });
  });

  it('says the same whichever way it is to be read', () => {
    for (const way of ['raise', 'lower', 'held', 'start'] as const)
      expect(outcomeOf(underTheScale({}, { way })).kind).toBe('moves under the scale');
  });

  it('keeps the range on its marks where even its own weight is beyond them', () => {
    const outcome = outcomeOf(
      underTheScale({ range: 0.4, graduation: 0.02, movingGrams: 0, springGrams: 0 }),
    );
    if (outcome.kind !== 'moves under the scale') throw new Error(outcome.kind);
    expect(outcome.good).toEqual({ from: 0.4, to: 0.4 });
  });

  it('can be read where the hand carries it', () => {
    expect(outcomeOf(underTheScale({ movingGrams: 0, springGrams: 0 }, { handCarries: true }))).toMatchObject(
      {
        kind: 'reading',
        expected: expect.closeTo(0.243, 3),
      },
    );
  });

  it('cuts held and lower at its own weight', () => {
    // Starting asks more than the scale weighs, letting back less.
    const station = leverStation({ load: -0.1, pull: 0.3, barMass: 1.5, pinRadius: 0.006, friction: 0.35 });
    const scale = scaleOf({ grams: 75 });
    const setup = setupOf(lever, station, {
      scale,
      hang: 'upside down',
      zeroed: 'in place',
      load: grams(240),
    });
    expect(outcomeOf({ ...setup, way: 'raise' })).toMatchObject({ kind: 'reading' });
    expect(outcomeOf({ ...setup, way: 'lower' })).toMatchObject({
      kind: 'reading',
      expected: expect.closeTo(0.075 * G, 9),
      cutAtOwnWeight: true,
    });
    expect(outcomeOf({ ...setup, way: 'held' })).toMatchObject({
      kind: 'band',
      lower: expect.closeTo(0.075 * G, 9),
      cutAtOwnWeight: true,
    });
  });

  it('falls as a dead weight in the work account: the hand gives what is left', () => {
    const station = leverStation({ load: -0.2, pull: 0.4 });
    const setup = setupOf(lever, station, { hang: 'upside down', scale: scaleOf({ grams: 50 }) });
    const { account } = predict({ ...setup, lift: exactly(0.05 as never) });
    if (isNotDefined(account)) throw new Error(account.because);
    const joules = (by: string) => account.given.find((each) => each.by === by)?.joules;
    expect(joules('falling scale')).toBeCloseTo(0.05 * G * 0.1, 12);
    expect(joules('hand')).toBeCloseTo(0.05 * 0.2 * G - 0.05 * G * 0.1, 12);
  });

  it('is raised again while the load is let back: the falling load pays for it', () => {
    const station = leverStation({ load: -0.2, pull: 0.4 });
    const scale = scaleOf({ grams: 50 });
    const setup = setupOf(lever, station, { hang: 'upside down', way: 'lower', scale });
    const { account } = predict({ ...setup, lift: exactly(0.05 as never) });
    if (isNotDefined(account)) throw new Error(account.because);
    const taken = (by: string) => account.taken.find((each) => each.by === by)?.joules;
    expect(account.given.map((each) => each.by)).toEqual(['load']);
    expect(taken('falling scale')).toBeCloseTo(0.05 * G * 0.1, 12);
    expect(taken('hand')).toBeCloseTo(0.05 * 0.2 * G - 0.05 * G * 0.1, 12);
  });
});

describe('a pull that is no number on the scale', () => {
  it('is on its stop where the shown value lies below the stop', () => {
    const setup = straight({ movingGrams: 60, grams: 120, springGrams: 0 }, { load: grams(10) });
    expect(outcomeOf({ ...setup, hang: 'level' })).toMatchObject({
      kind: 'on its stop',
      wouldShow: expect.closeTo((0.01 - 0.06) * G, 9),
      stop: 0,
    });
  });

  it('is off the scale beyond the last mark, and says when the spring is overloaded', () => {
    expect(outcomeOf(straight({ range: 1, graduation: 0.02 }))).toMatchObject({
      kind: 'off the scale',
      wouldShow: expect.closeTo(0.2 * G, 9),
      range: 1,
      overloads: false,
    });
    expect(outcomeOf(straight({ range: 1, graduation: 0.02, overload: 1.5 }))).toMatchObject({
      overloads: true,
    });
  });

  it('belongs on the other side with its size where the bar raises the load by itself', () => {
    // lev-059 of the reference, own sheet: 0.157 N.
    const station = leverStation({ load: 0.05, fulcrum: 0.2, pull: 0.95, barMass: 0.14, barCentre: 0.5 });
    const outcome = outcomeOf(setupOf(lever, station, { hang: 'upside down' }));
    expect(outcome).toMatchObject({
      kind: 'scale on the other side',
      force: expect.closeTo(0.157, 3),
    });
  });

  it('is not defined where it does not come back by itself', () => {
    const setup = setupOf(
      lever,
      leverStation({ load: -0.004, pull: 0.3, barMass: 1.2, pinRadius: 0.004, friction: 0.35 }),
      { way: 'lower', hang: 'upside down', handCarries: true },
    );
    expect(outcomeOf(setup)).toMatchObject({ kind: 'not-defined', because: 'setup.does-not-come-back' });
  });

  it('is not defined without a scale', () => {
    expect(outcomeOf(straight({}, { scale: null }))).toMatchObject({ because: 'setup.no-scale' });
  });
});

describe('a scale of which little is known', () => {
  it('takes mass, moving part, friction and accuracy from the sources, and says so', () => {
    const scale = springScaleOf({
      mark: 'amber',
      kind: 'spring scale',
      fields: {
        range: filled('amber/range', 5, 'N', 'force'),
        graduation: filled('amber/graduation', 0.1, 'N', 'force'),
      },
    });
    const { assumed } = predict(straight({}, { scale, hang: 'level', tapped: false }));
    expect(assumed.map(({ unknown }) => unknown).sort()).toEqual(
      ['amber/accuracy', 'amber/mass', 'amber/moving part', 'amber/tube friction'].sort(),
    );
    for (const { source } of assumed) expect(source).not.toBe('');
  });
});
