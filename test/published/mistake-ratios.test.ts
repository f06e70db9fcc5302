import { describe, expect, it } from 'vitest';
import { isNotDefined } from '../../src/core/description/not-defined.ts';
import { drag } from '../../src/core/machines/drag/index.ts';
import { inclinedPlane } from '../../src/core/machines/incline/index.ts';
import { lever } from '../../src/core/machines/lever/index.ts';
import { screw } from '../../src/core/machines/screw/index.ts';
import { tackle } from '../../src/core/machines/tackle/index.ts';
import { metresPerSecondSquared, newtons } from '../../src/core/quantities/brands.ts';
import { type Cause, causesOf } from '../../src/core/readings/causes.ts';
import { ownUnit } from '../../src/core/readings/judgement.ts';
import { predictScale } from '../../src/core/setups/predict-scale.ts';
import type { Setup } from '../../src/core/setups/setup.ts';
import { atBest } from '../../src/core/uncertainty/propagate.ts';
import { balanceUnder, dragOf, planeOf } from '../stations/incline.ts';
import { leverStation } from '../stations/lever.ts';
import { baseOf, stringAt } from '../stations/ride.ts';
import { screwStation } from '../stations/screw.ts';
import { scaleOf, setupOf, weightOf } from '../stations/setup.ts';
import { tackleStation } from '../stations/tackle.ts';
import { type Answering, answersBy } from './answer-by-id.ts';
import { casesOf, runTopic } from './topic.ts';

const G = 9.80665;
const THIRTY = Math.PI / 6;

/** What the scale shows at its best, without rounding. */
function shownBy(setup: Setup): number {
  const { shown } = predictScale(setup);
  if (shown === null) throw new Error('the scale shows nothing');
  return shown.value;
}

/** Where a named mistake puts the pointer, and in which unit it is then written. */
function causeOf(setup: Setup, code: string): Cause & { readonly figure: { readonly low: number } } {
  const cause = causesOf(setup, ownUnit(setup)).find((each) => each.code === code);
  if (cause === undefined || cause.figure === null) throw new Error(`no ${code} here`);
  return { ...cause, figure: cause.figure };
}
const ratioOf = (setup: Setup, code: string): number => causeOf(setup, code).figure.low / shownBy(setup);

/** A bar that passes on what hangs on it, with a scale that pulls up. */
const plain = leverStation({ load: 0.3, pull: 0.3 });
/** The same with the pull on the other side, so that the scale hangs upside down. */
const downward = leverStation({ load: -0.3, pull: 0.3 });

const written =
  (unit: string): Answering =>
  (given) => {
    const setup = setupOf(lever, plain, { load: weightOf(given('expected')) });
    const { figure, unit: wrote } = causeOf(setup, `reading.in-${unit}`);
    const recorded = figure.low / (wrote?.si ?? Number.NaN);
    return { recorded, ratio: recorded / given('expected') };
  };

const holeOff: Answering = (given) => {
  const holes = Array.from({ length: 30 }, (_, n) => n * given('spacing'));
  const wide = { scale: scaleOf({ range: 50 }) };
  const near = given('intended_arm');
  const far = holes[20] ?? Number.NaN;
  const loaded = setupOf(lever, leverStation({ load: near, pull: far, holes }), wide);
  const pulled = setupOf(lever, leverStation({ load: far, pull: near, holes }), wide);
  return {
    load_side_ratio: ratioOf(loaded, 'lever.load-hole-right'),
    effort_side_ratio: ratioOf(pulled, 'lever.pull-hole-right'),
  };
};

const onePartFewer: Answering = (given) => {
  const station = tackleStation({ parts: given('parts') });
  const fewer = tackle.mistakes.find((each) => each.code === 'tackle.one-part-fewer')?.change(station);
  if (!fewer) throw new Error('no part can be left out');
  const balance = (of: typeof station) => {
    const found = tackle.balance(of, atBest, {
      load: newtons(2),
      gravity: metresPerSecondSquared(G),
      direction: 'raise',
      grip: 'none',
    });
    if (isNotDefined(found)) throw new Error(found.because);
    return found;
  };
  return {
    force_ratio: balance(fewer).effort / balance(station).effort,
    rope_ratio: Number(balance(fewer).velocityRatio) / Number(balance(station).velocityRatio),
  };
};

