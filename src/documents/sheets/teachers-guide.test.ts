import { expect, test } from 'vitest';
import { demoPrepared, paperJob, rowsOf, wordsOf } from '../../../test/documents/demo-prepared.ts';
import { answerKey } from './answer-key.ts';
import { dataCharts } from './data-chart.ts';
import { besideTheParts, neededText } from './equipment.ts';
import { sheetKinds } from './list.ts';
import { teachersGuide } from './teachers-guide.ts';

const prepared = demoPrepared();
const job = paperJob(prepared);
const [guide, hazards] = teachersGuide.build(job);
if (guide === undefined || hazards === undefined) throw new Error('no guide');
const words = wordsOf(guide);
const text = words.join('\n');

test('the night before takes twenty minutes and no more', () => {
  const minutes = words.flatMap((line) =>
    [...line.matchAll(/^(\d+) minutes/g)].map((match) => Number(match[1])),
  );
  expect(minutes.length).toBeGreaterThan(3);
  expect(minutes.reduce((sum, each) => sum + each, 0)).toBe(20);
});

test('the dry run is a trial reading with its good range', () => {
  expect(text).toContain('build table 1, setup L2, from its card. Pull and read. Good is 4.0 to 4.7 N.');
});

test('copies follow the groups and the adults of the visit', () => {
  const copies = (sheet: string) => rowsOf(guide).find(([first]) => first === sheet)?.[1];
  expect(copies('Answer key')).toBe('3');
  expect(copies('Key that re-keys itself')).toBe('3');
  expect(copies('Arrival check')).toBe('1');
});

test('charts are counted from those that are built: each level, the Spanish group apart', () => {
  const built = dataCharts.build(job);
  for (const level of [1, 2, 3]) {
    const same = built.filter(({ name }) => name.startsWith(`chart-level-${level}`));
    const row = rowsOf(guide).find(([first]) => first === same.map(({ title }) => title).join(' · '));
    expect(row?.[1]).toBe('5 + 1');
  }
  const one = paperJob(
    demoPrepared((found, file) =>
      file === 'activity' ? found.replace('age: 9..11', 'age: 9..11\nlevel: 2') : found,
    ),
  );
  const [plain] = teachersGuide.build(one);
  const charts =
    plain === undefined ? [] : rowsOf(plain).filter(([first]) => first?.startsWith('Data chart'));
  expect(charts.map(([title, copies]) => [title, copies])).toEqual([
    ['Data chart, level 2 · Tabla de datos, nivel 2', '5 + 1'],
  ]);
});

test('a sheet that is sent for is called by the title that it carries', () => {
  const titles = sheetKinds.flatMap(({ build }) => build(job).map(({ title }) => title));
  const listed = rowsOf(guide).filter((row) => row.length === 3 && /^\d( \+ \d)?$/.test(row[1] ?? ''));
  expect(listed.length).toBe(10);
  for (const [title] of listed) for (const one of (title ?? '').split(' · ')) expect(titles).toContain(one);
  for (const [, called] of text.matchAll(/(?:read|tick|on) the "([^"]+)"/g)) expect(titles).toContain(called);
  const reasons = answerKey.build(job).flatMap((sheet) => wordsOf(sheet));
  for (const [, called] of text.matchAll(/under "([^"]+)"/g)) expect(reasons).toContain(called);
});

test('nothing is spoken of that the kit does not have, and nothing is signed but on the hazard sheet', () => {
  expect(text).not.toMatch(/mallet|large type|front of|back of the key/i);
  expect(wordsOf(hazards).join('\n')).not.toMatch(/mallet/i);
  expect(words.filter((line) => /sign(ed|s)? it|Signed/.test(line))).toEqual([]);
});

test('the hardest force is the largest of all setups, pushes too', () => {
  const forces = job.sheet.tables.flatMap(({ setups }) =>
    setups.map(({ mark, prediction }) => ({ mark, force: prediction.pull?.value ?? 0 })),
  );
  const [most] = forces.sort((a, b) => b.force - a.force);
  expect(most?.mark).toBe('G2');
  expect(text).toContain(`The hardest here is the push at G2, about ${most?.force.toPrecision(2)} N.`);
});

test('tables with cords are built last, whatever their number', () => {
  const order = rowsOf(guide).filter(
    ([first, second]) => /^\d$/.test(first ?? '') && second?.startsWith('Table'),
  );
  expect(order).toHaveLength(7);
  expect(order.at(-1)?.[1]).toMatch(/^Table 6: The thole and the chock/);
});

