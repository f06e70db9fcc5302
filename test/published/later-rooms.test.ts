import { describe, expect, it } from 'vitest';
import { recordNotRun } from './record.ts';
import { casesOf } from './topic.ts';

const PEOPLE = 'what people may lift, push or grip: the challenge judges it, no machine of a station does';
const BENDING =
  'strength and sag of beams and boards: the challenge needs them, every law here takes bodies as stiff';

/** Topics that no law of the stations can express yet: every case by its kind, with the reason. */
const LATER: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  'human-limits': {
    niosh_example: PEOPLE,
    niosh_formula: PEOPLE,
    niosh_frequency: PEOPLE,
    push_pull_guide: PEOPLE,
    child_grip: PEOPLE,
    child_check: PEOPLE,
    planner_check: PEOPLE,
  },
  'beams-boards': {
    deflection: BENDING,
    bending_stress: BENDING,
    board_ramp: BENDING,
    deflection_limit: BENDING,
    lever_bar: BENDING,
  },
};

describe('published cases of later rooms', () => {
  for (const [topic, reasons] of Object.entries(LATER))
    it(`are all listed with their reason: ${topic}`, () => {
      const cases = casesOf(topic);
      expect([...new Set(cases.map((each) => each.kind))].sort()).toEqual(Object.keys(reasons).sort());
      for (const each of cases)
        recordNotRun({ topic, id: each.id, gist: each.gist, reason: reasons[each.kind] ?? '' });
    });
});
