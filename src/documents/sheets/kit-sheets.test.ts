import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import { crowdedPrepared } from '../../../test/documents/crowded.ts';
import {
  demoAsFound,
  demoPrepared,
  paperJob,
  rowsOf,
  wordsOf,
} from '../../../test/documents/demo-prepared.ts';
import { preparedForCards } from '../../core/prepare-cards.ts';
import { vocabulary } from '../../core/words.ts';
import { hasSentence } from '../sentences/sentence.ts';
import { expectedText, goodRangeOf, rangeText } from '../text/prediction-text.ts';
import type { SheetOfPaper } from './block.ts';
import { toldFields, toldKinds } from './kit-parts.ts';
import { sheetKinds } from './list.ts';
import { packingList } from './packing-list.ts';
import type { PaperJob } from './paper-job.ts';
import { partLabels } from './part-labels.ts';
import { scaleTags } from './scale-tags.ts';
import { tableCards } from './table-card.ts';
import { tableSigns } from './table-sign.ts';

const kinds = sheetKinds.filter(({ of }) => of === 'kit');
const jobOf = (prepared: ReturnType<typeof demoPrepared>): PaperJob => paperJob(preparedForCards(prepared));
const job = jobOf(demoPrepared());
const one = (sheets: readonly SheetOfPaper[]): SheetOfPaper => {
  const [sheet] = sheets;
  if (sheet === undefined) throw new Error('no sheet');
  return sheet;
};
const textOf = (sheet: SheetOfPaper): string => wordsOf(sheet).join('\n');
const cards = tableCards.build(job).filter(({ name }) => name.startsWith('card-'));

test('the five kinds of laminated sheets are there: cards, signs, labels, scale tags and packing list', () => {
  expect(kinds.map(({ name }) => name)).toEqual(['cards', 'signs', 'labels', 'tags', 'packing']);
});

test('another date, place and gravity, other groups, parts missing and other roles change no byte', () => {
  const elsewhere = demoAsFound((text, file) =>
    file !== 'visit'
      ? text
      : text
          .replace('2026-05-12', '2031-11-30')
          .replace(/place:.*/, 'gravity: 9.78 m/s²')
          .replace('groups: 6', 'groups: 12\nmissing: [teal, W500]')
          .replace('{ upper: block 1, lower: block 2 }', '{ upper: block 2, lower: block 1 }'),
  );
  expect(elsewhere.gravity?.gravity.value).toBe(9.78);
  const bytes = (of: PaperJob) => kinds.map(({ build }) => JSON.stringify(build(of)));
  expect(bytes(jobOf(elsewhere))).toEqual(bytes(job));
});

test('nothing of a visit stands on what is laminated', () => {
  for (const { build } of kinds)
    for (const sheet of build(job)) {
      expect(sheet.foot).toBe('Brackwater Boathouse, red kit (BB-03)');
      expect(textOf(sheet)).not.toMatch(/2026|54\.3|Group [A-F]\b/);
    }
});

test('a card says nothing of what will be read', () => {
  job.sheet.tables.forEach((table, n) => {
    const card = cards[n];
    if (card === undefined) throw new Error(`no card for table ${table.mark}`);
    const words = textOf(card);
    for (const { prediction, shows } of table.setups) {
      const good = goodRangeOf(prediction);
      if (good !== null) expect(words).not.toContain(rangeText('en', prediction, good));
      if (prediction.watched === 'pull') expect(words).not.toContain(`${expectedText('en', prediction)} N`);
      if (shows !== null) expect(words).not.toContain(shows);
    }
    expect(words).not.toMatch(/hatched|expected|Schoolbook/);
  });
});

test('a card lists what belongs on its table, with the sizes of the kit', () => {
  expect(textOf(cards[0] as SheetOfPaper)).toContain('oar: bar, 60 cm long, 11 holes');
  expect(textOf(cards[5] as SheetOfPaper)).toContain('chock: wedge, 120 mm long, 56 mm thick');
  expect(textOf(cards[5] as SheetOfPaper)).not.toContain('oar');
});

