import { expect, test } from 'vitest';
import { pdfOfSheet } from '../../src/cli/typesetter/pdf-of-sheet.ts';
import type { Paper, SheetOfPaper } from '../../src/documents/sheets/block.ts';
import { sheetKinds } from '../../src/documents/sheets/list.ts';
import type { PaperJob } from '../../src/documents/sheets/paper-job.ts';
import { goodRangeOf, rangeText } from '../../src/documents/text/prediction-text.ts';
import { crowdedPrepared } from '../documents/crowded.ts';
import { demoPrepared, paperJob } from '../documents/demo-prepared.ts';
import { readPdf } from './poppler.ts';

const PAPERS = ['a4', 'us-letter'] as const;
const visitKinds = sheetKinds.filter(({ of }) => of === 'visit');
const sheetsOf = (job: PaperJob): readonly SheetOfPaper[] => visitKinds.flatMap(({ build }) => build(job));
const pdfOf = (sheet: SheetOfPaper) => pdfOfSheet(sheet);
const named = (sheets: readonly SheetOfPaper[], name: string): SheetOfPaper => {
  const sheet = sheets.find((each) => each.name === name);
  if (sheet === undefined) throw new Error(`no ${name}`);
  return sheet;
};
/** One space for any white space: a line ends where the paper does. */
const plain = (text: string): string => text.replace(/\s+/g, ' ');

/** Two groups are enough where charts are held to what every sheet has; twelve have a test of their own. */
const demo = demoPrepared((text, file) =>
  file === 'visit' ? text.replace('groups: 6', 'groups: 2').replace('{ F: es }', '{ B: es }') : text,
);
const ours: Readonly<Record<Paper, readonly SheetOfPaper[]>> = {
  a4: sheetsOf(paperJob(demo)),
  'us-letter': sheetsOf(paperJob(demo, { paper: 'us-letter' })),
};
const spanish = sheetsOf(paperJob(demo, { languages: { cards: 'es', key: 'es' } }));

test('every sheet of the visit is built, each under a name of its own', () => {
  const names = ours.a4.map(({ name }) => name);
  expect(new Set(names).size).toBe(names.length);
  expect(names).toEqual(
    expect.arrayContaining([
      'chart-level-1',
      'answer-key',
      're-keying-key',
      'arrival-check',
      'carried-page',
      'substitution-slips',
      'teachers-guide',
      'hazard-sheet',
    ]),
  );
});

for (const paper of PAPERS)
  test(`on ${paper} every sheet of the visit is tagged, on its paper, with its fonts and its foot`, (context) => {
    for (const sheet of ours[paper]) {
      const read = readPdf(pdfOf(sheet), context);
      expect([sheet.name, read.isTagged, read.title]).toEqual([sheet.name, true, sheet.title]);
      if (sheet.isLandscape !== true) expect(read.size).toContain(paper === 'a4' ? 'A4' : 'letter');
      expect(read.fonts.length).toBeGreaterThan(0);
      expect(
        read.fonts.filter(({ name, isEmbedded }) => !isEmbedded || !/AtkinsonHyperlegible/.test(name)),
      ).toEqual([]);
      const activity = sheet.language === 'es' ? 'Día de puerto' : 'Harbour day';
      for (const page of read.text)
        expect(plain(page)).toContain(`Brackwater Boathouse, red kit (BB-03) · ${activity} · 2026-05-12`);
    }
  });

test('a carried page of six tables is one page, and the hazard sheet is one page, on both papers', (context) => {
  const six = demoPrepared((text, file) =>
    file === 'activity'
      ? text.slice(0, text.indexOf('  - table: "7"'))
      : file === 'visit'
        ? text.replace(/^ {2}"7":.*\n/m, '')
        : text,
  );
  for (const paper of PAPERS) {
    const sheets = sheetsOf(paperJob(six, { paper }));
    expect(six.tables).toHaveLength(6);
    expect([paper, readPdf(pdfOf(named(sheets, 'carried-page')), context).pages]).toEqual([paper, 1]);
    expect([paper, readPdf(pdfOf(named(sheets, 'hazard-sheet')), context).pages]).toEqual([paper, 1]);
  }
});

