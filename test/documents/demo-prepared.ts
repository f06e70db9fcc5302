import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { isError } from '../../src/core/diagnostics/diagnostic.ts';
import { type Prepared, prepare } from '../../src/core/prepare.ts';
import { sheetIn } from '../../src/documents/pages/sheet-in.ts';
import { sheetOf } from '../../src/documents/prepare.ts';
import type { Block, Cell, SheetOfPaper } from '../../src/documents/sheets/block.ts';
import type { PaperJob } from '../../src/documents/sheets/paper-job.ts';

type Change = (text: string, file: 'kit' | 'activity' | 'visit') => string;

/** The demo of `examples/`, prepared; a file's text may be changed first. An error in it is a fault of the test. */
export function demoPrepared(changed: Change = (text) => text): Prepared {
  const prepared = demoAsFound(changed);
  const errors = prepared.diagnostics.filter(isError);
  if (errors.length > 0) throw new Error(JSON.stringify(errors, null, 2));
  return prepared;
}

/** The same with whatever is wrong in it. */
export function demoAsFound(changed: Change): Prepared {
  const file = (kind: 'kit' | 'activity' | 'visit', name: string) => ({
    name,
    text: changed(readFileSync(join('examples', 'brackwater', name), 'utf8'), kind),
  });
  return prepare({
    kit: file('kit', 'boathouse.kit.yaml'),
    activity: file('activity', 'harbour-day.activity.yaml'),
    visit: file('visit', 'harbour-day.visit.yaml'),
  });
}

/** What a builder of sheets is given, in English on A4 unless said otherwise. */
export const paperJob = (prepared: Prepared, own: Partial<PaperJob> = {}): PaperJob => ({
  prepared,
  sheet: sheetIn(own.languages?.key ?? 'en', sheetOf(prepared)),
  paper: 'a4',
  period: null,
  languages: { cards: 'en', key: 'en' },
  ...own,
});

/** Every word of a sheet in reading order, a line each: blocks and cells, alternative texts included. */
export const wordsOf = (sheet: SheetOfPaper): readonly string[] => sheet.blocks.flatMap(wordsOfBlock);

function wordsOfBlock(block: Block): readonly string[] {
  switch (block.block) {
    case 'title':
      return [block.text, block.about ?? '', ...block.facts.map(([name, value]) => `${name}: ${value}`)];
    case 'sign':
      return [block.word, block.mark, block.text, block.about];
    case 'heading':
    case 'text':
      return [block.text];
    case 'list':
    case 'steps':
    case 'ticks':
      return block.items;
    case 'care':
      return [block.word, ...block.items];
    case 'table':
      return [...block.head, ...block.rows.flatMap((row) => row.map(wordsOfCell))];
    case 'figure':
      return [block.alt, block.caption ?? ''];
    case 'columns':
      return block.columns.flatMap((blocks) => blocks.flatMap(wordsOfBlock));
    case 'together':
      return block.blocks.flatMap(wordsOfBlock);
    case 'tags':
      return block.tags.flatMap((blocks) => blocks.flatMap(wordsOfBlock));
    case 'slip':
      return [...block.strips.flatMap(({ blocks }) => blocks), ...block.adult].flatMap(wordsOfBlock);
    case 'line':
      return [block.name];
    case 'page-break':
    case 'space':
      return [];
  }
}

export function wordsOfCell(cell: Cell): string {
  if (typeof cell === 'string') return cell;
  if ('svg' in cell) return cell.alt;
  return 'tick' in cell ? cell.tick : `${cell.text} ${cell.note ?? ''}`.trim();
}

/** All rows of all tables of a sheet, cells as words, in the order of the page. */
export const rowsOf = (sheet: SheetOfPaper): readonly (readonly string[])[] =>
  sheet.blocks.flatMap(rowsOfBlock);

function rowsOfBlock(block: Block): readonly (readonly string[])[] {
  switch (block.block) {
    case 'table':
      return block.rows.map((row) => row.map(wordsOfCell));
    case 'together':
      return block.blocks.flatMap(rowsOfBlock);
    case 'columns':
      return block.columns.flatMap((blocks) => blocks.flatMap(rowsOfBlock));
    case 'slip':
      return [...block.strips.flatMap(({ blocks }) => blocks), ...block.adult].flatMap(rowsOfBlock);
    default:
      return [];
  }
}
