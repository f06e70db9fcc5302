import { expect, test } from 'vitest';
import { pdfOfSheet } from '../../src/cli/typesetter/pdf-of-sheet.ts';
import type { Prepared } from '../../src/core/prepare.ts';
import type { Period } from '../../src/core/rotation/class-period.ts';
import type { Language } from '../../src/documents/sentences/language.ts';
import type { Paper, SheetOfPaper } from '../../src/documents/sheets/block.ts';
import { sheetKinds } from '../../src/documents/sheets/list.ts';
import { crowdedPrepared } from '../documents/crowded.ts';
import { demoPrepared, paperJob } from '../documents/demo-prepared.ts';
import { crowdedPeriod, dayOf, demoPeriod, smallPeriod } from '../documents/made-period.ts';
import { readPdf } from './poppler.ts';

const PAPERS = ['a4', 'us-letter'] as const;
const KINDS = ['rotation', 'poster', 'routes', 'visitors', 'posts'];
const demo = demoPrepared();
const crowded = crowdedPrepared();

const sheetsOf = (
  prepared: Prepared,
  period: Period,
  paper: Paper,
  language: Language = 'en',
): readonly SheetOfPaper[] =>
  sheetKinds
    .filter(({ name }) => KINDS.includes(name))
    .flatMap(({ build }) =>
      build(paperJob(prepared, { period, paper, languages: { cards: language, key: language } })),
    );
const plain = (text: string): string => text.replace(/\s+/g, ' ');

for (const paper of PAPERS)
  test(`on ${paper} every sheet of a rotation is tagged, with its fonts, and as long as it should be`, (context) => {
    for (const [prepared, period] of [
      [demo, demoPeriod()],
      [crowded, crowdedPeriod()],
      [demo, smallPeriod()],
    ] as const)
      for (const sheet of sheetsOf(prepared, dayOf(period), paper)) {
        const read = readPdf(pdfOfSheet(sheet), context);
        expect([sheet.name, read.isTagged, read.title]).toEqual([sheet.name, true, sheet.title]);
        expect(
          read.fonts.filter(({ name, isEmbedded }) => !isEmbedded || !/AtkinsonHyperlegible/.test(name)),
        ).toEqual([]);
        const most = { 'rotation-chart': 2, 'rotation-poster': 1, 'rotation-notes': 2, 'adult-posts': 1 };
        const pages = Object.entries(most).find(([name]) => name === sheet.name)?.[1] ?? 6;
        expect([sheet.name, read.pages <= pages]).toEqual([sheet.name, true]);
      }
  });

test('headings of a rotation begin at the first level and skip none; every table has cells that head it', (context) => {
  for (const sheet of sheetsOf(demo, dayOf(demoPeriod()), 'a4').filter(({ name }) => !name.endsWith('-es'))) {
    const { structure } = readPdf(pdfOfSheet(sheet), context);
    const levels = [...structure.matchAll(/^\s*H(\d)\b/gm)].map(([, level]) => Number(level));
    expect([sheet.name, levels[0]]).toEqual([sheet.name, 1]);
    levels.forEach((level, n) => {
      expect([sheet.name, n, level <= (levels[n - 1] ?? 0) + 1]).toEqual([sheet.name, n, true]);
    });
    for (const table of structure.split(/^\s*Table \(block\)/m).slice(1))
      expect([sheet.name, /^\s*TH\b/m.test(table)]).toEqual([sheet.name, true]);
  }
});

test('the chart on paper says all of its visits to whoever hears it', (context) => {
  const [chart] = sheetsOf(demo, dayOf(demoPeriod()), 'a4');
  if (chart === undefined) throw new Error('no chart');
  const { structure } = readPdf(pdfOfSheet(chart), context);
  expect(plain(structure)).toContain('Figure');
  const alt = JSON.stringify(chart.blocks.filter(({ block }) => block === 'figure'));
  expect(alt.match(/table \d( from|,)/g)?.length ?? 0).toBeGreaterThanOrEqual(42);
});

test('Spanish sheets of a rotation are Spanish all through', (context) => {
  for (const sheet of sheetsOf(demo, dayOf(demoPeriod()), 'a4', 'es')) {
    const words = plain(readPdf(pdfOfSheet(sheet), context).text.join(' '));
    expect(sheet.language).toBe('es');
    expect(words, sheet.name).not.toMatch(/\b(the|with|which|table|group|wait|adult|stand|bell)\b/i);
  }
});

test('data charts have as many pages with their route as without', (context) => {
  const charts = sheetKinds.filter(({ name }) => name === 'charts');
  const pagesOf = (period: Period | null): readonly (readonly [string, number])[] =>
    charts.flatMap(({ build }) =>
      build(paperJob(demo, { period })).map(
        (sheet) => [sheet.name, readPdf(pdfOfSheet(sheet), context).pages] as const,
      ),
    );
  expect(pagesOf(dayOf(demoPeriod()))).toEqual(pagesOf(null));
});
