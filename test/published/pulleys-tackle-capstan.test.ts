import { compoundOf } from '../../src/core/machines/compound/station.ts';
import { sheavesNeeded } from '../../src/core/machines/tackle/station.ts';
import { idealAdvantage } from '../../src/core/machines/tackle/tackle.ts';
import { account, pullOn } from '../stations/account.ts';
import { tackleStation } from '../stations/tackle.ts';
import { type Answering, answersBy } from './answer-by-id.ts';
import { solveFor } from './solve-for.ts';
import { runTopic } from './topic.ts';

const CAPSTAN = 'a line that slips round a post: the capstan is no machine of a table yet';
const THIRD =
  'the third system (2^n - 1) hangs one pulley from the line of the next; no tackle here is rove so';
const CHAIN_BLOCK = 'a differential or geared chain block has wheels that turn each other; no gears here';
const QUOTIENT = 'a quotient of two inputs of the case: it would say nothing about a law';
const FAMILY_TOTAL = 'the swelled load is a step of the rule of thumb itself, no force in a tackle';

type Said = Parameters<typeof tackleStation>[0];

/** A tackle with just that efficiency of its sheaves that a measured pull asks for. */
const withPull = (said: Said, load: number, pull: number) =>
  tackleStation({
    ...said,
    efficiency: solveFor((e) => pullOn(tackleStation({ ...said, efficiency: e }), load), pull, 0.05, 1),
  });
/** A tackle of that efficiency as a whole. */
const withEfficiency = (said: Said, load: number, efficiency: number) =>
  tackleStation({
    ...said,
    efficiency: solveFor(
      (e) => account(tackleStation({ ...said, efficiency: e }), load).efficiency,
      efficiency,
      0.05,
      1,
    ),
  });
/** Fewest parts of line with which the pull is enough. */
const fewestParts = (load: number, pull: number, efficiency = 1): number => {
  let parts = 1;
  while (pullOn(tackleStation({ parts, efficiency }), load) > pull * (1 + 1e-12)) parts += 1;
  return parts;
};
/** A line pulled in its middle: two parts that lean from the line of the load. */
const pulledLine = (load: number, angleBelowLevel: number): number =>
  pullOn(tackleStation({ parts: 2, fallLeaves: 'moving block', lean: Math.PI / 2 - angleBelowLevel }), load);

/**
 * The rule of thumb adds a tenth of the load for each sheave and shares it evenly: the tackle says how
 * many sheaves that is, and what an even share is.
 */
const tenPercentRule: Answering = (given, { id }) => {
  const [parts, sheaves] = [given('parts_at_moving_block'), given('sheaves')];
  const fallLeaves = parts === sheaves ? 'fixed block' : 'moving block';
  const needed = sheavesNeeded(parts, fallLeaves);
  if (needed.fixed + needed.moving !== sheaves) throw new Error(`${id} needs other sheaves than it says`);
  const total = given('load') * (1 + given('friction_per_sheave') * (needed.fixed + needed.moving));
  return { effort: pullOn(tackleStation({ parts, fallLeaves }), total) };
};

