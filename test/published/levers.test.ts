import { describe, expect, it } from 'vitest';
import { idealAdvantage } from '../../src/core/machines/lever/lever.ts';
import { mistakes } from '../../src/core/machines/lever/mistakes.ts';
import { classOf } from '../../src/core/machines/lever/station.ts';
import { atBest } from '../../src/core/uncertainty/propagate.ts';
import { figureOf } from '../stations/incline.ts';
import { type BareLever, leverStation, leverUnder } from '../stations/lever.ts';
import { type Answering, answersBy } from './answer-by-id.ts';
import { solveFor } from './solve-for.ts';
import { runTopic } from './topic.ts';

const FAR = 1e3;

/** Pull and pin force of a lever under a load, both as sizes. */
function forcesOn(bare: BareLever, load: number, gravity = 9.80665) {
  const balance = leverUnder(leverStation(bare), load, 'raise', 'moving', gravity);
  return { effort: balance.effort, pin: figureOf(balance, 'R') };
}
const effortOf = (bare: BareLever, load: number, gravity?: number): number =>
  forcesOn(bare, load, gravity).effort;

/** A load between two supports is a second-class lever about one: the other support is its effort. */
const onTwoSupports = (load: number, place: number, span: number) => {
  const { effort, pin } = forcesOn({ load: place, pull: span }, load);
  return { near: pin, far: effort };
};

/** Where between the supports a load stands that gives the far one a share of it. */
const placeFor = (share: number, span: number): number =>
  solveFor((x) => onTwoSupports(1, x, span).far, share, 1e-9, span * (1 - 1e-9));

/** What a scale pan on unequal arms says on either side, asked back for the load itself. */
const weighedOnUnequalArms: Answering = (given) => {
  const [a, b] = [given('reading_a'), given('reading_b')];
  const loadFor = (arms: number): number => solveFor((W) => effortOf({ load: -1, pull: arms }, W), a, 0, 1e5);
  const arms = solveFor((k) => effortOf({ load: -k, pull: 1 }, loadFor(k)), b, 0.01, 100);
  return { true: loadFor(arms), arm_ratio: Math.max(arms, 1 / arms) };
};

const steelyard: Answering = (given) => {
  const beam = {
    load: -given('load_arm'),
    barMass: given('beam_mass'),
    barCentre: -given('beam_cg_on_load_side'),
  };
  const g = 9.80665;
  const poiseAt = (kilograms: number): number =>
    solveFor((pull) => effortOf({ ...beam, pull }, kilograms * g, g), given('poise') * g, 1e-4, 10);
  return {
    poise_position: poiseAt(given('load')),
    zero_position: poiseAt(0),
    scale_step_per_kg: poiseAt(2) - poiseAt(1),
  };
};

const stick: Answering = (given, { inputs }) => {
  const g = given('g');
  const W = given('load_mass') * g;
  if (inputs.intended_arm !== undefined) return hungInAnotherHole(given, W);
  const bare = { load: given('load_at'), fulcrum: given('pivot_at'), pull: given('effort_at') };
  const effort = effortOf({ ...bare, barMass: given('bar_mass'), barCentre: given('bar_cg_at') }, W, g);
  const without = effortOf(bare, W, g);
  return { effort, effort_without_bar: without, error_percent: (without - effort) / effort };
};

/** One hole off, by the mistake of the machine itself, on a stick with holes each 5 cm. */
function hungInAnotherHole(given: Parameters<Answering>[0], W: number) {
  const holes = Array.from({ length: 21 }, (_, n) => n * 0.05);
  const bare = { fulcrum: 0.5, load: 0.5 - given('intended_arm'), pull: 0.5 + given('effort_arm'), holes };
  const code = given('actual_arm') > given('intended_arm') ? 'lever.load-hole-left' : 'lever.load-hole-right';
  const intended = leverStation(bare);
  const hung = mistakes.find((each) => each.code === code)?.change(intended) ?? null;
  if (hung === null) throw new Error(`no ${code} on this stick`);
  const effort = leverUnder(hung, W).effort;
  return { effort, ratio_to_intended: effort / leverUnder(intended, W).effort };
}

