import { cautionRow } from '../../core/sources/cautions.ts';
import { paintDrawing } from '../drawing/paint-drawing.ts';
import { element, escapeText } from '../markup.ts';
import { cautionsOf, pupilCaution } from '../sentences/caution-words.ts';
import type { Language } from '../sentences/language.ts';
import { hasSentence, sentence } from '../sentences/sentence.ts';
import { unitWords } from '../sentences/unit-words.ts';
import { readingStrip } from '../strip/reading-strip.ts';
import { machineName } from '../text/explain-text.ts';
import { marksOf } from '../text/prediction-text.ts';
import { page, titleBlock } from './page.ts';
import { PAGE_STYLE, PRINT_STYLE, TABLE_STYLE } from './page-style.ts';
import { readingLines, scaleEnds } from './reading-lines.ts';
import type { ScaleSheet, SetupSheet, Sheet, TableSheet } from './sheet.ts';

const READINGS = 3;
/** Room for a drawing on paper, in millimetres: with the steps beside it on A4 and on Letter. */
const DRAWING_ROOM = { width: 112, height: 84 };
/** Of three pictures and more each is lower, so that a setup stays on one page. */
const STAGE_HEIGHT = 62;
const STRIP_LENGTH = 150;

/**
 * The page that lies on a table: how each setup is built and read, and the chart to write in. It
 * says nothing of what will be read.
 */
export function tablePage(language: Language, sheet: Sheet, table: TableSheet): string {
  const say = (key: string, facts = {}) => sentence(language, key, facts);
  const machine = machineName(language, table.machine);
  const about = `${table.machine}.about`;
  const heading = `${say('page.table', { mark: table.mark })}: ${table.title}`;
  return page(
    language,
    heading,
    [PAGE_STYLE, TABLE_STYLE, PRINT_STYLE],
    [
      titleBlock(heading, hasSentence(language, about) ? [say(about)] : [], [
        [say('page.machine'), machine],
        [say('page.activity'), sheet.activity],
        [say('page.kit'), sheet.kit],
      ]),
      '<main>',
      care(language, table),
      ...table.setups.map((setup) => setupSection(language, table, setup)),
      chart(language, table),
      cautionSources(language, table),
      '</main>',
    ].join('\n'),
  );
}

/** A setup without anything that is known of its reading: all that a card is made from. */
export type CardSetup = Omit<SetupSheet, 'prediction'>;
export type CardTable = Omit<TableSheet, 'setups'> & { readonly setups: readonly CardSetup[] };

/** A warning is told by its sign and its word; colour has no part in it. */
const SIGN =
  '<svg viewBox="0 0 24 24" aria-hidden="true" fill="none" stroke="currentColor" stroke-width="1.6" stroke-linejoin="round"><path d="M12 3 22 21H2Z"/><path d="M12 9.5v5.5M12 17.6v.6" stroke-linecap="round"/></svg>';

/** What to take care of at a table. */
export function care(language: Language, table: CardTable): string {
  const cautions = cautionsOf(table);
  if (cautions.length === 0) return '';
  const items = cautions.map((caution) => `<li>${escapeText(pupilCaution(language, caution))}</li>`);
  const title = escapeText(sentence(language, 'page.cautions'));
  return `<section class="care" aria-labelledby="care">${SIGN}<div><h2 class="small" id="care">${title}</h2><ul>${items.join('')}</ul></div></section>`;
}

/** Who says so, in small print at the foot: an adult may want to know, a pupil doesn't. */
function cautionSources(language: Language, table: TableSheet): string {
  const sources = [
    ...new Set(cautionsOf(table).map(({ key, source }) => cautionRow(key)?.source ?? source)),
  ].join('; ');
  const rules = sentence(language, 'page.local-rules');
  const text =
    sources === '' ? rules : `${sentence(language, 'page.cautions.source', { source: sources })} ${rules}`;
  return `<p class="local">${escapeText(text)}</p>`;
}

/** One setup: its drawing, how it is built and how it is read. */
export function setupSection(language: Language, table: CardTable, setup: CardSetup): string {
  const say = (key: string, facts = {}) => sentence(language, key, facts);
  const heading = say('page.setup', { mark: setup.mark });
  const steps = setup.steps.map((step) => `<li>${escapeText(sentence(language, step.key, step.facts))}</li>`);
  const compare =
    setup.partner === null ? '' : `<p>${escapeText(say('page.compare', { partner: setup.partner }))}</p>`;
  const id = `setup-${table.setups.indexOf(setup) + 1}`;
  return [
    `<section class="setup" aria-labelledby="${id}">`,
    `<header><h2 id="${id}">${escapeText(heading)}</h2>${compare}</header>`,
    '<div class="work">',
    figureOf(language, table, setup),
    `<div><h3>${escapeText(say('page.do'))}</h3><ol class="steps">${steps.join('')}</ol>${reading(language, setup)}</div>`,
    '</div>',
    '</section>',
  ].join('\n');
}