test('a setup that differs in little is told by its changes, under the numbers of the whole list', () => {
  const steps = JSON.stringify(cards[0]?.blocks);
  expect(steps).toContain('"Do it like L1. Change only this:"');
  expect(steps).toContain('"items":["Hook the scale into hole 7."],"numbers":[5]');
  expect(textOf(cards[5] as SheetOfPaper)).toContain('Take the wedge chock.');
});

test('what the setup before took is named again where a setup is like an earlier one', () => {
  // C2 takes the light load, and C3 is like C1: without a word the light load would stay on.
  expect(JSON.stringify(cards[3]?.blocks)).toContain(
    '"Do it like C1, with these steps:"},{"block":"steps","items":["Take the weight W1500.",',
  );
  expect(JSON.stringify(cards[1]?.blocks)).toContain(
    '"items":["Take the cart trolley.","Rest the board on pin 4, 80 cm from its low end."],"numbers":[1,2]',
  );
});

test('a scale is made ready when all that it pulls at stands, and before it is hooked on', () => {
  for (const { key, before, after } of [
    { key: 1, before: 'Rest the board on pin 1', after: "Hook the scale to the cart's string." },
    { key: 2, before: 'Hang the load from the lower block.', after: 'Hook the scale to the free end.' },
    { key: 6, before: 'Pull the line between stages 1 and 2 tight.', after: 'Hook the scale into hole 14.' },
  ]) {
    const words = textOf(cards[key] as SheetOfPaper);
    const places = [before, 'Set the pointer to 0', after].map((each) => words.indexOf(each));
    expect(places).not.toContain(-1);
    expect([...places].sort((a, b) => a - b)).toEqual(places);
  }
});

test('the steps call a weight the load, and the list of the table says which weight that is', () => {
  expect(textOf(cards[0] as SheetOfPaper)).toContain('W500: weight, 500 g (load)');
  expect(textOf(cards[0] as SheetOfPaper)).not.toContain('11 holes (load)');
});

test('the setups of a table are drawn to one scale, and each setup has its own picture or says whose', () => {
  for (const card of cards.filter(({ name }) => name !== 'card-7')) {
    const scales = [...JSON.stringify(card.blocks).matchAll(/Scale (\d[\d.]* : \d[\d.]*)</g)].map(
      (match) => match[1],
    );
    expect(new Set(scales).size).toBeLessThanOrEqual(1);
  }
});

