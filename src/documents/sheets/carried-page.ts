import { arrivalCheckOf } from '../../core/calibration/arrival-check.ts';
import { movesTheKey, type RekeyRow, rekeyTable } from '../../core/calibration/rekey-table.ts';
import type { PreparedTable } from '../../core/prepare.ts';
import { decimalText } from '../../core/quantities/print-quantity.ts';
import type { Predicted } from '../../core/setups/difference.ts';
import { trimmed } from '../printing/quantity-text.ts';
import { stepDecimals } from '../printing/reading-text.ts';
import { type Language, languagePack } from '../sentences/language.ts';
import { hasSentence } from '../sentences/sentence.ts';
import { causeName } from '../text/cause-text.ts';
import { capital } from '../text/key-table.ts';
import { goodRangeOf, outcomeShort } from '../text/prediction-text.ts';
import type { Block, Cell } from './block.ts';
import { type CarriedLine, isGoodInARow, linesOf } from './carried-lines.ts';
import type { SheetKind } from './paper-job.ts';
import type { Say } from './say.ts';
import { tableHeading } from './table-heading.ts';
import { notPreparedBlocks, sheetForAdults } from './visit-sheet.ts';

/** More printed ranges than this do not stand side by side beside the name of their table. */
const SETUPS_A_LINE = 4;

/** Share of the width that the name of a row has, beside that of all ranges together: about 14 mm. */
const NAME_OF_ROW = 0.12;

/** Height of a line that is written by hand, millimetres. */
const ROOM_TO_WRITE = 6.5;

const NO_BREAK = '\u00a0';

/**
 * One page to carry from table to table: what is good, and for the numbers that give their cause away
 * what it is and what to say. A group is never accused: it is asked to read once more, and told why.
 */
export const carriedPage: SheetKind = {
  name: 'carried',
  of: 'visit',
  build: (job) => [
    sheetForAdults(job, {
      name: 'carried-page',
      title: 'sheet.carried',
      about: 'sheet.carried.about',
      // Who walks about has one hand for it: one side, wherever type that can be read allows.
      mostSides: 1,
      blocks: (say, language) => {
        const tables = job.prepared.tables.map(carriedTable);
        return [
          // Before the tables: as the last line of the page it would be the first to fall off it.
          { block: 'text', text: rulesText(tables, say), tone: 'small' },
          ...tables.map((table) => tableBlock(table, language, say)),
        ];
      },
    }),
  ],
};

/** A table of the kit as it is carried. */
interface CarriedTable {
  readonly table: PreparedTable;
  readonly lines: readonly CarriedLine[];
  /** The rows that one may ring for it; none where its key stays as printed, or follows its reading already. */
  readonly rows: readonly RekeyRow[];
}

function carriedTable(table: PreparedTable): CarriedTable {
  const { setups } = table;
  const isFollowed = setups.some(({ prediction }) => prediction.rekeyedBy !== null);
  const arrival = isFollowed ? null : arrivalCheckOf(setups);
  const rekeyed = arrival === null ? null : rekeyTable(setups, arrival);
  const rows = rekeyed !== null && movesTheKey(rekeyed, setups) ? rekeyed.rows : [];
  return { table, lines: linesOf(table), rows };
}

/** What holds at every table: today's ranges, a number that may be good today, any other number. */
function rulesText(tables: readonly CarriedTable[], say: Say): string {
  const isMoved = tables.some(({ rows }) => rows.length > 0);
  const mayBeGood = tables.some(({ lines, rows }) =>
    lines.some(({ figures }) => figures.some((figure) => isGoodInARow(rows, figure))),
  );
  return [
    ...(isMoved ? [say('sheet.carried.today-is')] : []),
    ...(mayBeGood ? [say('sheet.carried.may-be-good-is')] : []),
    say('sheet.carried.foot'),
  ].join(' ');
}