/** Turns or millimetres that a screw gives, right and after a mistake of the machine. */
function tallied(station: ReturnType<typeof screwStation>): number {
  const tally = screw.tally?.(station, atBest);
  if (tally === undefined || isNotDefined(tally)) throw new Error('nothing is counted');
  return tally.value;
}

const upsideDown: Answering = (given) => {
  const setup = setupOf(lever, downward, {
    load: weightOf(given('true_pull')),
    scale: scaleOf({ movingGrams: given('moving_part') * 1000, grams: 45 }),
    hang: 'upside down',
    zeroed: 'in place',
  });
  const reading = causeOf(setup, 'scale.zero-from-hook-down').figure.low;
  return { reading, ratio: reading / given('true_pull') };
};

const lettingDown: Answering = (given) => {
  const plane = planeOf({ angle: given('angle') }, baseOf({ mu: given('mu') }));
  const setup = setupOf(inclinedPlane, plane, { hang: 'along the slope', zeroed: 'in place' });
  return { ratio_down_over_up: ratioOf(setup, 'way.lowering-for-raising') };
};

const answers: Readonly<Record<string, Answering>> = {
  'mis-001': written('grams'),
  'mis-003': written('pounds'),
  'mis-004': written('grams'),
  'mis-006': written('pounds'),
  'mis-008': written('ounces'),
  'mis-009': written('pounds'),
  acceleration: (given) => {
    const load = newtons(given('mass') * given('g'));
    const gravity = metresPerSecondSquared(given('g'));
    const asked = { load, gravity, direction: 'raise', grip: 'moving' } as const;
    const heavier = lever.speedingUp?.(plain, atBest, asked, given('a'));
    const shows = (pull: number): number => shownBy(setupOf(lever, plain, { load: weightOf(pull) }));
    const reading = shows(heavier ?? Number.NaN);
    return { reading, ratio: reading / shows(load) };
  },
  cart_mass: (given) => {
    const pull = (deadMass: number) =>
      balanceUnder(planeOf({ angle: THIRTY }, baseOf({ deadMass })), given('load') * G).effort;
    return { ratio_measured_over_predicted: pull(given('cart')) / pull(0) };
  },
  hole: holeOff,
  tackle: onePartFewer,
  string: (given) => {
    const pull = (lean: number) =>
      balanceUnder(planeOf({ angle: THIRTY }, baseOf({}), stringAt(lean)), 2).effort;
    return { ratio: pull(given('angle')) / pull(0) };
  },
  turns: (given) => {
    const asked = given('true_turns');
    const station = screwStation({ pitch: 0.00125, meanDiameter: 0.007, travel: 0.00125 * asked });
    const counted = (code: string) => {
      const changed = screw.mistakes.find((each) => each.code === code)?.change(station);
      if (!changed) throw new Error(`no ${code} here`);
      return tallied(changed);
    };
    return {
      pitch_ratio_if_one_more: tallied(station) / counted('screw.turn-more'),
      pitch_ratio_if_one_less: tallied(station) / counted('screw.turn-less'),
    };
  },
  flush: (given) => {
    const pitch = 0.00125;
    const station = (startGap: number) =>
      screwStation({ pitch, meanDiameter: 0.007, turns: given('true_travel') / pitch, startGap });
    return { travel_read_ratio: tallied(station(given('gap'))) / tallied(station(0)) };
  },
  inverted: upsideDown,
  'mis-039': lettingDown,
  'mis-041': lettingDown,
  'mis-043': (given) => {
    const box = dragOf(baseOf({ mu: given('mu_k'), muStarting: given('mu_s') }));
    const setup = setupOf(drag, box, { hang: 'level', zeroed: 'in place' });
    return { ratio: ratioOf(setup, 'way.start-for-moving') };
  },
};

runTopic('mistake-ratios', answersBy('mistake-ratios', answers), {});

describe('the cases of mistakes', () => {
  it('are all from our own sheets, so none of them counts as published', () => {
    expect(new Set(casesOf('mistake-ratios').map((each) => each.basis))).toEqual(new Set(['own theory']));
  });
});
