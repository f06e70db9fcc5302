import { idealAdvantage } from '../../src/core/machines/incline/incline.ts';
import { toSi } from '../../src/core/quantities/unit.ts';
import { bestLean } from '../../src/core/statics/slope.ts';
import { atBest } from '../../src/core/uncertainty/propagate.ts';
import { balanceUnder, dragOf, figureOf, planeOf } from '../stations/incline.ts';
import { baseOf, rollersOf, stringAt, wheelsOf } from '../stations/ride.ts';
import { type Answering, answersBy } from './answer-by-id.ts';
import { back, level, rubbing, twoSlopes, up, weightAndFriction } from './slope-pulls.ts';
import { solveFor } from './solve-for.ts';
import { runTopic } from './topic.ts';

const KGF = toSi(1, 'kgf');
const RIGHT = Math.PI / 2 - 1e-9;

const answers: Readonly<Record<string, Answering>> = {
  incline_ideal: (given, { inputs, expected }) => {
    const steep = (rise: number, length: number) =>
      balanceUnder(planeOf({ rise, length }, baseOf({})), given('load'), 'raise', 'none').effort;
    if (expected.length_over_height !== undefined) {
      const angle = solveFor((a) => up(given('load'), a, 0), given('effort'), 1e-6, RIGHT);
      return { length_over_height: idealAdvantage(planeOf({ angle }, baseOf({})), atBest).advantage };
    }
    if (inputs.length === undefined) {
      const rise = given('height');
      return { length: solveFor((L) => steep(rise, L), given('effort'), rise * (1 + 1e-9), rise * 1000) };
    }
    const slope = { rise: given('height'), length: given('length') };
    const effort = steep(slope.rise, slope.length);
    if (expected.ideal_effort !== undefined) {
      const real = balanceUnder(planeOf(slope, baseOf({ mu: 0.1 })), given('load')).effort;
      return { ideal_effort: effort, statement_exact_is_true: real === effort };
    }
    const advantage = idealAdvantage(planeOf(slope, baseOf({})), atBest).advantage;
    return expected.advantage === undefined ? { effort } : { effort, advantage };
  },

  'inc-012': (given) => {
    const crate = dragOf(baseOf({ mu: given('mu_k'), muStarting: given('mu_s'), deadMass: given('mass') }));
    return {
      start: balanceUnder(crate, 0, 'raise', 'starting', given('g')).effort,
      keep: balanceUnder(crate, 0, 'raise', 'moving', given('g')).effort,
    };
  },
  'inc-014': (given) => {
    const mu = given('mu_k');
    const W = solveFor((weight) => level(weight, mu), given('friction'), 0, 1e3);
    return { normal: figureOf(balanceUnder(dragOf(baseOf({ mu })), W), 'N') };
  },
  'inc-015': (given) => {
    const crate = dragOf(baseOf({ mu: given('mu_k'), muStarting: given('mu_s'), deadMass: given('mass') }));
    const limit = balanceUnder(crate, 0, 'raise', 'starting', given('g')).effort;
    const keep = balanceUnder(crate, 0, 'raise', 'moving', given('g')).effort;
    // Below the starting limit it rests and friction equals the push; beyond it, friction is kinetic.
    const friction = (push: number) => (push <= limit ? push : keep);
    return {
      limit,
      f_a: friction(given('push_a')),
      f_b: friction(given('push_b')),
      f_c: friction(given('push_c')),
      f_d: friction(given('push_d')),
      a_d: (given('push_d') - keep) / given('mass'),
    };
  },
  'inc-017': (given) => ({ mu: solveFor((mu) => level(given('weight'), mu), given('pull'), 0, 10) }),
  'inc-019': (given) => ({ weight: solveFor((W) => level(W, given('mu')), given('pull'), 0, 1e6) }),
  'inc-020': (given, { inputs }) => ({
    // A short ton is 2000 lb (from memory; NIST SP 811, appendix B).
    pull: balanceUnder(
      dragOf(wheelsOf({ share: given('mu_rolling') })),
      (inputs.weight?.value ?? 0) * 2000 * toSi(1, 'lbf'),
    ).effort,
  }),
  'inc-022': (given) => ({ mu: solveFor((mu) => level(given('weight'), mu), given('pull'), 0, 10) }),
  'inc-055': (given) => {
    const [mu, g] = [given('mu_k'), given('g')];
    const tension = level(given('m_top') * g, mu);
    // The lower block drags on the floor under both, under the upper block, and against the string.
    const floor = level((given('m_top') + given('m_bottom')) * g, mu);
    return { tension, pull: floor + tension + tension };
  },
  // The printed force is that between slab and tied block, so the floor has no part in it.
  'inc-056': (given) => ({ force: level(given('m_top') * given('g'), given('mu_between')) }),

  'inc-023': (given) => ({
    mu: solveFor((mu) => level(given('weight'), mu, given('angle_up')), given('pull'), 0, 2),
  }),
  'inc-025': (given) => {
    const [W, mu] = [given('weight'), given('mu')];
    // The least pull where the pull stops falling with the lean: a slope of nothing.
    const steepness = (lean: number) => level(W, mu, lean + 1e-5) - level(W, mu, lean - 1e-5);
    const best = solveFor(steepness, 0, 0, 1.4);
    if (Math.abs(best - bestLean(mu)) > 1e-4) throw new Error('the law and its best lean disagree');
    return {
      pull: level(W, mu, given('angle_up')),
      best_angle: bestLean(mu),
      least_pull: level(W, mu, best),
    };
  },
  'inc-026': (given) =>
    // A push down at an angle is a pull that leans below the level.
    weightAndFriction(
      (W, mu) => level(W, mu, given('angle')),
      given('pull'),
      (W, mu) => level(W, mu, -given('angle')),
      given('push'),
    ),

  'inc-028': (given) => {
    const balance = balanceUnder(
      planeOf({ angle: given('angle') }, baseOf({ mu: given('mu') })),
      given('weight'),
    );
    const given1 = balance.work.find(({ by }) => by === 'effort')?.rate ?? 0;
    return { force: balance.effort, work: given1 * given('distance') };
  },
  'inc-030': (given) => twoSlopes(given),
  'inc-031': (given) => twoSlopes(given),
  'inc-033': (given) => {
    const angle = solveFor((a) => up(given('weight'), a, 0, given('pull_to_plane')), given('pull'), 1e-6, 1);
    return { plane_angle: angle, force_up: up(given('weight'), angle, given('mu')) };
  },
  // Joined by a string along the slope: they slip when together they need no holding back.
  'inc-035': (given) => ({
    angle: solveFor(
      (a) => back(given('W1'), a, given('mu1')) + back(given('W2'), a, given('mu2')),
      0,
      1e-6,
      1,
    ),
  }),
  'inc-036': (given) => {
    const [above, below, mu] = [given('W_upper'), given('W_lower'), given('mu')];
    // The lower block rubs on the plane under both and on the tied block above it.
    const held = (a: number) => up(below, a, 0) - rubbing(above + below, a, mu) - rubbing(above, a, mu);
    return { angle: solveFor(held, 0, 1e-6, 1) };
  },
  'inc-038': (given) => ({
    angle: solveFor(
      (a) => back(given('WA'), a, given('muA')) + back(given('WB'), a, given('muB')),
      0,
      1e-6,
      1,
    ),
  }),
  'inc-049': (given) => ({ mu_s: solveFor((mu) => back(1, given('angle'), mu), 0, 0, 5) }),

  'inc-039': (given) => {
    const counterUp = (W: number) => up(W, given('counter_plane'), given('mu_counter'));
    const counterBack = (W: number) => back(W, given('counter_plane'), given('mu_counter'));
    const load = [given('load'), given('load_plane'), given('mu_load')] as const;
    return {
      least: solveFor(counterUp, back(...load), 0, 1e5),
      greatest: solveFor(counterBack, up(...load), 0, 1e5),
    };
  },
  'inc-041': (given) => {
    const mu = given('mu');
    const behind = up(given('W_slope'), given('slope'), mu);
    // A string that pulls back on a level block drags like more weight: T = mu (T/mu).
    return { pull: level(given('W_level') + behind / mu, mu, given('pull_angle')) };
  },

  incline_horizontal_push: (given) => {
    const mu = Math.tan(given('friction_angle'));
    const a = given('angle');
    // A level push into the slope is a pull that leans as far below it as the slope is steep.
    const held = balanceUnder(planeOf({ angle: a }, baseOf({ mu }), stringAt(-a)), given('weight'), 'lower');
    const N = figureOf(held, 'N');
    return { force: held.effort, resultant: Math.hypot(N, mu * N) };
  },

  // Nobody pulls, or somebody pulls too much: what is left over of the balance speeds the mass up.
  'inc-050': (given) => ({
    a_a: back(given('g'), given('angle_a'), given('mu_k')),
    a_b: back(given('g'), given('angle_b'), given('mu_k')),
  }),
  'inc-052': (given) => ({ deceleration: up(given('g'), given('angle'), given('mu_k')) }),
  'inc-053': (given) => ({
    a: (given('pull') - up(given('mass') * given('g'), given('angle'), 0)) / given('mass'),
  }),
  energy_friction: (given) => {
    const [m, a] = [given('mass'), given('angle')];
    const energy = (m * given('speed') ** 2) / 2;
    const W = m * given('g');
    // The friction is stated, so the coefficient that gives it is taken on each surface.
    return {
      level: energy / level(W, given('friction') / W),
      uphill: energy / up(W, a, given('friction') / (W * Math.cos(a))),
    };
  },

  'inc-059': (given) => ({
    force: balanceUnder(dragOf(wheelsOf({ wheel: given('diameter'), arm: given('arm') })), given('load'))
      .effort,
  }),
  'inc-061': (given) => {
    const W = given('load') * KGF;
    const grade = up(W, Math.atan(given('slope')), 0);
    // The guidance adds the level figure of 2 percent as it is, without the cosine.
    const rolling = balanceUnder(dragOf(wheelsOf({ share: 0.02 })), W).effort;
    return { grade_force: grade, grade_plus_2pct: grade + rolling, over_30: grade > 30 * KGF };
  },
  'inc-063': (given) => ({
    force: balanceUnder(
      dragOf(
        wheelsOf({
          wheel: given('wheel_diameter'),
          axle: given('axle_diameter'),
          friction: given('bearing_mu'),
          arm: given('rolling_arm'),
          share: given('rim_factor'),
        }),
      ),
      given('weight'),
    ).effort,
  }),
  'inc-064': (given) => ({
    force: balanceUnder(
      dragOf(rollersOf({ diameter: given('roller_diameter'), below: given('arm'), above: given('arm') })),
      given('weight'),
    ).effort,
  }),

  station_cart: (given) => {
    const slope = { angle: given('angle') };
    const load = given('load_mass') * given('g');
    const pull = (deadMass: number, direction: 'raise' | 'lower') =>
      balanceUnder(
        planeOf(slope, wheelsOf({ share: given('rolling'), deadMass })),
        load,
        direction,
        'moving',
        given('g'),
      ).effort;
    const cart = given('cart_mass');
    return {
      pull_up: pull(cart, 'raise'),
      pull_down_hold: pull(cart, 'lower'),
      pull_if_cart_forgotten: pull(0, 'raise'),
      forgotten_ratio: pull(cart, 'raise') / pull(0, 'raise'),
    };
  },
  station_string_angle: (given) => {
    const pull = (lean: number) =>
      balanceUnder(
        planeOf({ angle: given('angle') }, wheelsOf({ share: given('rolling') }), stringAt(lean)),
        given('mass') * given('g'),
      ).effort;
    const lean = given('string_angle_above_plane');
    return { pull: pull(lean), ratio: pull(lean) / pull(0) };
  },
  station_rolling: (given) => {
    const cart = dragOf(
      wheelsOf({
        wheel: 2 * given('wheel_radius'),
        axle: 2 * given('axle_radius'),
        friction: given('bearing_mu'),
        arm: given('rolling_arm'),
        deadMass: given('mass'),
      }),
    );
    const balance = balanceUnder(cart, 0, 'raise', 'moving', given('g'));
    return { coefficient: figureOf(balance, 'C'), pull_on_level: balance.effort };
  },
};

runTopic('incline-friction-rolling', answersBy('incline-friction-rolling', answers), {
  'inc-043':
    'a mass that falls and speeds another up: motion under a net force, no machine at rest or at a creep',
  'inc-044': 'two hanging masses that speed up: motion under a net force, no machine at rest or at a creep',
});