test('three ticks and a picture without hand and load put each table back', () => {
  for (const card of cards) {
    const [ticks] = [...JSON.stringify(card.blocks).matchAll(/\{"block":"ticks","items":(\[.*?\])\}/g)];
    expect(JSON.parse(ticks?.[1] ?? '[]')).toHaveLength(3);
    const start = /The table at its start[^"]*"/.exec(JSON.stringify(card.blocks))?.[0] ?? '';
    expect(start).not.toBe('');
    expect(start).not.toMatch(/hangs|pull goes/);
  }
});

test('setups for groups that wait stand under their own heading, and their key on a sheet of its own', () => {
  const sheets = tableCards.build(job);
  const words = textOf(sheets[0] as SheetOfPaper);
  expect(words.indexOf('More to find')).toBeGreaterThan(words.indexOf('Setup L2'));
  expect(words.indexOf('More to find')).toBeLessThan(words.indexOf('Setup L3'));
  const key = sheets.find(({ name }) => name === 'more-to-find-key');
  if (key === undefined) throw new Error('no key');
  expect(rowsOf(key).map(([first]) => first)).toEqual(['L3 Table 1', 'S4 Table 2']);
  expect(rowsOf(key)[0]?.[1]).toMatch(/^\d\.\d to \d\.\d N$/);
  const nobodyWaits = demoPrepared((text) => text.replace(/ +more to find: yes\n/g, ''));
  expect(tableCards.build(jobOf(nobodyWaits)).map(({ name }) => name)).not.toContain('more-to-find-key');
});

test('a sign has the number, the name and the machine, and no lengths', () => {
  const [sign] = tableSigns.build(job);
  expect(sign?.blocks[0]).toEqual({
    block: 'sign',
    word: 'Table',
    mark: '1',
    text: 'The oar that lifts',
    about: 'Lever',
  });
  expect(sign?.isLandscape).toBe(true);
  expect(JSON.stringify(sign)).not.toMatch(/>20 cm<|Scale 1/);
});

test('every kind of part and every size that tells it has its word in both languages', () => {
  expect([...toldKinds].sort()).toEqual(vocabulary.partKinds.map(({ kind }) => kind).sort());
  for (const language of ['en', 'es'] as const) {
    expect(toldKinds.filter((kind) => !hasSentence(language, `sheet.kind.${kind}`))).toEqual([]);
    expect(toldFields.filter((field) => !hasSentence(language, `sheet.size.${field}`))).toEqual([]);
  }
});

test('every part has one label with its mark, its kit and the roles that it plays', () => {
  const tags = one(partLabels.build(job)).blocks.flatMap((block) =>
    block.block === 'tags' ? block.tags : [],
  );
  expect(tags).toHaveLength(job.prepared.kit?.parts.length ?? -1);
  const lines = (mark: string) =>
    tags
      .map((tag) => tag.map((block) => (block.block === 'text' ? block.text : '')))
      .find(([first]) => first === mark);
  expect(lines('oar')).toEqual([
    'oar',
    'bar, 60 cm long, 11 holes',
    'fits table 1, The oar that lifts',
    'Table 1: bar',
    'Kit BB-03',
    'Box: long bag',
  ]);
  // No table of the activity is a drag on the level, yet a cart may stand in for another cart.
  expect(lines('barrow')).toEqual(
    expect.arrayContaining(['fits: Drag and rolling', 'Is a cart lost? See its slip.']),
  );
  expect(lines('single')).toContain('spare');
});

/** What the kit file itself says of masses, read by another reader: grams by box, `null` where nothing is said. */
function gramsByBox(text: string): ReadonlyMap<string, readonly (number | null)[]> {
  const { parts } = parse(text) as { parts: Record<string, Record<string, string>> };
  const boxes = new Map<string, (number | null)[]>();
  for (const { box = '', weighs, mass, of } of Object.values(parts)) {
    const [, figure = '', unit] = /^([\d.]+) (k?g)\b/.exec(weighs ?? mass ?? of ?? '') ?? [];
    const grams = figure === '' ? null : Number(figure) * (unit === 'kg' ? 1000 : 1);
    boxes.set(box, [...(boxes.get(box) ?? []), grams]);
  }
  return boxes;
}

test('boxes of the packing list add up to what the kit file says, and a part that nobody weighed says so', () => {
  const unweighed = (text: string) => text.replace(/( {2}spindle:\n(?: {4}.*\n)*?) {4}weighs: .*\n/, '$1');
  const file = readFileSync('examples/brackwater/boathouse.kit.yaml', 'utf8');
  const boxes = gramsByBox(unweighed(file));
  const list = one(
    packingList.build(jobOf(demoPrepared((text, of) => (of === 'kit' ? unweighed(text) : text)))),
  );
  const totals = rowsOf(list)
    .filter((row) => row[3] === 'This box')
    .map((row) => row[4]);
  const expected = [...boxes.values()].map((masses) => {
    const sum = masses.reduce<number>((all, each) => all + (each ?? 0), 0);
    const unknown = masses.filter((each) => each === null).length;
    const text = sum < 1000 ? `${Number(sum.toPrecision(3))} g` : `${Number((sum / 1000).toPrecision(3))} kg`;
    return unknown === 0 ? text : `at least ${text}`;
  });
  expect(totals).toEqual(expected);
  expect(rowsOf(list).find((row) => row[2] === 'spindle')?.[4]).toBe('not weighed');
  expect(rowsOf(list).filter((row) => row[2] === 'single spare')).toHaveLength(1);
});

/** A number never stands alone at the end of a line: its unit is held by a space that does not break. */
const spaced = (text: string): string => text.replaceAll('\u00a0', ' ');

test('a scale tag: weight less reading upside down is the shift, half of it level, none hook down', () => {
  const tags = one(scaleTags.build(job)).blocks.flatMap((block) =>
    block.block === 'tags' ? block.tags : [],
  );
  expect(tags).toHaveLength(6);
  const [amber = []] = tags;
  // amber: 46 g, turn-over shift 0.21 N; 0.046 kg x 9.80665 m/s² = 0.451 N; 0.451 - 0.21 = 0.241 N.
  const words = amber.map((block) => (block.block === 'text' ? spaced(block.text) : '')).join('\n');
  expect(words).toContain('It weighs 0.45 N. Upside down it reads 0.24 N. Shift 0.21 N.');
  const [table] = amber.flatMap((block) => (block.block === 'table' ? [block] : []));
  expect(table?.rows.map((row) => row.slice(1).map((cell) => spaced(String(cell))))).toEqual([
    ['0.00 N', '0'],
    ['0.0525 N', '0.5'],
    ['0.105 N', '1.1'],
    ['0.21 N', '2.1'],
  ]);
});

test('whatever is checked with a pencil on a scale tag adds up to the printed digits', () => {
  const grams = demoPrepared((text, file) =>
    file !== 'kit'
      ? text
      : text
          .replace('range: 10 N\n    graduation: 0.2 N', 'range: 1000 gf\n    graduation: 10 gf')
          .replace(/ {4}turn-over shift: 0\.15 N ± 0\.02 N\n/, ''),
  );
  const tags = one(scaleTags.build(jobOf(grams))).blocks.flatMap((block) =>
    block.block === 'tags' ? block.tags : [],
  );
  // In hundred-thousandths, so that sums are of whole numbers; each unit by itself.
  const whole = (text: string): readonly number[] =>
    [...text.matchAll(/(\d+(?:\.\d+)?) (?:N|g)\b/g)].map((match) => Math.round(Number(match[1]) * 100000));
  let checked = 0;
  for (const tag of tags) {
    const words = tag.map((block) => (block.block === 'text' ? spaced(block.text) : '')).join('\n');
    const [, weight = '', reading = '', shift = ''] =
      /It weighs (.*?)\. Upside down it reads (.*?)\. Shift (.*?)\.$/m.exec(words) ?? [];
    const rows = tag.flatMap((block) => (block.block === 'table' ? block.rows : []));
    const [none = [], quarter = [], half = [], all = []] = rows.map((row) => whole(spaced(String(row[1]))));
    expect(whole(shift).length).toBeGreaterThan(0);
    whole(shift).forEach((less, n) => {
      expect((whole(weight)[n] ?? 0) - (whole(reading)[n] ?? 0)).toBe(less);
      expect([none[n], (quarter[n] ?? 0) * 4, (half[n] ?? 0) * 2, all[n]]).toEqual([0, less, less, less]);
      checked += 1;
    });
  }
  expect(checked).toBe(7);
});

test('a scale whose shift nobody measured says that it is assumed; one whose moving part is known does not', () => {
  const unknown = demoPrepared((text, file) =>
    file === 'kit' ? text.replace(/ {4}turn-over shift: 0\.15 N ± 0\.02 N\n/, '') : text,
  );
  const tags = one(scaleTags.build(jobOf(unknown))).blocks.flatMap((block) =>
    block.block === 'tags' ? block.tags.map((tag) => JSON.stringify(tag)) : [],
  );
  expect(tags.filter((tag) => tag.includes('Assumed')).map((tag) => /"text":"(\w+)"/.exec(tag)?.[1])).toEqual(
    ['moss'],
  );
});

test('nine tables with long names have nine cards and nine signs', () => {
  const crowded = jobOf(crowdedPrepared());
  expect(tableCards.build(crowded).filter(({ name }) => name.startsWith('card-'))).toHaveLength(9);
  expect(tableSigns.build(crowded)).toHaveLength(9);
});
