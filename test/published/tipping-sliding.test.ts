import { slipAngle } from '../../src/core/statics/slope.ts';
import { balanceUnder, dragOf, planeOf } from '../stations/incline.ts';
import { baseOf, stringAt } from '../stations/ride.ts';
import { type Answering, answersBy } from './answer-by-id.ts';
import { solveFor } from './solve-for.ts';
import { runTopic } from './topic.ts';

const TIPPING = 'whether a body tips belongs to the room where a load is moved; no machine of a table tips';
const LADDER = 'a ladder against a wall is no machine of a table';

/** The level pull at which a box slides; whether it tips first is not asked here. */
const slides: Answering = (given, { inputs }) => {
  const lean = inputs.angle_up === undefined ? 0 : given('angle_up');
  const box = dragOf(baseOf({ mu: given('mu'), deadMass: given('mass') }), stringAt(lean));
  return { slide: balanceUnder(box, 0, 'raise', 'moving', given('g')).effort };
};

const answers: Readonly<Record<string, Answering>> = {
  slide_or_tip: slides,
  slide_or_tip_derived: slides,
  incline_tip: (given, { inputs }): Record<string, number> => {
    if (inputs.mu === undefined) return {};
    const mu = given('mu');
    const held = (angle: number) => balanceUnder(planeOf({ angle }, baseOf({ mu })), 1, 'lower').effort;
    const found = solveFor(held, 0, 1e-6, 1.5);
    if (Math.abs(found - slipAngle(mu)) > 1e-9) throw new Error('the law and its slip angle disagree');
    return { slide_angle: slipAngle(mu) };
  },
  'tip-023': (given) => ({
    cable: balanceUnder(
      planeOf({ angle: Math.PI / 2 - given('track_from_vertical') }, baseOf({})),
      given('weight'),
    ).effort,
  }),
};

runTopic('tipping-sliding', answersBy('tipping-sliding', answers), {
  'tip-001.tip': TIPPING,
  'tip-001.first': TIPPING,
  'tip-003.tip': TIPPING,
  'tip-003.first': TIPPING,
  'tip-003.limit_height': TIPPING,
  'tip-004.tip': TIPPING,
  'tip-004.first': TIPPING,
  'tip-004.limit_height': TIPPING,
  'tip-006.tip': TIPPING,
  'tip-006.first': TIPPING,
  'tip-008.tip_angle': TIPPING,
  'tip-008.first': TIPPING,
  'tip-009.tip_angle': TIPPING,
  'tip-009.first': TIPPING,
  'tip-011': TIPPING,
  'tip-023.R1': TIPPING,
  'tip-023.R2': TIPPING,
  'tip-024': TIPPING,
  ladder: LADDER,
});