function tableBlock({ table, lines, rows }: CarriedTable, language: Language, say: Say): Block {
  const isMoved = rows.length > 0;
  return {
    block: 'together',
    blocks: [
      {
        block: 'columns',
        // Four ranges side by side want the room that three leave to the name.
        shares: !isMoved ? [9, 11] : table.setups.length < SETUPS_A_LINE ? [6, 14] : [4.2, 15.8],
        columns: [
          [{ block: 'heading', level: 2, text: tableHeading(language, table) }],
          isMoved
            ? goodAndToday(table, rows, language, say)
            : [{ block: 'text', text: goodText(table, language, say), tone: 'strong' }],
        ],
      },
      ...notPreparedBlocks(say, table.notPrepared),
      lines.length === 0
        ? { block: 'text', text: say('sheet.carried.no-figures') }
        : {
            block: 'table',
            head: ['wrote', 'likely', 'say'].map((column) => say(`sheet.carried.${column}`)),
            rows: lines.map((line): readonly Cell[] => [
              { text: figuresText(line, rows, language, say), strong: true },
              causesText(line.codes, language, say),
              whatToSay(line.codes, say, language),
            ]),
            widths: [2.9, 4.3, 3],
            size: 'small',
          },
    ],
  };
}

/** What is good at every setup of the table, in one line. */
const goodText = (table: PreparedTable, language: Language, say: Say): string =>
  say('sheet.carried.good', {
    ranges: table.setups
      // A range is not broken at the end of a line.
      .map((at) => goodAt(at, language, say).replaceAll(' ', NO_BREAK))
      .join(say('sheet.carried.between')),
  });

const goodAt = ({ setup, prediction }: Predicted, language: Language, say: Say): string =>
  goodRangeOf(prediction) === null && prediction.outcome.kind === 'ease'
    ? say('sheet.carried.ease', { setup: setup.mark, order: outcomeShort(language, prediction) })
    : say('sheet.carried.range', { setup: setup.mark, range: outcomeShort(language, prediction) });

/** The same as a table, a setup a column: under what is printed room for the range of the ringed row. */
function goodAndToday(
  { setups }: PreparedTable,
  rows: readonly RekeyRow[],
  language: Language,
  say: Say,
): readonly Block[] {
  const moving = new Set(rows.flatMap(({ good }) => good.map(({ setup }) => setup)));
  const lines = Math.ceil(setups.length / SETUPS_A_LINE);
  return Array.from({ length: lines }, (_, line): Block => {
    const some = setups.slice(line * SETUPS_A_LINE, (line + 1) * SETUPS_A_LINE);
    return {
      block: 'table',
      head: [say('sheet.carried.printed'), ...some.map((at) => goodAt(at, language, say))],
      rows: [
        [
          { text: say('sheet.carried.today'), strong: true },
          ...some.map(({ setup }) => say(moving.has(setup.mark) ? 'sheet.carried.blank' : 'sheet.none')),
        ],
      ],
      widths: [NAME_OF_ROW * some.length, ...some.map(() => 1)],
      rowHeight: ROOM_TO_WRITE,
      size: 'small',
    };
  });
}

/** "about 220 at L1, 440 at L2", or that the pointer stays on its stop. */
function figuresText(
  { figures }: CarriedLine,
  rows: readonly RekeyRow[],
  language: Language,
  say: Say,
): string {
  const { decimal } = languagePack(language);
  const isStopped = figures.every(({ figure }) => figure.number === null);
  if (isStopped) return say('sheet.carried.stays', { setups: figures.map(({ setup }) => setup) });
  return say('sheet.carried.about-figures', {
    figures: figures
      .map((each) => {
        const { number, marks } = each.figure;
        const written = trimmed(decimalText(number ?? 0, stepDecimals(marks), decimal));
        return say('sheet.carried.figure', {
          number: isGoodInARow(rows, each) ? say('sheet.carried.may-be-good', { number: written }) : written,
          setup: each.setup,
        });
      })
      .join(say('sheet.carried.and-figure')),
  });
}

const causesText = (codes: readonly string[], language: Language, say: Say): string =>
  capital(
    codes
      .map((code) => causeName(language, { code }))
      .reduce((all, each) => say('sheet.carried.or', { one: all, other: each })),
  );

/** What is said for each cause of the line, once where two want the same. */
const whatToSay = (codes: readonly string[], say: Say, language: Language): string =>
  [...new Set(codes.map((code) => remedyOf(code, say, language)))].reduce((all, each) =>
    say('sheet.carried.or', { one: all.replace(/\.$/, ''), other: each }),
  );

/** In a few words, as they are said in passing; the head of the column says that they then read once more. */
const remedyOf = (code: string, say: Say, language: Language): string => {
  const own = `sheet.carried.say.${code}`;
  if (hasSentence(language, own)) return say(own);
  if (code.startsWith('reading.in-')) return say('sheet.carried.say.unit');
  return say(/hole|counted-from/.test(code) ? 'sheet.carried.say.holes' : 'sheet.carried.say.card');
};