const answers: Readonly<Record<string, Answering>> = {
  'pul-001': (given) => {
    const load = given('mass') * given('g');
    const tension = pullOn(tackleStation({ parts: given('parts') }), load);
    // Hauled straight down, the ceiling carries the load and the pull.
    return { tension, ceiling: load + tension };
  },
  'pul-003': (given) => ({ ropes: fewestParts(given('load'), given('effort')) }),
  'pul-008': (given) => ({ parts: fewestParts(given('load'), given('effort')) }),
  tackle_ideal: (given, { inputs, expected }) => {
    const station = tackleStation({ parts: given(inputs.ropes === undefined ? 'parts' : 'ropes') });
    const effort = pullOn(station, given('load'));
    return expected.rope_pulled === undefined
      ? { effort }
      : { effort, rope_pulled: account(station, given('load')).velocityRatio * given('lift') };
  },
  tackle_compound: (given, { expected }): Record<string, number> => {
    if (expected.chain_2n !== undefined) {
      const movable = tackleStation({ parts: 2, fallLeaves: 'moving block' });
      const chain = compoundOf(Array.from({ length: given('n') }, () => movable));
      return { chain_2n: account(chain, 1).velocityRatio };
    }
    const luffs = compoundOf(
      [given('first_advantage'), given('second_advantage')].map((parts) => tackleStation({ parts })),
    );
    return { load: solveFor((load) => pullOn(luffs, load), given('effort'), 1e-9, 1e6) };
  },
  'pul-016': (given) => {
    const trip = account(
      tackleStation({ parts: 1, blockMass: given('bucket') / 9.80665 }),
      given('load') / given('trips'),
    );
    return {
      useless: trip.deadWeight * trip.velocityRatio * given('lift') * given('trips'),
      efficiency: trip.efficiency,
    };
  },
  'pul-018': (given) => ({
    efficiency: account(withPull({ parts: given('parts') }, given('load'), given('effort')), given('load'))
      .efficiency,
  }),
  'pul-019': (given) => {
    const chainOf = (efficiency: number) =>
      compoundOf(
        Array.from({ length: given('movable_pulleys') }, () =>
          tackleStation({ parts: 2, fallLeaves: 'moving block', efficiency }),
        ),
      );
    const e = solveFor((each) => pullOn(chainOf(each), given('load')), given('effort'), 0.05, 1);
    const { velocityRatio, efficiency, lost } = account(chainOf(e), given('load'));
    return {
      VR: velocityRatio,
      efficiency,
      friction_as_effort: lost,
      friction_as_load: lost * velocityRatio,
    };
  },
  pulley_systems: (given, { inputs, expected }) => {
    const said = { parts: given(inputs.parts === undefined ? 'VR' : 'parts') };
    if (inputs.efficiency !== undefined)
      return { effort: pullOn(withEfficiency(said, given('load'), given('efficiency')), given('load')) };
    const { efficiency, lost } = account(withPull(said, given('load'), given('effort')), given('load'));
    return expected.effort_wasted === undefined ? { efficiency } : { efficiency, effort_wasted: lost };
  },
  sheave_friction_10pct: tenPercentRule,
  sheave_friction_K: (given) => {
    const guides = given('idlers') as 2;
    const station = tackleStation({ parts: given('parts'), efficiency: 1 / given('K'), guides });
    return {
      lead_load: pullOn(station, given('load')),
      static: given('load') / idealAdvantage(station).advantage,
    };
  },
  'pul-059': (given) => ({
    // The two families of the table beside it: K 1.045 and 1.02.
    parts_bronze: fewestParts(given('load'), given('line_pull'), 1 / 1.045),
    parts_antifriction: fewestParts(given('load'), given('line_pull'), 1 / 1.02),
  }),
  sheave_ratio_table: (given) => {
    const ratio = (K: number) => 1 / pullOn(tackleStation({ parts: given('parts'), efficiency: 1 / K }), 1);
    return { bronze: ratio(given('K_bronze')), antifriction: ratio(given('K_antifriction')) };
  },
  'pul-061': (given) => ({
    tension: pulledLine(given('mass') * given('g'), given('angle_below_horizontal')),
  }),
  'pul-063': (given) => ({
    rope: pulledLine(given('push'), Math.atan(given('sideways') / (given('span') / 2))),
  }),
  'pul-066': (given) => ({
    tension: pulledLine(given('load'), Math.atan(given('sag') / (given('span') / 2))),
  }),
  'pul-068': (given) => {
    const at = (sag: number) => pulledLine(given('load'), Math.atan(sag / (given('span') / 2)));
    return { a: at(given('sag_a')), b: at(given('sag_b')) };
  },
  angled_ropes: (given) => {
    const movable = { parts: 2, fallLeaves: 'moving block' } as const;
    const tension = pullOn(tackleStation({ ...movable, lean: given('included_angle') / 2 }), given('load'));
    return { tension, error_vs_parallel: tension / pullOn(tackleStation(movable), given('load')) - 1 };
  },
  sheave_measured: (given) => {
    const efficiency = (pull: number) =>
      account(withPull({ parts: 1 }, given('load'), pull), given('load')).efficiency;
    return {
      eff_bad: efficiency(given('pull_bad_pulley')),
      eff_good: efficiency(given('pull_good_pulley')),
      eff_ring: efficiency(given('pull_bare_ring')),
    };
  },
  station_tackle: (given) => {
    const said = { parts: given('supporting_parts') };
    const station = tackleStation({ ...said, efficiency: given('sheave_efficiency') });
    return {
      raise_: pullOn(station, given('load')),
      lower: pullOn(station, given('load'), 'lower'),
      ideal: pullOn(station, given('load'), 'raise', 'none'),
    };
  },
};

runTopic('pulleys-tackle-capstan', answersBy('pulleys-tackle-capstan', answers), {
  capstan: CAPSTAN,
  differential: CHAIN_BLOCK,
  'pul-003.actual_advantage': QUOTIENT,
  'pul-059.ratio': QUOTIENT,
  'pul-014.burton_single':
    'a Spanish burton has two lines that hang on each other; no tackle here is rove so',
  'pul-021': THIRD,
  'pul-024': THIRD,
  'pul-038.total': FAMILY_TOTAL,
  'pul-039.total': FAMILY_TOTAL,
  'pul-041.total': FAMILY_TOTAL,
  'pul-044.total': FAMILY_TOTAL,
  'pul-064': 'two strings of different lean; the parts of a tackle here all lean alike',
});
