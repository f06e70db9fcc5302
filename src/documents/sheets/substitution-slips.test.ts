import { expect, test } from 'vitest';
import { demoPrepared, paperJob, rowsOf, wordsOf } from '../../../test/documents/demo-prepared.ts';
import { arrivalCheckOf } from '../../core/calibration/arrival-check.ts';
import { substitutionsOf } from '../../core/substitute.ts';
import { outcomeShort } from '../text/prediction-text.ts';
import type { Block } from './block.ts';
import type { PaperJob } from './paper-job.ts';
import { substitutionSlips } from './substitution-slips.ts';

const prepared = demoPrepared();
const job = paperJob(prepared);
const slipsOf = (of: PaperJob): readonly Extract<Block, { block: 'slip' }>[] => {
  const inside = (block: Block): readonly Extract<Block, { block: 'slip' }>[] =>
    block.block === 'slip' ? [block] : block.block === 'together' ? block.blocks.flatMap(inside) : [];
  return substitutionSlips.build(of).flatMap(({ blocks }) => blocks.flatMap(inside));
};
const [sheet] = substitutionSlips.build(job);
if (sheet === undefined) throw new Error('no slips');
const words = wordsOf(sheet);
const slips = slipsOf(job);
const found = substitutionsOf(prepared);

const linesOf = (blocks: readonly Block[]): readonly string[] => wordsOf({ ...sheet, blocks });
const isOf = (heading: string) => (each: (typeof slips)[number]) => linesOf(each.adult).includes(heading);

/** Both halves of the slip with that heading for the adult: the group's in English, and the adult's. */
function slip(heading: string, among = slips): { group: readonly string[]; adult: readonly string[] } {
  const one = among.find(isOf(heading));
  if (one === undefined) throw new Error(`no slip "${heading}"`);
  const strip = one.strips.find(({ language }) => language === 'en');
  return { group: linesOf(strip?.blocks ?? []), adult: linesOf(one.adult) };
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

test('the half for the group tells what is done otherwise and nothing of what will be read', () => {
  expect(slips.length).toBeGreaterThan(10);
  for (const { strips, adult } of slips) {
    // One group of the demo reads Spanish.
    expect(strips.map(({ language }) => language)).toEqual(['en', 'es']);
    const told = strips.flatMap(({ blocks }) => linesOf(blocks));
    expect(told.join(' ')).not.toMatch(/Good now|\d to \d|\d a \d/);
    for (const block of adult.filter((each) => each.block === 'table'))
      for (const [, now] of rowsOf({ ...sheet, blocks: [block] })) expect(told).not.toContain(now);
  }
});

test('another scale says where it ends, and which setup it can not show', () => {
  const { group, adult } = slip('No amber (spring scale): take moss (spring scale)');
  expect(group).toContain('No amber (spring scale) today. Take moss (spring scale).');
  expect(group).toContain('It ends at 2.5 N. Never pull past its last mark.');
  expect(group).toContain('Leave out L2.');
  expect(adult).toContain('Leave out L2.');
});

test('a smaller load that gives only a few marks is said to show less, to the adult', () => {
  const { group, adult } = slip('No W1500 (weight): take W300 (weight)');
  expect(adult).toContain('It is of another size: only the key below holds. Build as on the card.');
  expect(adult).toContain('At C1 it shows less well: a reading of only a few graduations.');
  expect(group.slice(2)).toEqual(['Build as on the card.']);
});

test('where the trial reading is made with the lost part, arrival check and re-keying key are skipped', () => {
  const skip = 'Skip the arrival check and the re-keying key for this table.';
  let kept = 0;
  for (const each of found.filter(({ closes }) => !closes)) {
    const table = prepared.tables.find(({ mark }) => mark === each.table);
    const arrival = table === undefined ? null : arrivalCheckOf(table.setups);
    const changed = [...(each.substitute === null ? [] : each.concerns), ...each.without];
    const heading = slips.find(({ adult }) =>
      linesOf(adult).some(
        (line) =>
          line.startsWith(`No ${each.missing} (`) &&
          line.includes(each.substitute === null ? 'nothing in the boxes' : `take ${each.substitute} (`),
      ),
    );
    if (heading === undefined) continue;
    const isHit = arrival !== null && changed.includes(arrival.setup.mark);
    expect(linesOf(heading.adult).includes(skip), each.missing).toBe(isHit);
    if (!isHit) kept += 1;
  }
  expect(kept).toBeGreaterThan(0);
  expect(linesOf(slips.flatMap(({ adult }) => adult))).toContain(skip);
});

test('of two parts that can stand in, each slip says whether it is the first choice, and why', () => {
  const spares = `  W490: { part: weight, of: 490 g, spare: yes, box: lead box }
  W1:`;
  const two = paperJob(
    demoPrepared((text, file) => (file === 'kit' ? text.replace(/^ {2}W1(?=00: )/m, spares) : text)),
  );
  const many = slipsOf(two);
  const choices = many
    .map(({ adult }) => linesOf(adult))
    .filter((lines) => lines.some((line) => /^(First|Second) choice/.test(line)));
  expect(choices.length).toBeGreaterThan(1);
  expect(choices.length % 2).toBe(0);
  const lines = slip('No W500 (weight): take W490 (weight)', many).adult;
  expect(lines).toContain('First choice: W300 fits less well.');
  expect(slip('No W500 (weight): take W300 (weight)', many).adult).toContain(
    'Second choice, if W490 is gone too: it fits less well.',
  );
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
  const lines = slip('No spindle (screw): take spare spindle (screw)', slipsOf(paperJob(other))).group;
  expect(lines).toContain('New at P3: Hook the scale to the lever, 11 cm from the axis.');
  expect(lines.filter((line) => line.startsWith('New at P1'))).toEqual([]);
});

test('a table without its only part closes, and the adult sends its groups where there is more to find', () => {
  const { group, adult } = slip('Without one of these the table closes: spindle (screw)');
  expect(adult.slice(2)).toEqual([
    'Close table 5.',
    'Send its groups to table 1 and 2: there is more to find.',
  ]);
  expect(group.slice(1)).toEqual(['This table is closed today.', 'Ask an adult where to go.']);
  expect(slip('Without one of these the table closes: oar (bar)').adult).toContain(
    'Send its groups to table 2: there is more to find.',
  );
});

test('what nothing stands in for takes only its own setups with it', () => {
  const { group, adult } = slip('No thole (wedge): nothing in the boxes stands in');
  expect(group.slice(1)).toEqual(['No thole (wedge) today.', 'Leave out G1.', 'All else stays as it is.']);
  expect(adult).toEqual(expect.arrayContaining(['Leave out G1.', 'All else stays as it is.']));
});
