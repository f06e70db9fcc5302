import type { Prepared } from '../../core/prepare.ts';
import type { BetweenClasses, Period } from '../../core/rotation/class-period.ts';
import { rotationChart } from '../drawing/rotation-rows.ts';
import { sheetIn } from '../pages/sheet-in.ts';
import { sheetOf } from '../prepare.ts';
import { lengthText } from '../printing/time-text.ts';
import type { Language } from '../sentences/language.ts';
import { sentence } from '../sentences/sentence.ts';
import { wrapped } from './columns.ts';
import { sayingsOf } from './period-said.ts';
import { type PeriodWords, timetableOf, wordsOfClasses } from './period-words.ts';
import { rotationGrid } from './rotation-grid.ts';
import type { Saying } from './saying.ts';

/** A terminal that isn't wider still shows every line whole. */
const WIDTH = 80;

/** The period of a visit for the terminal: the chart in letters, then how sure it is, what proves it, and what else is to know. */
export function rotationText(language: Language, prepared: Prepared, period: Period): string {
  const { activity, kit, visit } = sheetIn(language, sheetOf(prepared));
  const head = sentence(language, 'rotation.head', { activity, kit });
  return [
    ...wrapped(visit === null ? head : `${head}, ${visit}`, WIDTH),
    ...wordsOfClasses(language, prepared, period).flatMap((words) => ['', ...classLines(words, prepared)]),
    ...period.between.flatMap((each) => ['', ...wrapped(betweenText(language, each), WIDTH)]),
    '',
  ].join('\n');
}

function classLines(words: PeriodWords, prepared: Prepared): readonly string[] {
  const { say, period } = words;
  return [
    ...(period.label === null ? [] : [underlined(say('rotation.class', { class: period.label })), '']).flat(),
    ...gridLines(words),
    ...sayingsOf(words, prepared).flatMap(sayingLines),
  ];
}

/** In the order of the legend. */
const SIGNS = ['reset', 'wait', 'break', 'done', 'adult', 'signal', 'bell', 'now'] as const;

const underlined = (title: string): readonly string[] => [title, '─'.repeat([...title].length)];

function gridLines(words: PeriodWords): readonly string[] {
  const chart = rotationChart(words, 'groups');
  const grid = chart === null ? null : rotationGrid(chart, WIDTH);
  if (chart === null || grid === null) return [];
  const { say } = words;
  const signs = SIGNS.filter((sign) => grid.signs.has(sign)).map((sign) =>
    say(`rotation.text.legend.${sign}`),
  );
  return [
    ...grid.lines,
    '',
    ...wrapped(signs.map((sign) => sign.replaceAll(' ', '\u00a0')).join(', '), WIDTH),
    '',
  ];
}

/** A list is indented under its heading; what stands for itself is a line of its own. */
function sayingLines({ heading, lines, foot }: Saying, n: number): readonly string[] {
  return [
    ...(n === 0 ? [] : heading === null ? [] : ['']),
    ...(heading === null ? [] : wrapped(heading, WIDTH)),
    ...lines.flatMap((line) =>
      heading === null
        ? wrapped(line, WIDTH)
        : wrapped(line, WIDTH - 4).map((each, k) => `${k === 0 ? '  ' : '    '}${each}`),
    ),
    ...(foot === null ? [] : wrapped(foot, WIDTH)),
  ];
}

/** Whether there is time enough to put all tables back between two classes. */
export function betweenText(language: Language, { before, after, has, needs }: BetweenClasses): string {
  const say = (key: string, facts = {}): string =>
    sentence(language, `rotation.between${key}`, { before, after, ...facts });
  if (has < 0) return say('.overlap', { time: lengthText(-has) });
  return say(has < needs ? '.short' : '', { has: lengthText(has), needs: lengthText(needs) });
}

/** Whether every class of the day has a timetable. */
export const isArranged = ({ classes }: Period): boolean =>
  classes.every((each) => timetableOf(each) !== null);