test('the key and the arrival check fit the two sides of a sheet for each, reasons apart', (context) => {
  for (const paper of PAPERS) {
    expect(readPdf(pdfOf(named(ours[paper], 'answer-key')), context).pages).toBeLessThanOrEqual(5);
    expect(readPdf(pdfOf(named(ours[paper], 'arrival-check')), context).pages).toBeLessThanOrEqual(3);
  }
});

test('text stays text in reading order: the good ranges of the key in the order of the tables', (context) => {
  const said = plain(readPdf(pdfOf(named(ours.a4, 'answer-key')), context).said);
  let at = 0;
  let found = 0;
  for (const { setups } of demo.tables)
    for (const { setup, prediction } of setups) {
      const good = goodRangeOf(prediction);
      if (good === null) continue;
      const mark = said.indexOf(setup.mark, at);
      const range = said.indexOf(rangeText('en', prediction, good), mark);
      expect(mark, setup.mark).toBeGreaterThanOrEqual(at);
      expect(range, setup.mark).toBeGreaterThan(mark);
      at = range;
      found += 1;
    }
  expect(found).toBeGreaterThan(12);
});

test('a chart says nothing of what will be read, whoever looks into the file', (context) => {
  for (const sheet of ours.a4.filter(({ name }) => name.startsWith('chart-'))) {
    const read = readPdf(pdfOf(sheet), context);
    const words = plain(`${read.text.join(' ')} ${sheet.name === 'chart-level-2' ? read.structure : ''}`);
    for (const { setups } of demo.tables)
      for (const { prediction } of setups) {
        const good = goodRangeOf(prediction);
        if (good !== null) expect(words).not.toContain(rangeText('en', prediction, good));
      }
  }
});

test('each group has a chart that begins on a page of its own, with its label', (context) => {
  const charts = sheetsOf(paperJob(demoPrepared()));
  const read = readPdf(pdfOf(named(charts, 'chart-level-2')), context);
  const first = read.text.map(plain).filter((page) => page.includes('What we read'));
  expect(first.map((page) => /Group: (\w+)/.exec(page)?.[1])).toEqual(['A', 'B', 'C', 'D', 'E']);
  expect(read.pages % first.length).toBe(0);
});

test('Spanish sheets are Spanish all through, with decimal commas, where the activity is told in Spanish too', (context) => {
  for (const sheet of spanish) {
    const read = readPdf(pdfOf(sheet), context);
    const words = plain(read.text.join(' '));
    expect(sheet.language).toBe('es');
    expect(words, sheet.name).not.toMatch(/\b(the|with|which|table|setup|good|reading|load|pull)\b/i);
    expect(words.match(/\d\.\d+ (N|mm|J|vueltas)\b/g), sheet.name).toBeNull();
  }
});

for (const paper of PAPERS)
  test(`on ${paper} nothing is cut: nine tables, titles of 34 characters and long marks`, (context) => {
    const crowded = crowdedPrepared();
    expect(crowded.tables.map(({ title }) => title.length)).toEqual(Array.from({ length: 9 }, () => 34));
    const { visit } = crowded;
    const alone = { ...crowded, visit: visit === null ? null : { ...visit, groupLabels: ['A'] } };
    for (const sheet of sheetsOf(paperJob(alone, { paper }))) {
      const words = plain(readPdf(pdfOf(sheet), context).said);
      for (const { title } of crowded.tables) expect(words, sheet.name).toContain(title);
      expect(words).toContain('Brackwater Boathouse and Slipway, long red kit of the upper shed (BB-03)');
    }
  });

test('twelve groups have a chart each, over nine tables, in the language that each reads', (context) => {
  const sheets = sheetsOf(paperJob(crowdedPrepared()));
  const labels = (name: string, word: string) => {
    const words = plain(readPdf(pdfOf(named(sheets, name)), context).text.join(' '));
    return [...words.matchAll(new RegExp(`${word}: ([A-Z])\\b`, 'g'))].map((match) => match[1]).join('');
  };
  expect(labels('chart-level-1', 'Group')).toBe('ABCDEGHIJKL');
  expect(labels('chart-level-1-es', 'Grupo')).toBe('F');
});
