import { isNotDefined } from '../../src/core/description/not-defined.ts';
import { balanceScrew, idealAdvantage, isSelfLocking } from '../../src/core/machines/screw/screw.ts';
import { lead, type Screw } from '../../src/core/machines/screw/station.ts';
import { tally } from '../../src/core/machines/screw/tally.ts';
import { metresPerSecondSquared, newtons } from '../../src/core/quantities/brands.ts';
import {
  minorDiameter,
  nearestThread,
  pitchDiameter,
  rootDiameter,
  threads,
} from '../../src/core/sources/threads.ts';
import type { Asked } from '../../src/core/statics/balance.ts';
import { atBest } from '../../src/core/uncertainty/propagate.ts';
import { screwStation } from '../stations/screw.ts';
import { type Answer, inputsOf, type PublishedCase, runTopic } from './topic.ts';

const V = Math.PI / 6;

function defined<T>(value: T): Exclude<T, { readonly kind: 'not-defined' }> {
  if (isNotDefined(value)) throw new Error(`not defined: ${value.because}`);
  return value as Exclude<T, { readonly kind: 'not-defined' }>;
}

/** A screw as the case describes it; mean diameter and lever from whichever measure it gives. */
function screwOf(published: PublishedCase): Screw {
  const input = inputsOf(published);
  const has = (name: string) => published.inputs[name] !== undefined;
  const pitch = has('pitch')
    ? input('pitch')
    : has('threads_per_inch')
      ? 1 / input('threads_per_inch')
      : input('lead');
  const meanDiameter = has('mean_dia')
    ? input('mean_dia')
    : has('pitch_dia')
      ? input('pitch_dia')
      : has('core_dia')
        ? input('core_dia') + pitch / 2
        : has('outer_dia')
          ? input('outer_dia') - pitch / 2
          : pitchDiameter(input('nominal'), pitch);
  const collar = has('collar_mean_radius')
    ? 2 * input('collar_mean_radius')
    : input('collar_inner_r', 0) + input('collar_outer_r', 0);
  return screwStation({
    pitch,
    meanDiameter,
    starts: input('starts', 1),
    flank: input('half_angle', 0),
    friction: input('mu', 0),
    collarDiameter: collar,
    collarFriction: input('mu_collar', 0),
    arm: input('lever', input('arm', input('spanner', 1))),
  });
}

const asked = (load: number, direction: Asked['direction'], grip: Asked['grip'] = 'moving'): Asked => ({
  load: newtons(load),
  gravity: metresPerSecondSquared(9.80665),
  direction,
  grip,
});
const effort = (screw: Screw, load: number, direction: Asked['direction']): number =>
  defined(balanceScrew(screw, atBest, asked(load, direction))).effort;
const armOf = (screw: Screw): number => screw.inputs.arm?.value ?? Number.NaN;
const advantage = (screw: Screw): number => defined(idealAdvantage(screw, atBest)).advantage;
const leadAngle = (screw: Screw): number =>
  Math.atan(lead(screw, atBest) / (Math.PI * screw.inputs.meanDiameter.value));
/** Useful work over work put in, from the account of the law. */
function efficiency(screw: Screw, load: number): number {
  const { work } = defined(balanceScrew(screw, atBest, asked(load, 'raise')));
  const rate = (by: string) => work.find((term) => term.by === by)?.rate ?? Number.NaN;
  return -rate('load') / rate('effort');
}

/** Raising, turning back (against a self-locking thread) and holding, and what follows from them. */
const powerScrew: Answer = (published) => {
  const input = inputsOf(published);
  const screw = screwOf(published);
  const a = armOf(screw);
  const given = published.inputs.torque ? input('torque') / a : input('pull', Number.NaN);
  // Effort grows in step with the load: the load for a given pull is pull over effort of one newton.
  const load = input('load', input('load_each', Number.isNaN(given) ? 1 : given / effort(screw, 1, 'raise')));
  const raise = effort(screw, load, 'raise');
  const lower = effort(screw, load, 'lower');
  const { velocityRatio } = defined(balanceScrew(screw, atBest, asked(load, 'raise')));
  return {
    raise_: raise,
    lower: -lower,
    torque: raise * a * input('rods', 1),
    T_raise: raise * a,
    T_lower: -lower * a,
    handle: raise,
    force: published.inputs.pull ? load : raise,
    load,
    loosen: -lower * a,
    holding: lower * a,
    ratio: raise / -lower,
    efficiency: efficiency(screw, load),
    self_locking: isSelfLocking(screw, atBest),
    lead_angle: leadAngle(screw),
    lever: (raise * a) / input('effort', Number.NaN),
    power: raise * input('speed', Number.NaN) * (velocityRatio as number),
  };
};

