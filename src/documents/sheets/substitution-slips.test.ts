import { expect, test } from 'vitest';
import { demoPrepared, paperJob, rowsOf, wordsOf } from '../../../test/documents/demo-prepared.ts';
import { substitutionsOf } from '../../core/substitute.ts';
import { outcomeShort } from '../text/prediction-text.ts';
import { substitutionSlips } from './substitution-slips.ts';

const prepared = demoPrepared();
const [sheet] = substitutionSlips.build(paperJob(prepared));
if (sheet === undefined) throw new Error('no slips');
const words = wordsOf(sheet);
const found = substitutionsOf(prepared);

/** The lines of one slip: from its heading to the next heading. */
function slip(heading: string): readonly string[] {
  const at = words.indexOf(heading);
  expect(at, heading).toBeGreaterThan(0);
  const rest = words.slice(at + 1);
  const end = rest.findIndex((line) => /^(No |Without one|Table \d)/.test(line));
  return end < 0 ? rest : rest.slice(0, end);
}

test('every part that plays a role has its slip, or stands among those without which a table closes', () => {
  const text = words.join('\n');
  for (const { missing } of found) expect(text).toContain(`${missing} (`);
});

test('a slip has the key that holds with the part that stands in, beside the one it replaces', () => {
  const cart = found.find(({ missing }) => missing === 'trolley');
  const rows = rowsOf(sheet);
  const now = cart?.setups.filter(({ setup }) => cart.concerns.includes(setup.mark)) ?? [];
  expect(now.length).toBe(3);
  for (const { setup, prediction } of now) {
    const before = prepared.tables
      .flatMap((table) => table.setups)
      .find((each) => each.setup.mark === setup.mark);
    if (before === undefined) throw new Error(`no ${setup.mark}`);
    const row = [setup.mark, outcomeShort('en', prediction), outcomeShort('en', before.prediction)];
    expect(rows).toContainEqual(row);
  }
});

test('another scale says where it ends, and which setup it can not show', () => {
  const lines = slip('No amber (spring scale): take moss (spring scale)');
  expect(lines).toContain('It ends at 2.5 N. Never pull past its last mark.');
  expect(lines).toContain('Leave out L2.');
});

test('a smaller load that gives only a few marks is said to show less', () => {
  const lines = slip('No W1500 (weight): take W300 (weight)');
  expect(lines).toContain('It is of another size. Build as on the card; the key below holds.');
  expect(lines).toContain('At C1 it shows less well: a reading of only a few graduations.');
});

test('steps that change are written out, setup by setup', () => {
  const spare = `  spare spindle:
    part: screw
    thread: M12
    lever arm: 11.0 cm
    spare: yes
    fits: screw
  chalk:
    part: spring scale
    range: 2.5 N
    graduation: 0.05 N
    mass: 38 g
    fits: screw
  oar:`;
  const pulled = `      - setup: P3
        load: heavy
        scale: pull
        read: raise
        scale hangs: level
        zeroed: level
`;
  const other = demoPrepared((text, file) => {
    if (file === 'kit') return text.replace(/^ {2}oar:$/m, spare);
    if (file === 'visit') return text;
    return text
      .replace(
        '      screw: screw\n',
        '      screw: screw\n      heavy: weight of 300 g\n      pull: spring scale\n',
      )
      .replace('        turns: 8\n', `        turns: 8\n${pulled}`);
  });
  const [changed] = substitutionSlips.build(paperJob(other));
  const lines = changed === undefined ? [] : wordsOf(changed);
  expect(lines).toContain('No spindle (screw): take spare spindle (screw)');
  expect(lines).toContain('New at P3: Hook the scale to the lever, 11 cm from the axis.');
  expect(lines.filter((line) => line.startsWith('New at P1'))).toEqual([]);
});

test('a table without its only part closes, and its groups go where there is more to find', () => {
  expect(slip('Without one of these the table closes: spindle (screw)').slice(0, 2)).toEqual([
    'Close table 5.',
    'Send its groups to table 1 and 2: there is more to find.',
  ]);
  expect(slip('Without one of these the table closes: oar (bar)')[1]).toBe(
    'Send its groups to table 2: there is more to find.',
  );
});

test('what nothing stands in for takes only its own setups with it', () => {
  expect(slip('No thole (wedge): nothing in the boxes stands in')).toEqual([
    'Leave out G1.',
    'All else stays as it is.',
  ]);
});