/** The picture, or one for each stage under its heading; what is a sign and not to scale is said once. */
function figureOf(language: Language, table: CardTable, setup: CardSetup): string {
  const say = (key: string, facts = {}) => sentence(language, key, facts);
  const heading = say('page.setup', { mark: setup.mark });
  const pictures = setup.figures.map(({ title, drawing }) => {
    const named = title === null ? machineName(language, table.machine) : say(title.key, title.facts);
    const picture = paintDrawing(drawing, {
      language,
      what: `${heading}: ${named}`,
      width: DRAWING_ROOM.width,
      height: setup.figures.length > 2 ? STAGE_HEIGHT : DRAWING_ROOM.height,
      load: setup.load,
      scaleEnds: setup.scale === null ? null : scaleEnds(language, setup.scale),
    });
    return title === null ? picture : `<h3>${escapeText(named)}</h3>${picture}`;
  });
  return `<figure>${pictures.join('')}<figcaption>${escapeText(say('drawing.signs'))}</figcaption></figure>`;
}

/** How the scale is held and when it is read: the part that decides what it shows. */
function reading(language: Language, setup: CardSetup): string {
  const title =
    setup.scale === null
      ? sentence(language, 'page.read')
      : sentence(language, 'page.scale-named', { mark: setup.scale.label });
  const lines = readingLines(language, setup).map((line) => `<p>${escapeText(line)}</p>`);
  return `<div class="read"><h3>${escapeText(title)}</h3>${lines.join('')}</div>`;
}

/** The marks of each scale to put dots on: no hatching, nothing expected. One strip for a scale, not for a setup. */
function strips(language: Language, table: TableSheet): readonly string[] {
  const scales = new Map<string, { readonly scale: ScaleSheet; readonly marks: string[] }>();
  for (const { mark, scale, prediction } of table.setups) {
    if (scale === null || prediction.watched !== 'pull') continue;
    const known = scales.get(scale.label);
    if (known === undefined) scales.set(scale.label, { scale, marks: [mark] });
    else known.marks.push(mark);
  }
  const hint = `<p>${escapeText(sentence(language, 'page.strip.hint'))}</p>`;
  return [...scales.values()].map(({ scale, marks }, n) => {
    const picture = readingStrip(
      {
        graduations: scale.graduations,
        from: scale.stop,
        to: scale.range,
        ends: true,
        good: null,
        expected: [],
        dots: [],
      },
      { language, name: `strip ${n + 1}`, length: STRIP_LENGTH, hideGood: true },
    );
    const title = sentence(language, 'page.strip', {
      scale: sentence(language, 'page.scale-named', { mark: scale.label }),
      setups: marks,
    });
    return `<div class="strip"><h3>${escapeText(title)}</h3>${n === 0 ? hint : ''}<div>${picture}</div></div>`;
  });
}

/** Guess first, then read: the chart that a group fills in. */
function chart(language: Language, table: TableSheet): string {
  const say = (key: string, facts = {}) => sentence(language, key, facts);
  const columns = [
    say('page.chart.setup'),
    say('page.chart.guess'),
    ...Array.from({ length: READINGS }, (_, n) => say('page.chart.reading', { number: n + 1 })),
    say('page.chart.unit'),
  ];
  const head = columns.map((column) => element('th', { scope: 'col' }, escapeText(column))).join('');
  const rows = table.setups.map((setup) => {
    const unit = escapeText(unitWords(language, marksOf(setup.prediction).unit));
    const cells = '<td></td>'.repeat(READINGS + 1);
    return `<tr>${element('th', { scope: 'row' }, escapeText(setup.mark))}${cells}<td class="unit">${unit}</td></tr>`;
  });
  return [
    `<section class="chart" aria-labelledby="chart"><h2 id="chart">${escapeText(say('page.chart'))}</h2>`,
    `<div class="wide"><table class="data"><caption>${escapeText(say('page.chart.caption'))}</caption>`,
    `<thead><tr>${head}</tr></thead><tbody>${rows.join('')}</tbody></table></div>`,
    ...strips(language, table),
    '</section>',
  ].join('\n');
}
