import { isNotDefined } from '../../core/description/not-defined.ts';
import { element, escapeText } from '../markup.ts';
import type { Language } from '../sentences/language.ts';
import { sentence } from '../sentences/sentence.ts';
import { unitWords } from '../sentences/unit-words.ts';
import { predictionStrip } from '../strip/prediction-strip.ts';
import { readingStrip } from '../strip/reading-strip.ts';
import { machineName } from '../text/explain-text.ts';
import { reasonText } from '../text/key-reason.ts';
import { assumedNames, hangText, wayText } from '../text/key-table.ts';
import {
  bothUnits,
  expectedText,
  goodRangeOf,
  marksOf,
  narrowingText,
  outcomeShort,
  textbookInBoth,
} from '../text/prediction-text.ts';
import { KEY_STYLE } from './key-style.ts';
import { page, titleBlock } from './page.ts';
import { PAGE_STYLE, PRINT_STYLE } from './page-style.ts';
import type { SetupSheet, Sheet, TableSheet } from './sheet.ts';

const STRIP_LENGTH = 42;

/**
 * The answer key for the teacher, the two sides of one sheet. In front, for each setup: how it is read,
 * the good range in the scale's own marks, newtons and grams side by side, the strip, the schoolbook's
 * value. On the back: why the schoolbook differs, what would narrow the range, what is assumed.
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
      front(language, sheet),
      back(language, sheet),
      '</main>',
    ].join('\n'),
  );
}

const COLUMNS = ['setup', 'good', 'both', 'strip', 'textbook'] as const;

function front(language: Language, sheet: Sheet): string {
  const say = (key: string, facts = {}) => escapeText(sentence(language, key, facts));
  const head = COLUMNS.map((column, n) =>
    element('th', { scope: 'col', class: `c${n + 1}` }, say(`key.${column}`)),
  );
  const groups = sheet.tables.map((table) => {
    const heading = `${say('key.text.table', { mark: table.mark, title: table.title })} <span>${escapeText(machineName(language, table.machine))}</span>`;
    const rows = table.setups.map((setup) => row(language, table, setup));
    return `<tbody><tr class="group"><th colspan="${COLUMNS.length}" scope="rowgroup">${heading}</th></tr>${rows.join('')}</tbody>`;
  });
  return [
    `<table class="key"><caption>${say('key.caption')} ${say('key.note.assumed')}</caption>`,
    `<thead><tr>${head.join('')}</tr></thead>`,
    ...groups,
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
    `<td class="both" data-label="${label('textbook')}">${textbookCell(language, setup)}</td></tr>`,
  ].join('');
}

/** The back: for each setup the reasons in words, table by table. What needs no word has no line. */
function back(language: Language, sheet: Sheet): string {
  const say = (key: string, facts = {}) => escapeText(sentence(language, key, facts));
  const notes = ['range', 'grams'].map((note) => `<p>${say(`key.note.${note}`)}</p>`);
  const tables = sheet.tables.map((table) => {
    const reasons = table.setups.flatMap((setup) => {
      const text = reasonLine(language, setup);
      return text === '' ? [] : [`<dt>${escapeText(setup.mark)}</dt><dd>${text}</dd>`];
    });
    const assumed = assumedNames(language, table);
    if (reasons.length === 0 && assumed.length === 0) return '';
    const list = reasons.length === 0 ? '' : `<dl>${reasons.join('')}</dl>`;
    const last =
      assumed.length === 0 ? '' : `<p class="assumed">${say('key.assumed-are', { what: assumed })}</p>`;
    const heading = say('key.text.table', { mark: table.mark, title: table.title });
    return `<section><h3>${heading}</h3>${list}${last}</section>`;
  });
  return `<section class="why"><h2>${say('key.why')}</h2><div class="notes">${notes.join('')}</div>${tables.join('')}</section>`;
}

/** The reasons, and the one measurement that would narrow the range. */
function reasonLine(language: Language, setup: SetupSheet): string {
  const narrowing = narrowingText(language, setup.prediction);
  return [
    escapeText(reasonText(language, setup)),
    narrowing === '' ? '' : `<em>${escapeText(narrowing)}</em>`,
  ]
    .filter((each) => each !== '')
    .join(' ');
}

/** The range that counts, large; what is expected within it, small. A starred one rests on an assumption. */
function goodCell(language: Language, { prediction }: SetupSheet): string {
  const short = escapeText(outcomeShort(language, prediction));
  const star = prediction.assumed.length > 0 && goodRangeOf(prediction) !== null ? '*' : '';
  const { kind } = prediction.outcome;
  if (kind === 'ease')
    return `<b class="state">${short}</b><small>${escapeText(sentence(language, 'found.ease.note'))}</small>`;
  if (kind !== 'reading' && kind !== 'band') return `<b class="state">${short}</b>`;
  const value = `${expectedText(language, prediction) ?? ''} ${unitWords(language, marksOf(prediction).unit)}`;
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

/** The schoolbook's figure beside the range; the reason why it differs is on the back. */
function textbookCell(language: Language, { prediction }: SetupSheet): string {
  const { textbook } = prediction;
  if (isNotDefined(textbook)) return '–';
  const { newtons, grams } = textbookInBoth(language, textbook, prediction.graduations);
  return `<span>${escapeText(newtons)}</span>${grams === null ? '' : `<span>${escapeText(grams)}</span>`}`;
}