const ideal: Answer = (published) => {
  const input = inputsOf(published);
  const screw = screwStation({
    pitch: published.inputs.pitch ? input('pitch') : 1 / input('threads_per_inch'),
    arm: input('arm', 1),
  });
  const A = advantage(screw);
  const pull = input('effort', input('load', Number.NaN) / A);
  return {
    load: pull * A,
    effort: input('load', Number.NaN) / A,
    torque: (input('load', Number.NaN) / A) * armOf(screw),
    arm: input('force', Number.NaN) / input('effort', Number.NaN) / A,
  };
};

const withEfficiency: Answer = (published) => {
  const input = inputsOf(published);
  if (published.id === 'scr-023') {
    const d2 = 0.01;
    const mu = input('mu');
    return {
      limit: efficiency(
        screwStation({ pitch: Math.PI * d2 * mu, meanDiameter: d2, friction: mu, arm: 1 }),
        1,
      ),
    };
  }
  if (published.inputs.efficiency) {
    const A = advantage(screwStation({ pitch: input('pitch'), arm: input('arm') }));
    return { effort: input('load') / (A * input('efficiency')) };
  }
  const screw = screwOf(published);
  return { efficiency: efficiency(screw, 1), lead_angle: leadAngle(screw) };
};

/** Two threads of unlike pitch: one turn moves the load by their difference, which is the lead. */
const differential: Answer = (published) => {
  const input = inputsOf(published);
  const A = advantage(screwStation({ pitch: input('p1') - input('p2'), arm: input('arm') }));
  return {
    effort: input('load') / (A * input('efficiency', Number.NaN)),
    efficiency: input('load') / input('effort', Number.NaN) / A,
  };
};

const turnsFor = (pitch: number, travel: number): number =>
  defined(tally(screwStation({ pitch, travel }), atBest)).value;

const metricThread: Answer = (published) => {
  const d = inputsOf(published)('nominal');
  const thread = threads.find(
    (each) => each.series === 'metric coarse' && Math.abs(each.diameter - d) < 1e-9,
  );
  const pitch = thread?.pitch ?? Number.NaN;
  const meanDiameter = pitchDiameter(d, pitch);
  return {
    pitch,
    d2: meanDiameter,
    d1: minorDiameter(d, pitch),
    d3: rootDiameter(d, pitch),
    turns_for_10mm: turnsFor(pitch, 0.01),
    lead_angle: leadAngle(screwStation({ pitch, meanDiameter })),
  };
};

const inchThread: Answer = (published) => {
  const d = inputsOf(published)('nominal');
  const pitchIn = (series: string): number =>
    threads.find((each) => each.series === series && Math.abs(each.diameter - d) < 1e-9)?.pitch ?? Number.NaN;
  return {
    UNC: 1 / pitchIn('UNC'),
    UNF: 1 / pitchIn('UNF'),
    UNC_pitch: nearestThread(d, pitchIn('UNC'))?.pitch ?? Number.NaN,
    turns_for_half_inch_UNC: turnsFor(pitchIn('UNC'), 0.0127),
  };
};

const stationScrew: Answer = (published) => {
  const input = inputsOf(published);
  const screw = screwOf(published);
  return {
    ideal: input('load') / advantage(screw),
    raise_: effort(screw, input('load'), 'raise'),
    efficiency: efficiency(screw, input('load')),
  };
};

/** The full formula: 60 degree thread, and a nut face that rubs at 1.25 times the bolt's diameter. */
const boltTorque: Answer = (published) => {
  const input = inputsOf(published);
  const d = input('nominal');
  const screw = screwStation({
    pitch: 1 / input('threads_per_inch'),
    meanDiameter: input('mean_dia'),
    flank: V,
    friction: input('mu_thread'),
    collarDiameter: 1.25 * d,
    collarFriction: input('mu_collar'),
    arm: 1,
  });
  const torque = effort(screw, input('preload'), 'raise');
  return { full: torque, K: torque / (input('preload') * d) };
};

const RULE_OF_THUMB =
  'the nut factor K is a rule of thumb for bolts; no law of the screw station contains it';

runTopic(
  'screws',
  {
    screw_turns: (published) => ({
      turns: turnsFor(inputsOf(published)('pitch'), inputsOf(published)('travel')),
    }),
    screw_ideal: ideal,
    power_screw: powerScrew,
    power_screw_V: powerScrew,
    screw_efficiency: withEfficiency,
    screw_differential: differential,
    thread_metric: metricThread,
    thread_inch: inchThread,
    station_screw: stationScrew,
    bolt_torque: boltTorque,
  },
  {
    'scr-073.short_rule': RULE_OF_THUMB,
    'scr-073.short_rule_excess': RULE_OF_THUMB,
    'scr-074': RULE_OF_THUMB,
    'scr-076': RULE_OF_THUMB,
  },
);
