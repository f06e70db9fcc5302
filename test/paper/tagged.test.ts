import { inflateSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { pdfOfSheet } from '../../src/cli/typesetter/pdf-of-sheet.ts';
import { sheetKinds } from '../../src/documents/sheets/list.ts';
import { demoPrepared, paperJob } from '../documents/demo-prepared.ts';
import { dayOf, demoPeriod } from '../documents/made-period.ts';
import { readPdf } from './poppler.ts';

/*
 * ISO 14289-1 (PDF/UA-1): the part of it that a program can check without a validator, by what poppler
 * reads and by the objects of the file. Whether a text for a drawing says the right thing, a person judges.
 */
const job = paperJob(demoPrepared(), {
  languages: { cards: 'es', key: 'en' },
  period: dayOf(demoPeriod()),
});
const byKind = sheetKinds.map(({ build }) => build(job));
const sheets = byKind.flat();

/** All objects of a PDF as text; streams that are not deflated text add nothing. */
function objectsOf(pdf: Uint8Array): string {
  const file = Buffer.from(pdf);
  const plain = file.toString('latin1');
  const inflated = [...plain.matchAll(/\bstream\r?\n/g)].flatMap((start) => {
    if (plain.slice(start.index - 3, start.index) === 'end') return [];
    const from = start.index + start[0].length;
    try {
      return [inflateSync(file.subarray(from, plain.indexOf('endstream', from))).toString('latin1')];
    } catch {
      return [];
    }
  });
  return [plain, ...inflated].join('\n');
}

const countOf = (text: string, what: RegExp): number => text.match(what)?.length ?? 0;

test('every sheet says that it is PDF/UA-1, its title and its language, and shows its title', () => {
  for (const sheet of sheets) {
    const objects = objectsOf(pdfOfSheet(sheet));
    expect([sheet.name, countOf(objects, /<pdfuaid:part>1<\/pdfuaid:part>/g)]).toEqual([sheet.name, 1]);
    expect(objects).toMatch(/\/MarkInfo\s*<<[^>]*\/Marked true/);
    expect(objects).toMatch(/\/DisplayDocTitle true/);
    // A part in another language (the group's half of a slip) says so on itself.
    const catalog = /\/Type\s*\/Catalog(?:(?!endobj)[\s\S])*?\/Lang\s*\((\w+)\)/.exec(objects);
    expect([sheet.name, catalog?.[1]]).toEqual([sheet.name, sheet.language]);
  }
});

test('every drawing on a sheet has a text of its own', () => {
  const drawn = sheets.map((sheet) => {
    const objects = objectsOf(pdfOfSheet(sheet));
    const figures = countOf(objects, /\/S\s*\/Figure\b/g);
    const texts = countOf(objects, /\/S\s*\/Figure\b(?:(?!\bendobj\b)[\s\S])*?\/Alt\s*[(<]/g);
    expect([sheet.name, texts]).toEqual([sheet.name, figures]);
    return figures;
  });
  expect(drawn.reduce((sum, each) => sum + each, 0)).toBeGreaterThan(20);
});

test('headings begin at the first level and skip none; every table has cells that head it', (context) => {
  // Poppler takes long over tags: of each kind of sheet the first; those of the rotation have a test of their own.
  const first = byKind.flatMap((ofOneKind) => ofOneKind.slice(0, 1));
  for (const sheet of first.filter(
    ({ name }) => !/^(rotation|group-routes|table-visitors|adult-posts)/.test(name),
  )) {
    const { structure } = readPdf(pdfOfSheet(sheet), context);
    const levels = [...structure.matchAll(/^\s*H(\d)\b/gm)].map(([, level]) => Number(level));
    expect([sheet.name, levels[0]]).toEqual([sheet.name, 1]);
    levels.forEach((level, n) => {
      expect([sheet.name, n, level <= (levels[n - 1] ?? 0) + 1]).toEqual([sheet.name, n, true]);
    });
    const tables = structure.split(/^\s*Table \(block\)/m).slice(1);
    for (const table of tables) expect([sheet.name, /^\s*TH\b/m.test(table)]).toEqual([sheet.name, true]);
  }
});
