import { expect, test } from 'vitest';
import { demoPrepared, paperJob, rowsOf, wordsOf } from '../../../../test/documents/demo-prepared.ts';
import { dayOf, demoPeriod } from '../../../../test/documents/made-period.ts';
import { sayIn } from '../say.ts';
import { teachersGuide } from '../teachers-guide.ts';
import { periodPlan, planOf } from './period-plan.ts';

const guideWith = (visit: (text: string) => string) => {
  const prepared = demoPrepared((text, file) => (file === 'visit' ? visit(text) : text));
  const [guide] = teachersGuide.build(paperJob(prepared));
  if (guide === undefined) throw new Error('no guide');
  return guide;
};

test('start, rounds, packing and talk fill the period to the minute, whatever its length', () => {
  for (const period of [20, 35, 40, 45, 50, 60, 90, 120])
    for (const tables of [1, 2, 5, 7, 9]) {
      const plan = planOf(period, tables);
      expect(plan.start + plan.rounds * plan.minutes + plan.pack + plan.talk).toBe(period);
      expect(plan.rounds).toBeLessThanOrEqual(tables);
      expect(plan.talk).toBeGreaterThan(0);
    }
});

test('more tables than the period has time for are not squeezed: fewer are seen', () => {
  expect(planOf(50, 7)).toMatchObject({ start: 5, rounds: 5, minutes: 6, pack: 5, talk: 10 });
  expect(planOf(90, 7)).toMatchObject({ rounds: 7, minutes: 7 });
});

test('the plan of the demo says its minutes, where groups begin and who tells of what', () => {
  const guide = guideWith((text) => text.replace(/^period:.*$/m, 'period: 50 min'));
  const rows = rowsOf(guide).filter(([minute]) => /^(before|\d+ to \d+)$/.test(minute ?? ''));
  expect(rows.map(([minute, what]) => `${minute}: ${what}`)).toEqual([
    'before: Arrival check',
    '0 to 5: Start',
    '5 to 35: Rounds',
    '35 to 40: Packing',
    '40 to 50: Talk',
  ]);
  expect(rows[2]?.[2]).toContain(
    'A 1, B 2, C 3, D 4, E 5 and F 6. At the signal each group puts its table back, then',
  );
  const words = wordsOf(guide);
  expect(words).toContain(
    'Each group sees 5 of 7 tables. In the talk those who saw a table tell the others.',
  );
  expect(words).toContain('26 pupils in 6 groups: 2 of 5 and 4 of 4.');
  expect(words.some((line) => line.startsWith('In a group of five'))).toBe(true);
  expect(words.some((line) => line.startsWith('In a group of three'))).toBe(false);
});

test('a visit without a period says which one is assumed', () => {
  const lines = wordsOf(guideWith((text) => text.replace(/^period:.*\n/m, '')));
  expect(lines.some((line) => line.startsWith('The visit says no period: 45 minutes are assumed.'))).toBe(
    true,
  );
});

test('more groups than tables share the first ones, and the sheet says how', () => {
  const lines = wordsOf(
    guideWith((text) => text.replace('groups: 6', 'groups: 9').replace('{ F: es }', '{ C: es }')),
  ).join('\n');
  expect(lines).toContain('H 1 and I 2');
  expect(lines).toContain('Groups that share a table take turns.');
});

test('without a visit nothing is said of groups that nobody counted', () => {
  const job = paperJob({ ...demoPrepared(), visit: null });
  expect(JSON.stringify(periodPlan(job, sayIn('en')))).not.toContain('Begin with');
});

test('with a timetable the guide has its rounds, who is where, and each signal', () => {
  const [guide] = teachersGuide.build(paperJob(demoPrepared(), { period: dayOf(demoPeriod()) }));
  if (guide === undefined) throw new Error('no guide');
  const rows = rowsOf(guide).filter(([when]) => /^(before|[\d:]+ to [\d:]+)$/.test(when ?? ''));
  expect(rows.map(([when, what]) => `${when}: ${what}`)).toEqual([
    'before: Arrival check',
    '9:00 to 9:05: Start',
    '9:05 to 9:10:17: Round 1',
    '9:10:47 to 9:16:04: Round 2',
    '9:16:34 to 9:21:51: Round 3',
    '9:22:21 to 9:27:38: Round 4',
    '9:28:08 to 9:33:25: Round 5',
    '9:33:55 to 9:39:12: Round 6',
    '9:39:42 to 9:44:59: Round 7',
    '9:45 to 9:50: Talk',
  ]);
  expect(rows[2]?.[2]).toBe('Group and table: A 1, B 2, C 3, D 4, E 5 and F 6. The signal at 9:10:17.');
  const words = wordsOf(guide);
  expect(words).toContain('All are done by the bell 9 times of 10.');
  expect(words).toContain('26 pupils in 6 groups: 2 of 5 and 4 of 4.');
  expect(words.join('\n')).not.toContain('a tenth to start');
});
