import type { Prepared } from '../../core/prepare.ts';
import type { Period } from '../../core/rotation/class-period.ts';
import { rotationPicture } from '../drawing/rotation-picture.ts';
import { type ChartLines, rotationChart } from '../drawing/rotation-rows.ts';
import { element, escapeText } from '../markup.ts';
import { sheetOf } from '../prepare.ts';
import type { Language } from '../sentences/language.ts';
import { sayIn } from '../sheets/say.ts';
import { sayingsOf } from '../text/period-said.ts';
import { type PeriodWords, wordsOfClasses } from '../text/period-words.ts';
import { betweenText } from '../text/rotation-text.ts';
import type { Saying } from '../text/saying.ts';
import { page, titleBlock } from './page.ts';
import { PAGE_STYLE, PRINT_STYLE } from './page-style.ts';
import { routesTable } from './rotation-routes.ts';
import { ROTATION_STYLE } from './rotation-style.ts';
import { sheetIn } from './sheet-in.ts';

/** Room for a chart on the page, millimetres: as wide as the page at its widest; lines of one height. */
const WIDTH = 285;
const LINE = 20;
const HIGHEST = 165;
const AROUND = 30;
const LETTERS = 2.9;

/**
 * The period as a page: the rotation chart, how sure it is and what proves it, each group's route, then the
 * same by table and by adult.
 */
export function rotationPage(language: Language, prepared: Prepared, period: Period): string {
  const say = sayIn(language);
  const sheet = sheetIn(language, sheetOf(prepared));
  const title = say('sheet.rotation');
  return page(
    language,
    `${title}: ${sheet.activity}`,
    [PAGE_STYLE, PRINT_STYLE, ROTATION_STYLE],
    [
      titleBlock(
        title,
        [say('rotation.page.about')],
        [
          [say('page.activity'), sheet.activity],
          [say('page.kit'), sheet.kit],
          ...(sheet.visit === null ? [] : [[say('page.visit'), sheet.visit] as const]),
        ],
      ),
      '<main>',
      ...wordsOfClasses(language, prepared, period).map((words, n) => classSection(words, prepared, n)),
      ...period.between.map((each) => `<p class="between">${escapeText(betweenText(language, each))}</p>`),
      '</main>',
    ].join('\n'),
  );
}

function classSection(words: PeriodWords, prepared: Prepared, n: number): string {
  const { say, period } = words;
  const heading =
    period.label === null
      ? ''
      : element('h2', {}, escapeText(say('rotation.class', { class: period.label })));
  const sayings = sayingsOf(words, prepared);
  const first = sayings.filter(({ about }) => FIRST.includes(about));
  const rest = sayings.filter(({ about }) => !FIRST.includes(about));
  return [
    `<section class="class">${heading}`,
    `<div class="said first">${first.map(sayingMarkup).join('')}</div>`,
    chartFigure(words, 'groups', n),
    `<div class="said">${rest.map(sayingMarkup).join('')}</div>`,
    routesTable(words),
    chartFigure(words, 'tables', n),
    period.rotation.adults.length === 0 ? '' : chartFigure(words, 'adults', n),
    '</section>',
  ].join('\n');
}

/** What somebody wants to know before looking at the chart. */
const FIRST: readonly Saying['about'][] = ['clash', 'under way', 'frame', 'sure', 'proof'];

function sayingMarkup({ about, heading, lines, foot }: Saying): string {
  const name = about.replace(' ', '-');
  const footText = foot === null ? '' : `<p>${escapeText(foot)}</p>`;
  if (heading === null)
    return `<div class="${name}">${lines.map((line) => `<p>${escapeText(line)}</p>`).join('')}${footText}</div>`;
  const items = lines.map((line) => `<li>${escapeText(line)}</li>`).join('');
  return `<section class="${name}"><h3>${escapeText(heading.replace(/:$/, ''))}</h3><ul>${items}</ul>${footText}</section>`;
}

function chartFigure(words: PeriodWords, lines: ChartLines, n: number): string {
  const chart = rotationChart(words, lines);
  if (chart === null || chart.rows.length === 0) return '';
  const svg = rotationPicture(chart, words, {
    name: `rotation ${lines} ${n + 1}`,
    width: WIDTH,
    height: Math.min(HIGHEST, AROUND + LINE * chart.rows.length),
    least: LETTERS,
  });
  const caption = escapeText(words.say(`rotation.chart.${lines}`));
  return `<figure class="chart"><figcaption>${caption}</figcaption><div class="wide" tabindex="0" role="group" aria-label="${caption}">${svg}</div></figure>`;
}
