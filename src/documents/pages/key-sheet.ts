import { element, escapeText } from '../markup.ts';
import { unitLabel } from '../printing/reading-text.ts';
import type { Language } from '../sentences/language.ts';
import { sentence } from '../sentences/sentence.ts';
import { predictionStrip } from '../strip/prediction-strip.ts';
import { readingStrip } from '../strip/reading-strip.ts';
import { machineName } from '../text/explain-text.ts';
import { assumedNames, hangText, wayText, whyText } from '../text/key-table.ts';
import {
  bothUnits,
  expectedText,
  goodRangeOf,
  marksOf,
  narrowingText,
  outcomeShort,
  outcomeText,
  textbookText,
} from '../text/prediction-text.ts';
import { KEY_STYLE } from './key-style.ts';
import { page, titleBlock } from './page.ts';
import { PAGE_STYLE, PRINT_STYLE } from './page-style.ts';
import type { SetupSheet, Sheet, TableSheet } from './sheet.ts';

const STRIP_LENGTH = 48;

/**
 * The answer key on one sheet, for the teacher: for each setup how it is read, the good range in the
 * scale's own marks, newtons and grams side by side, the schoolbook's value and why it differs, and
 * what would narrow the range.
 */
export function keySheet(language: Language, sheet: Sheet): string {
  const say = (key: string, facts = {}) => sentence(language, key, facts);
  const title = say('key.title');
  return page(
    language,
    `${title}: ${sheet.activity}`,
    [PAGE_STYLE, PRINT_STYLE, KEY_STYLE],
    [
      titleBlock(
        title,
        [say('key.for-adults')],
        [
          [say('page.activity'), sheet.activity],
          [say('page.kit'), sheet.kit],
          ...(sheet.visit === null ? [] : [[say('page.visit'), sheet.visit] as const]),
        ],
      ),
      '<main>',
      ...sheet.tables.map((table) => keyOfTable(language, table)),
      `<section class="notes">${['range', 'grams', 'assumed']
        .map((note) => `<p>${escapeText(say(`key.note.${note}`))}</p>`)
        .join('')}</section>`,
      '</main>',
    ].join('\n'),
  );
}

const COLUMNS = ['setup', 'good', 'both', 'strip', 'textbook'] as const;

function keyOfTable(language: Language, table: TableSheet): string {
  const say = (key: string, facts = {}) => sentence(language, key, facts);
  const heading = say('key.text.table', { mark: table.mark, title: table.title });
  const head = COLUMNS.map((column, n) =>
    element('th', { scope: 'col', class: `c${n + 1}` }, escapeText(say(`key.${column}`))),
  );
  const assumed = assumedNames(language, table);
  const foot =
    assumed.length === 0
      ? ''
      : `<tfoot><tr><td colspan="${COLUMNS.length}">${escapeText(say('key.assumed-are', { what: assumed }))}</td></tr></tfoot>`;
  return [
    '<table class="key">',
    `<caption><h2>${escapeText(heading)}</h2><span>${escapeText(machineName(language, table.machine))}</span></caption>`,
    `<thead><tr>${head.join('')}</tr></thead>`,
    `<tbody>${table.setups.map((setup) => row(language, table, setup)).join('')}</tbody>`,
    foot,
    '</table>',
  ].join('\n');
}

function row(language: Language, table: TableSheet, setup: SetupSheet): string {
  const { prediction, scale } = setup;
  const label = (column: (typeof COLUMNS)[number]) => escapeText(sentence(language, `key.${column}`));
  const hang = scale === null ? '' : `<small>${escapeText(hangText(language, scale))}</small>`;
  return [
    `<tr><th scope="row"><b>${escapeText(setup.mark)}</b>${escapeText(wayText(language, prediction))}${hang}</th>`,
    `<td class="good" data-label="${label('good')}">${goodCell(language, setup)}</td>`,
    `<td class="both" data-label="${label('both')}">${bothCell(language, setup)}</td>`,
    `<td data-label="${label('strip')}">${stripCell(language, table, setup)}</td>`,
    `<td class="why" data-label="${label('textbook')}">${whyCell(language, setup)}</td></tr>`,
  ].join('');
}

/** The range that counts, large; what is expected within it, small. A starred one rests on an assumption. */
function goodCell(language: Language, { prediction }: SetupSheet): string {
  const short = escapeText(outcomeShort(language, prediction));
  const star = prediction.assumed.length > 0 && goodRangeOf(prediction) !== null ? '*' : '';
  const { kind } = prediction.outcome;
  if (kind !== 'reading' && kind !== 'band') return `<b class="state">${short}</b>`;
  const value = `${expectedText(language, prediction) ?? ''} ${unitLabel(marksOf(prediction).unit)}`;
  return `<b>${short}${star}</b><small>${escapeText(sentence(language, 'key.expected-is', { value }))}</small>`;
}

function bothCell(language: Language, { prediction }: SetupSheet): string {
  const good = goodRangeOf(prediction);
  const both = good === null ? null : bothUnits(language, prediction, good);
  if (both === null) return '–';
  return `<span>${escapeText(both.newtons)}</span><span>${escapeText(both.grams)}</span>`;
}

function stripCell(language: Language, table: TableSheet, setup: SetupSheet): string {
  const strip = predictionStrip(setup.prediction, setup.scale);
  if (strip === null) return '–';
  const name = `strip ${table.mark} ${setup.mark}`;
  return readingStrip(strip, { language, name, length: STRIP_LENGTH, hideGood: false });
}

function whyCell(language: Language, { prediction }: SetupSheet): string {
  const { kind } = prediction.outcome;
  const special = kind === 'reading' || kind === 'band' ? '' : `${outcomeText(language, prediction)} `;
  const narrowing = narrowingText(language, prediction);
  const text = `${special}${textbookText(language, prediction.textbook)} ${whyText(language, prediction)}`;
  return `${escapeText(text.trim())}${narrowing === '' ? '' : `<small>${escapeText(narrowing)}</small>`}`;
}
