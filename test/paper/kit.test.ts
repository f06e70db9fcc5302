import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { pdfOfSheet } from '../../src/cli/typesetter/pdf-of-sheet.ts';
import { preparedForCards } from '../../src/core/prepare-cards.ts';
import type { Block, Paper, SheetOfPaper } from '../../src/documents/sheets/block.ts';
import { sheetKinds } from '../../src/documents/sheets/list.ts';
import { crowdedPrepared } from '../documents/crowded.ts';
import { demoPrepared, paperJob } from '../documents/demo-prepared.ts';
import { readPdf } from './poppler.ts';

const PAPERS = ['a4', 'us-letter'] as const;
const kindsOf = (...names: readonly string[]) => sheetKinds.filter(({ name }) => names.includes(name));
const sheetsOf = (prepared: ReturnType<typeof demoPrepared>, paper: Paper, ...names: readonly string[]) => {
  const job = paperJob(preparedForCards(prepared), { paper });
  return kindsOf(...names).flatMap(({ build }) => build(job));
};
const demo = demoPrepared();
const KIT = ['cards', 'signs', 'labels', 'tags', 'packing'] as const;
const ours = { a4: sheetsOf(demo, 'a4', ...KIT), 'us-letter': sheetsOf(demo, 'us-letter', ...KIT) };
const card = (n: number): SheetOfPaper => {
  const sheet = ours.a4.find(({ name }) => name === `card-${n}`);
  if (sheet === undefined) throw new Error(`no card ${n}`);
  return sheet;
};
const pdfOf = (sheet: SheetOfPaper) => Buffer.from(pdfOfSheet(sheet));

/** Figures of a sheet wherever they stand, in the order of the page. */
const figuresIn = (blocks: readonly Block[]): readonly Extract<Block, { block: 'figure' }>[] =>
  blocks.flatMap((block) => {
    if (block.block === 'figure') return [block];
    if (block.block === 'together') return figuresIn(block.blocks);
    return block.block === 'columns' ? block.columns.flatMap(figuresIn) : [];
  });

for (const paper of PAPERS)
  test(`on ${paper} every laminated sheet is tagged, carries its fonts, and a card fits two sides`, (context) => {
    for (const sheet of ours[paper]) {
      const read = readPdf(pdfOf(sheet), context);
      const upright = paper === 'a4' ? 'A4' : 'letter';
      expect([sheet.name, read.isTagged, read.title]).toEqual([sheet.name, true, sheet.title]);
      expect(read.size).toContain(sheet.isLandscape === true && paper !== 'a4' ? '' : upright);
      expect(read.fonts.length).toBeGreaterThan(0);
      expect(
        read.fonts.filter((font) => !font.isEmbedded || !/AtkinsonHyperlegible/.test(font.name)),
      ).toEqual([]);
      if (sheet.name.startsWith('card-')) expect(read.pages).toBeLessThanOrEqual(2);
      if (sheet.name.startsWith('sign-')) expect(read.pages).toBe(1);
    }
  });

for (const paper of PAPERS)
  test(`on ${paper} a Spanish card fits two sides too`, (context) => {
    const job = paperJob(preparedForCards(demo), { paper, languages: { cards: 'es', key: 'en' } });
    const cards = kindsOf('cards')
      .flatMap(({ build }) => build(job))
      .filter(({ name }) => /^card-\d/.test(name));
    expect(cards).toHaveLength(7);
    for (const sheet of cards) {
      expect(sheet.language).toBe('es');
      expect(readPdf(pdfOf(sheet), context).pages, sheet.name).toBeLessThanOrEqual(2);
    }
  });

for (const paper of PAPERS)
  test(`on ${paper} four setups, two of them for groups that wait, still fit two sides`, (context) => {
    const four = demoPrepared((text, file) =>
      file !== 'activity'
        ? text
        : text.replace(/ {6}- setup: L1\n(?: {8}.*\n)+/, (setup) => {
            const more = setup
              .replace(/\bL1/, 'M1')
              .replace(/ {8}load at: hole 3\n/, '        load at: hole 4\n');
            return `${setup}${more}        more to find: yes\n`;
          }),
    );
    const [first] = sheetsOf(four, paper, 'cards');
    if (first === undefined) throw new Error('no card');
    expect(JSON.stringify(first).match(/"Setup [LM]\d"/g)).toHaveLength(4);
    expect(JSON.stringify(first)).toContain('More to find');
    expect(readPdf(pdfOf(first), context).pages).toBeLessThanOrEqual(2);
  });

