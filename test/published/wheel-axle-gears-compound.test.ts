import { compoundOf } from '../../src/core/machines/compound/station.ts';
import { machineNamed } from '../../src/core/machines/list.ts';
import type { Station } from '../../src/core/machines/machine.ts';
import { atBest } from '../../src/core/uncertainty/propagate.ts';
import { account, pullOn } from '../stations/account.ts';
import { planeOf } from '../stations/incline.ts';
import { baseOf } from '../stations/ride.ts';
import { tackleStation } from '../stations/tackle.ts';
import { windlassStation } from '../stations/windlass.ts';
import { type Answering, answersBy } from './answer-by-id.ts';
import { solveFor } from './solve-for.ts';
import { runTopic } from './topic.ts';

const GEARS = 'toothed wheels, worms and differential axles are no machines of a table';
const LINE_FIT = 'a straight line through test points is reckoning with readings, no law of a machine';
const POWER = 'power needs a time; the machines here move at a creep';
const QUOTIENT = 'a quotient of two inputs of the case: it would say nothing about a law';
const COUNT = 'whether a stage holds itself can not be told from its efficiency alone';

type Said = Parameters<typeof windlassStation>[0];

/** A bearing nearly as wide as the wheel, so that a search finds any loss; at 0.99 it is about to jam. */
const MOST_FRICTION = 0.99;
const rubbing = (said: Said, friction: number): Station =>
  windlassStation({ ...said, bearing: 0.9 * said.wheel, friction });

/** A windlass with just that bearing friction that a measured pull asks for. */
const withPull = (said: Said, load: number, pull: number): Station =>
  rubbing(
    said,
    solveFor((mu) => pullOn(rubbing(said, mu), load), pull, 0, MOST_FRICTION),
  );
/** A windlass of that efficiency as a whole. */
const withEfficiency = (said: Said, load: number, efficiency: number): Station =>
  rubbing(
    said,
    solveFor((mu) => account(rubbing(said, mu), load).efficiency, efficiency, 0, MOST_FRICTION),
  );
/** Any lifting machine of a velocity ratio: here a windlass. */
const ofRatio = (ratio: number): Said => ({ wheel: ratio * 0.01, axle: 0.01 });
const ideal = (station: Station): number => {
  const found = machineNamed(station.machine)?.idealAdvantage(station, atBest);
  if (found === undefined || !('advantage' in found)) throw new Error('no ideal advantage');
  return found.advantage;
};

/** All figures of a machine of that ratio which raises a load with a pull. */
function figuresOf(ratio: number, load: number, pull: number) {
  const said = ofRatio(ratio);
  const { velocityRatio, efficiency, lost } = account(withPull(said, load, pull), load);
  const bare = windlassStation(said);
  return {
    VR: velocityRatio,
    efficiency,
    friction_as_effort: lost,
    effort_lost: lost,
    friction_as_load: lost * velocityRatio,
    ideal_effort: pullOn(bare, load),
    ideal_load: solveFor((W) => pullOn(bare, W), pull, 0, 1e9),
  };
}

const radii = (given: (name: string) => number): Said => ({ wheel: given('D') / 2, axle: given('d') / 2 });

