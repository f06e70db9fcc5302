import type { PreparedTable } from '../../core/prepare.ts';
import { decimalText } from '../../core/quantities/print-quantity.ts';
import { type TellingFigure, tellingFigures } from '../../core/readings/telling-figure.ts';
import { trimmed } from '../printing/quantity-text.ts';
import { stepDecimals } from '../printing/reading-text.ts';
import { type Language, languagePack } from '../sentences/language.ts';
import { hasSentence } from '../sentences/sentence.ts';
import { capital } from '../text/key-table.ts';
import { goodRangeOf, outcomeShort } from '../text/prediction-text.ts';
import { causeName } from '../text/review-table.ts';
import type { Block, Cell } from './block.ts';
import type { SheetKind } from './paper-job.ts';
import type { Say } from './say.ts';
import { notPreparedBlocks, sheetForAdults } from './visit-sheet.ts';

/** More lines a table than this nobody reads while walking. */
const LINES_A_TABLE = 4;
/** Causes rarer than this take the room of likelier ones: common practice, no source. */
const WORTH_CARRYING = 0.008;
/** More causes of one figure than this can't be told to a group. */
const CAUSES_A_FIGURE = 2;

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
      blocks: (say, language) => [
        ...job.prepared.tables.flatMap((table) => tableBlocks(table, language, say)),
        { block: 'text', text: say('sheet.carried.foot'), tone: 'small' },
      ],
    }),
  ],
};

function tableBlocks(table: PreparedTable, language: Language, say: Say): readonly Block[] {
  const lines = linesOf(table);
  return [
    {
      block: 'together',
      blocks: [
        {
          block: 'columns',
          shares: [9, 11],
          columns: [
            [{ block: 'heading', level: 2, text: headingOf(table, say) }],
            [{ block: 'text', text: goodText(table, language, say), tone: 'strong' }],
          ],
        },
        ...notPreparedBlocks(say, table.notPrepared),
        ...(lines.length === 0
          ? [{ block: 'text' as const, text: say('sheet.carried.no-figures') }]
          : [
              {
                block: 'table' as const,
                head: ['wrote', 'likely', 'say'].map((column) => say(`sheet.carried.${column}`)),
                rows: lines.map((line): readonly Cell[] => [
                  { text: figuresText(line, language, say), strong: true },
                  causesText(line.codes, language, say),
                  whatToSay(line.codes[0] ?? '', say, language),
                ]),
                widths: [2.7, 4.3, 3.2],
                size: 'small' as const,
              },
            ]),
      ],
    },
  ];
}

const headingOf = (table: PreparedTable, say: Say): string =>
  say('key.text.table', { mark: table.mark, title: table.title });

/** What is good at every setup of the table, in one line. */
const goodText = (table: PreparedTable, language: Language, say: Say): string =>
  say('sheet.carried.good', {
    ranges: table.setups
      .map(({ setup, prediction }) =>
        goodRangeOf(prediction) === null && prediction.outcome.kind === 'ease'
          ? say('sheet.carried.ease', {
              setup: setup.mark,
              order: outcomeShort(language, prediction),
            })
          : say('sheet.carried.range', { setup: setup.mark, range: outcomeShort(language, prediction) }),
      )
      // A range is not broken at the end of a line.
      .map((range) => range.replaceAll(' ', NO_BREAK))
      .join(say('sheet.carried.between')),
  });

/** One cause, or two that look alike, with its figure at each setup of the table. */
export interface CarriedLine {
  readonly codes: readonly string[];
  readonly rate: number;
  readonly figures: readonly { readonly setup: string; readonly figure: TellingFigure }[];
}

/** The likeliest lines of a table; the same cause at several setups is one line. */
export function linesOf(table: PreparedTable): readonly CarriedLine[] {
  const lines = new Map<string, CarriedLine>();
  for (const { setup, prediction } of table.setups)
    for (const figure of tellingFigures(setup, prediction)) {
      if (figure.rate < WORTH_CARRYING) continue;
      const codes = figure.codes.slice(0, CAUSES_A_FIGURE);
      const key = [codes.join(' '), figure.number === null].join(' ');
      const known = lines.get(key);
      lines.set(key, {
        codes,
        rate: Math.max(known?.rate ?? 0, figure.rate),
        figures: [...(known?.figures ?? []), { setup: setup.mark, figure }],
      });
    }
  return [...lines.values()]
    .sort((a, b) => b.rate * b.figures.length - a.rate * a.figures.length)
    .slice(0, LINES_A_TABLE);
}

/** "about 220 at L1, 440 at L2", or that the pointer stays on its stop. */
function figuresText({ figures }: CarriedLine, language: Language, say: Say): string {
  const { decimal } = languagePack(language);
  const isStopped = figures.every(({ figure }) => figure.number === null);
  if (isStopped) return say('sheet.carried.stays', { setups: figures.map(({ setup }) => setup) });
  return say('sheet.carried.about-figures', {
    figures: figures
      .map(({ setup, figure }) =>
        say('sheet.carried.figure', {
          number: trimmed(decimalText(figure.number ?? 0, stepDecimals(figure.marks), decimal)),
          setup,
        }),
      )
      .join(say('sheet.carried.and-figure')),
  });
}

const causesText = (codes: readonly string[], language: Language, say: Say): string =>
  capital(
    codes
      .map((code) => causeName(language, { code }))
      .reduce((all, each) => say('sheet.carried.or', { one: all, other: each })),
  );

/** In a few words, as they are said in passing; the head of the column says that they then read once more. */
const whatToSay = (code: string, say: Say, language: Language): string => {
  const own = `sheet.carried.say.${code}`;
  if (hasSentence(language, own)) return say(own);
  if (code.startsWith('reading.in-')) return say('sheet.carried.say.unit');
  return say(/hole|counted-from/.test(code) ? 'sheet.carried.say.holes' : 'sheet.carried.say.card');
};