test('text stays text, in reading order: name, what it is, what lies there, care, setups, start', (context) => {
  const words = readPdf(pdfOf(card(1)), context).said;
  const places = [
    'The oar that lifts',
    'A stiff bar on a pin.',
    'On this table',
    'TAKE CARE',
    'Setup L1',
    'Put the pin through hole 5.',
    'Hook the scale into hole 9.',
    'Setup L2',
    'Hook the scale into hole 7.',
    'When you are done',
  ].map((each) => words.indexOf(each));
  expect(places).not.toContain(-1);
  expect([...places].sort((a, b) => a - b)).toEqual(places);
});

test('a drawing lies on the page at the size that its scale is true for', (context) => {
  for (const n of [1, 4, 5]) {
    const boxes = [
      ...readPdf(pdfOf(card(n)), context).structure.matchAll(/\/BBox \[([\d.]+) [\d.]+ ([\d.]+) [\d.]+\]/g),
    ];
    const widths = boxes.map(([, left, right]) => ((Number(right) - Number(left)) / 72) * 25.4);
    const figures = figuresIn(card(n).blocks);
    expect(widths).toHaveLength(figures.length);
    widths.forEach((width, k) => {
      expect(Math.abs(width - (figures[k]?.width ?? 0))).toBeLessThan(0.05);
      expect(figures[k]?.svg).toContain(`width="${figures[k]?.width}mm"`);
    });
  }
});

test('holes measured in the drawing, times its scale, are as far apart as in the kit file', () => {
  const kit = readFileSync('examples/brackwater/boathouse.kit.yaml', 'utf8');
  const oar = /^ {2}oar:\n(?: {4}.*\n)+/m.exec(kit)?.[0] ?? '';
  const centimetres = (field: string) => Number(new RegExp(`${field}: ([\\d.]+) cm`).exec(oar)?.[1]);
  expect([centimetres('hole spacing'), centimetres('length')]).toEqual([5, 60]);
  for (const { svg } of figuresIn(card(1).blocks)) {
    const scale = Number(/Scale 1 : ([\d.]+)/.exec(svg)?.[1]);
    const centres = [...svg.matchAll(/<circle cx="(-?[\d.]+)" cy="0" r="0.55"/g)].map((match) =>
      Number(match[1]),
    );
    const holes = [...new Set(centres)].sort((a, b) => a - b);
    expect(holes).toHaveLength(11);
    holes.slice(1).forEach((x, n) => {
      expect((((x - (holes[n] ?? 0)) * scale) / 10).toFixed(1)).toBe(centimetres('hole spacing').toFixed(1));
    });
    const widths = [...svg.matchAll(/d="M([^"]*)Z" stroke-width="0.5"/g)].map(([, outline = '']) => {
      const xs = outline.split('L').map((point) => Number(point.split(' ')[0]));
      return Math.max(...xs) - Math.min(...xs);
    });
    expect(((Math.max(...widths) * scale) / 10).toFixed(1)).toBe(centimetres('length').toFixed(1));
  }
});

test('the holes that the steps name are those that the drawing marks', () => {
  const [first, second] = figuresIn(card(1).blocks);
  const bold = (svg: string | undefined) =>
    [...(svg ?? '').matchAll(/font-weight="700">(\d+)</g)].map((match) => match[1]);
  expect(bold(first?.svg)).toEqual(['3', '5', '9']);
  expect(bold(second?.svg)).toEqual(['3', '5', '7']);
});

test('the same kit for two schools: every laminated PDF is the same to the byte', () => {
  const elsewhere = demoPrepared((text, file) =>
    file !== 'visit'
      ? text
      : text
          .replace('2026-05-12', '2031-11-30')
          .replace(/place:.*/, 'gravity: 9.78 m/s²')
          .replace('groups: 6', 'groups: 12'),
  );
  const theirs = sheetsOf(elsewhere, 'a4', ...KIT);
  expect(theirs).toHaveLength(ours.a4.length);
  ours.a4.forEach((sheet, n) => {
    const other = theirs[n];
    expect(other !== undefined && pdfOf(other).equals(pdfOf(sheet))).toBe(true);
  });
});

for (const paper of PAPERS)
  test(`on ${paper} nothing is cut: nine tables, titles of 34 characters and long marks are all there`, (context) => {
    for (const sheet of sheetsOf(crowdedPrepared(), paper, 'cards', 'signs', 'labels', 'packing')) {
      const read = readPdf(pdfOf(sheet), context);
      const words = read.said;
      const title = sheet.blocks.find((block) => block.block === 'title' || block.block === 'sign');
      if (title !== undefined && 'text' in title) expect(words).toContain(title.text);
      if (sheet.name === 'part-labels' || sheet.name === 'packing-list')
        expect(words).toContain('ash oar loom from the whaling boat');
      if (sheet.name.startsWith('sign-')) expect(read.pages).toBe(1);
      if (sheet.name.startsWith('card-')) expect(read.pages).toBeLessThanOrEqual(2);
    }
  });
