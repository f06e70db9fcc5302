import { sheavesNeeded } from '../../src/core/machines/tackle/station.ts';
import { pullOn } from '../stations/account.ts';
import { tackleStation } from '../stations/tackle.ts';
import { type Answering, answersBy } from './answer-by-id.ts';
import { runTopic } from './topic.ts';

const STRENGTH = 'what a rope may carry: the challenge judges it, no machine of a station breaks its line';

const answers: Readonly<Record<string, Answering>> = {
  planner_check: (given) => {
    const needed = sheavesNeeded(given('parts'), 'fixed block');
    const sheaves = needed.fixed + needed.moving;
    if (sheaves !== given('sheaves')) throw new Error('the tackle needs other sheaves than the case says');
    // The rule adds a tenth of the load a sheave and shares it evenly.
    return {
      lead_pull: pullOn(tackleStation({ parts: given('parts') }), given('load') * (1 + 0.1 * sheaves)),
    };
  },
};

runTopic('rope', answersBy('rope', answers), {
  table_row: STRENGTH,
  rule_of_thumb: STRENGTH,
  knot: STRENGTH,
  'rop-016': STRENGTH,
  'rop-019.allow': STRENGTH,
  'rop-019.ok': STRENGTH,
  'rop-020.allow': STRENGTH,
  'rop-020.ok': STRENGTH,
});