test("every table has its pairs with both figures, and answers in this kit's numbers", () => {
  expect(words).toContain('L1 against L2: a longer arm asks for less. Expect 2.2 N and 4.4 N.');
  const book = rowsOf(guide).filter(([asks]) => asks === 'Why is it not the number in the book?');
  expect(book.length).toBe(5);
  expect(book[0]?.[1]).toMatch(/^At L1 the book says 2\.45 N \(250 g\), and here we expect 2\.2 N\. The bar/);
});

test('what the kit can not show is said with the number that shows it', () => {
  expect(text).toContain(
    'G1: it hardly beats bare hands: by the measures 5.38 N on the faces come from a push of 4.69 N, 1.1 times.',
  );
  expect(text).toMatch(
    /G2: this wedge asks for more than it gives \(a push of 8\.42 N for a side force of 7\.54 N\)\./,
  );
  expect(text).toMatch(/S3: not one exact number, for the friction of wood on wood is not known well/);
});

test('the six names stand in one table, with the tables of the day', () => {
  const six = rowsOf(guide).filter(([name]) =>
    ['Lever', 'Wheel and axle', 'Pulley', 'Inclined plane', 'Wedge', 'Screw'].includes(name ?? ''),
  );
  expect(six.map(([name, , , , here]) => `${name}: ${here}`)).toEqual([
    'Lever: table 1',
    'Wheel and axle: table 4',
    'Pulley: table 3',
    'Inclined plane: table 2',
    'Wedge: table 6',
    'Screw: table 5',
  ]);
});

test('the answer to "does it save work" is no, with the account of the setup that loses most', () => {
  const answer = words[words.indexOf('Does it save work?') + 1] ?? '';
  expect(answer).toMatch(/^No\. At S3 /);
  expect(answer).toContain('1.65 × 0.8 = 1.320 J');
  // 1.320 - 0.314 - 0.132, as they stand there.
  expect(answer).toContain('0.874 J are left over');
});

test('the pair that is praised differs in the machine and not in its load', () => {
  const answer = words[words.indexOf('Which two setups show it best?') + 1] ?? '';
  expect(answer).toMatch(/^S1 and S3: about 0\.60 N against 1\.65 N/);
});

test('the hazard sheet has glasses, cords, latex and an adult at the wedge, and a line to sign', () => {
  const row = (table: string) => rowsOf(hazards).find(([first]) => first?.startsWith(table));
  expect(row('Table 6:')).toEqual([
    'Table 6: The thole and the chock',
    'yes',
    'yes',
    '–',
    '–',
    'ask',
    'yes',
    'yes',
  ]);
  // A screw pinches, and nothing else.
  expect(row('Table 5:')).toEqual(['Table 5: The spindle', '–', '–', '–', '–', '–', 'yes', '–']);
  expect(row('Table 4:')?.[3]).toBe('1.5 kg');
  const lines = wordsOf(hazards);
  expect(lines.join('\n')).toMatch(/Local rules and the person in charge of the room come first/);
  expect(lines).toContain('Signed, in charge of the room');
});

test('without a visit the guide says "one a group" and has no size in its head', () => {
  const alone = paperJob({ ...prepared, visit: null });
  const [plain] = teachersGuide.build({ ...alone, sheet: { ...alone.sheet, visit: null } });
  const lines = plain === undefined ? [] : wordsOf(plain);
  expect(lines.join('\n')).toContain('one a group');
  expect(lines.join('\n')).not.toMatch(/^(Pupils|Groups|Date): /m);
});

test('what no box holds is named whole, as the packing list ends with it', () => {
  const line = words.find((each) => each.startsWith('No box holds these')) ?? '';
  for (const each of besideTheParts(job)) expect(line).toContain(neededText('en', each));
  expect(line).toContain('tray (7)');
});

test('where an adult has to stay is said in the plan, and that they are too few where they are', () => {
  expect(words).toContain(
    'An adult stays at table 6 while groups are there. The others walk with the "Carried page".',
  );
  const visit = prepared.visit;
  if (visit === null) throw new Error('no visit');
  const [wedge] = prepared.tables.filter(({ machine }) => machine === 'wedge');
  if (wedge === undefined) throw new Error('no wedge');
  const two = { ...prepared, visit: { ...visit, helpers: 0 }, tables: [wedge, { ...wedge, mark: '8' }] };
  const [alone] = teachersGuide.build(paperJob(two));
  if (alone === undefined) throw new Error('no guide');
  expect(wordsOf(alone).join('\n')).toContain(
    'That takes 2 adults, and there are 1: ask for another, or close a table.',
  );
});