const answers: Readonly<Record<string, Answering>> = {
  'lev-001': (given) => {
    const bare = { load: given('load_arm'), pull: given('hand_arm') };
    const { effort, pin } = forcesOn(bare, given('load_mass') * given('g'));
    const { advantage } = idealAdvantage(leverStation(bare), atBest);
    return { hand_force: effort, wheel_force: pin, advantage };
  },
  'lev-003': (given) => ({
    effort: effortOf({ load: given('load_arm'), pull: given('effort_arm') }, given('load')),
  }),
  'lev-004': (given) => ({
    effort: effortOf(
      { load: given('load_arm'), pull: given('load_arm') + given('hands_behind_load') },
      given('load'),
    ),
  }),
  'lev-006': (given) => ({
    effort: effortOf({ load: given('load_arm'), pull: given('effort_arm') }, given('load')),
  }),
  // The arms are those at which this hand pulls this nail; the bar's weight is taken to bear on the support.
  'lev-008': (given) => {
    const nail = given('nail_force');
    const bar = { load: -0.01, barMass: given('bar_mass') };
    const pull = solveFor(
      (arm) => effortOf({ ...bar, pull: arm }, nail, given('g')),
      given('hand_force'),
      0.01,
      10,
    );
    return { support_force: forcesOn({ ...bar, pull }, nail, given('g')).pin };
  },
  'lev-009': (given) => {
    const length = given('bar_length');
    const W = given('load_mass') * given('g');
    const effort = (fulcrum: number) => effortOf({ load: 0, fulcrum, pull: length }, W);
    return { fulcrum_from_load: solveFor(effort, given('max_effort'), 1e-6, length - 1e-6) };
  },
  'lev-011': (given) => {
    const g = given('g');
    const board = {
      load: -given('r1'),
      barMass: given('board_mass'),
      barCentre: -given('board_cm_offset_towards_m1'),
    };
    const W = given('m1') * g;
    const r2 = solveFor((pull) => effortOf({ ...board, pull }, W, g), given('m2') * g, 0.1, 10);
    return { r2, pivot_force: forcesOn({ ...board, pull: r2 }, W, g).pin };
  },
  'lev-012': (given) => {
    const apart = given('separation');
    const effort = (fulcrum: number) => effortOf({ load: 0, fulcrum, pull: apart }, given('m1'));
    return { r_light: solveFor(effort, given('m2'), 1e-6, apart - 1e-6) };
  },
  'lev-015': (given) => {
    const needed = effortOf({ load: -given('r1'), pull: given('r2') }, given('w1'));
    return { net_moment: (needed - given('w2')) * given('r2') };
  },
  'lev-016': (given) => {
    const needed = effortOf({ load: -given('r1'), pull: given('r2') }, given('w1'));
    return { net_moment_towards_w1: (needed - given('w2')) * given('r2') };
  },
  lever_choice: (given) => {
    const advantage = (bare: BareLever) => idealAdvantage(leverStation(bare), atBest).advantage;
    const wanted = given('effort_arm') / given('load_arm');
    const load = given('load_arm');
    const first = solveFor((pull) => advantage({ load: -load, pull }), wanted, load, FAR);
    const second = solveFor((pull) => advantage({ load, pull }), wanted, load * 1.001, FAR);
    const classes = [
      classOf(leverStation({ load: -load, pull: first }), atBest),
      classOf(leverStation({ load, pull: second }), atBest),
    ];
    expect(classes).toEqual(['first', 'second']);
    return { length_class1: load + first, length_class2: second };
  },
  'lev-020': (given) => {
    const needed = effortOf({ load: -given('head'), pull: given('handle') }, given('nail_force'));
    return { needed_effort: needed, nail_moves: needed <= given('available_effort') };
  },
  'lev-022': (given) => ({ w2: effortOf({ load: -given('r1'), pull: given('r2') }, given('w1')) }),
  'lev-023': (given) => ({ F2: effortOf({ load: given('r1'), pull: given('r2') }, given('F1')) }),
  // The load at one metre that the pull just holds is the moment itself.
  'lev-025': (given) => {
    const torque = solveFor((W) => effortOf({ load: -1, pull: given('r') }, W), given('F'), 0, FAR);
    return { torque, torque_ftlb: torque };
  },
  lever3: (given) => {
    const { effort, pin } = forcesOn({ load: given('load_arm'), pull: given('muscle_arm') }, given('load'));
    return { muscle_lb: effort, joint_lb: pin, muscle_N: effort, joint_N: pin };
  },
  lever3_barmass: (given) => {
    const { effort, pin } = forcesOn(
      {
        load: given('load_arm'),
        pull: given('muscle_arm'),
        barMass: given('arm_mass'),
        barCentre: given('arm_cm'),
      },
      given('load_mass') * given('g'),
      given('g'),
    );
    return { muscle: effort, joint: pin };
  },
  'lev-030': (given) => {
    const { effort, pin } = forcesOn(
      { load: -given('cg_from_left_away_from_right'), pull: given('hands_apart') },
      given('mass') * given('g'),
    );
    return { right_down: effort, left_up: pin };
  },
  'lev-032': (given) => {
    const middle = given('length') / 2;
    const effort = (pull: number) => effortOf({ load: middle, pull }, given('weight'));
    return { position_from_left: solveFor(effort, given('second_support'), middle, given('length')) };
  },
  'lev-033': (given) => {
    const { near, far } = onTwoSupports(given('mass') * given('g'), given('from_left'), given('span'));
    return { left: near, right: far };
  },
  'lev-035': (given) => {
    const { near, far } = onTwoSupports(given('load'), given('from_rear'), given('length'));
    return { rear: near, front: far };
  },
  'lev-037': (given) => {
    const [load, span] = [given('load'), given('length')];
    const place = solveFor(
      (x) => onTwoSupports(load, x, span).near / onTwoSupports(load, x, span).far,
      given('ratio'),
      0.01,
      span - 0.01,
    );
    const { near, far } = onTwoSupports(load, place, span);
    return { from_stronger: place, stronger: near, weaker: far };
  },
  'lev-038': (given) => {
    const { near, far } = onTwoSupports(given('total'), given('arm_a'), given('arm_a') + given('arm_b'));
    return { horse_a: near, horse_b: far };
  },
  'lev-040': (given) => {
    const { near, far } = onTwoSupports(given('load'), given('from_P'), given('span'));
    return { P: near, Q: far };
  },
  'lev-042': (given) => ({ cm_from_rear: placeFor(given('front_share'), given('wheelbase')) }),
  'lev-043': (given) => ({ cm_behind_front: placeFor(1 - given('front_share'), given('wheelbase')) }),
  machine_law: (given) => {
    const pull = solveFor(
      (arm) => effortOf({ load: -1, pull: arm }, given('load')),
      given('effort'),
      0.1,
      FAR,
    );
    const { velocityRatio } = leverUnder(leverStation({ load: -1, pull }), given('load'));
    return { load_distance: given('effort_distance') / (velocityRatio as number) };
  },
  balance: weighedOnUnequalArms,
  // A pull of nothing at the thick end: the beam's own weight holds what hangs at the other.
  'lev-052': (given) => {
    const balanced = given('balance_from_thick_end');
    const beam = {
      load: given('length'),
      fulcrum: balanced + given('shift'),
      barCentre: balanced,
      pull: 0,
    };
    const effort = (barMass: number) => effortOf({ ...beam, barMass }, given('hung_at_thin_end'), 9.80665);
    return { beam_weight: solveFor(effort, 0, 0, FAR) * 9.80665 };
  },
  steelyard,
  station_lever: stick,
};

runTopic('levers', answersBy('levers', answers), {
  'lev-050.mean': 'the rule of the mean is arithmetic on two readings, no law of the lever',
  'lev-050.mean_error': 'the rule of the mean is arithmetic on two readings, no law of the lever',
});

describe('a bar that outweighs its load', () => {
  it('asks for the scale on the other side, and says with how much (own sheet: lever)', () => {
    const bare = { load: 0.05, fulcrum: 0.2, pull: 0.95, barMass: 0.14, barCentre: 0.5 };
    expect(-effortOf(bare, 0.2 * 9.80665)).toBeCloseTo(0.157, 3);
  });
});