const answers: Readonly<Record<string, Answering>> = {
  'whe-001': (given) => ({
    // The engine turns the axle, so the tyre is where the load is.
    MA: ideal(windlassStation({ wheel: given('axle_radius'), axle: given('tire_radius') })),
  }),
  'whe-003': (given) => ({
    effort: pullOn(
      windlassStation({ wheel: given('wheel_dia') / 2, axle: given('axle_dia') / 2 }),
      given('resistance'),
    ),
  }),
  'whe-004': (given) => ({
    each:
      pullOn(
        windlassStation({ wheel: given('circle_dia') / 2, axle: given('drum_dia') / 2, turnedBy: 'crank' }),
        given('load'),
      ) / given('men'),
  }),
  'whe-006': (given) => ({
    effort: pullOn(
      windlassStation({ wheel: given('spoke'), axle: given('axle_dia') / 2, turnedBy: 'crank' }),
      given('rope_tension'),
    ),
  }),
  'whe-011': (given) => {
    const said = { ...radii(given), wheelLine: given('cord_wheel'), axleLine: given('cord_axle') };
    const station = withEfficiency(said, given('load'), given('efficiency'));
    return {
      VR: account(station, given('load')).velocityRatio,
      effort: pullOn(station, given('load')),
    };
  },
  wheel_axle: (given) => {
    const { VR, efficiency } = figuresOf(given('D') / given('d'), given('load'), given('effort'));
    return { VR, efficiency };
  },
  'whe-034': (given) => {
    const ratio = given('effort_distance') / given('load_distance');
    // The same friction share at any load, as the drum has no weight here.
    const station = withEfficiency(ofRatio(ratio), 1, given('efficiency'));
    const load = solveFor((W) => pullOn(station, W), given('effort'), 0, 1e9);
    return { load, MA: load / given('effort') };
  },
  'whe-036': (given) => {
    return { VR: figuresOf(ratioOf(given), given('load'), given('effort')).VR };
  },
  'whe-038': (given) => figuresOf(ratioOf(given), given('load'), given('effort')),
  'whe-039': (given) => {
    // Friction that stays the same at any load: a guide pulley with a constant drag and no share.
    const bare = windlassStation(ofRatio(given('VR')));
    const guided = (constant: number, load: number) =>
      pullOn(tackleStation({ parts: 1, constant }), pullOn(bare, load));
    const wanted = pullOn(bare, given('load')) / given('efficiency');
    const drag = solveFor((c) => guided(c, given('load')), wanted, 0, 1e6);
    return { P2: guided(drag, given('load2')), P3: guided(drag, given('load3')) };
  },
  'whe-041': (given) => {
    const lostAt = (load: number) => figuresOf(given('VR'), load, given('effort')).friction_as_effort;
    const most = given('effort') * given('VR');
    const load = solveFor(lostAt, given('friction_effort'), most / 2, most * (1 - 1e-9));
    return { load, efficiency: figuresOf(given('VR'), load, given('effort')).efficiency };
  },
  machine_law: (given, { inputs }) =>
    figuresOf(
      inputs.VR === undefined ? given('effort_distance') / given('load_distance') : given('VR'),
      given('load'),
      given('effort'),
    ),
  'whe-051': (given) => {
    const ramp = planeOf({ rise: 1, length: given('ramp') }, baseOf({}));
    const crank = windlassStation({ wheel: given('crank') * 0.01, axle: 0.01, turnedBy: 'crank' });
    return { total: ideal(compoundOf([ramp, crank])) };
  },
  'whe-053': (given) => ({
    effort: pullOn(withEfficiency(ofRatio(given('VR')), given('load'), given('efficiency')), given('load')),
  }),
  'whe-054': (given) => {
    const rove = (efficiency: number) => tackleStation({ parts: given('TMA'), efficiency });
    const e = solveFor((each) => account(rove(each), given('load')).efficiency, given('efficiency'), 0.05, 1);
    return { effort: pullOn(rove(e), given('load')) };
  },
  'whe-061': (_given, { inputs }) => {
    const [first = 0, second = 0, ramp = 0] = (inputs.stage_efficiencies?.value ?? []) as unknown as number[];
    const rough = (mu: number) => planeOf({ angle: 0.5 }, baseOf({ mu }));
    const mu = solveFor((each) => account(rough(each), 1).efficiency, ramp, 0, 1);
    const sheave = (efficiency: number) => tackleStation({ parts: 1, efficiency });
    return { total: account(compoundOf([rough(mu), sheave(second), sheave(first)]), 1).efficiency };
  },
  station_wheel_axle: (given) => {
    const t = 2 * given('string_radius');
    const station = windlassStation({
      wheel: given('wheel_radius'),
      axle: given('axle_radius'),
      wheelLine: t,
      axleLine: t,
    });
    return { effort: pullOn(station, given('load')), ratio: account(station, given('load')).velocityRatio };
  },
};

/** The velocity ratio at which load and pull make the stated efficiency. */
function ratioOf(given: (name: string) => number): number {
  const [load, effort] = [given('load'), given('effort')];
  const least = load / effort;
  return solveFor(
    (v) => figuresOf(v, load, effort).efficiency,
    given('efficiency'),
    least * (1 + 1e-9),
    1.9 * least,
  );
}

runTopic('wheel-axle-gears-compound', answersBy('wheel-axle-gears-compound', answers), {
  differential_axle: GEARS,
  worm: GEARS,
  winch: GEARS,
  gear_train: GEARS,
  'whe-009.MA': QUOTIENT,
  'whe-029.MA': QUOTIENT,
  'whe-029.VR': QUOTIENT,
  'whe-033.MA': QUOTIENT,
  'whe-033.VR': QUOTIENT,
  'whe-034.VR': QUOTIENT,
  'whe-036.MA': QUOTIENT,
  'whe-044.MA': QUOTIENT,
  'whe-044.VR': QUOTIENT,
  'whe-028':
    'the force on this crank leans along the axle; the law holds for a pull square to the crank and the axle',
  'whe-046': LINE_FIT,
  'whe-049': LINE_FIT,
  'whe-061.max_self_locking_stage_count': COUNT,
  'whe-063': GEARS,
  work_power: POWER,
});
