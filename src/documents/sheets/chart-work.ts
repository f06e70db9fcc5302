import { isNotDefined } from '../../core/description/not-defined.ts';
import { significant } from '../../core/quantities/print-quantity.ts';
import type { SetupSheet } from '../pages/sheet.ts';
import { newtonMarks } from '../printing/reading-text.ts';
import { shiftText } from '../printing/shift-text.ts';
import { type Language, languagePack } from '../sentences/language.ts';
import { marksOf } from '../text/prediction-text.ts';
import type { Cell, Table } from './block.ts';
import { type Marked, READINGS, readingCells, readingHeads, unitOf } from './chart-numbers.ts';
import { sayIn } from './say.ts';

const ROW_HEIGHT = 10.5;
/** A line with nothing on it. */
const WRITING_LINE = '\u00a0';
const WORK = ['load', 'rise', 'travel', 'in', 'out'] as const;

/**
 * Level 3: the readings, then load, rise, travel of the pull, and the work in and out that follow. Work
 * in needs the pull at the hook: where a scale hangs so that it shows another figure, or has no newtons
 * on it, a column says how the pull follows from what was read.
 */
export function work(setups: readonly SetupSheet[], language: Language, marked: Marked): Table {
  const say = sayIn(language);
  const isReckoned = pullReasons(setups).length > 0;
  const nothing = say('sheet.chart.nothing');
  return {
    block: 'table',
    head: [
      say('page.chart.setup'),
      say('page.chart.guess'),
      ...readingHeads(say),
      say('page.chart.unit'),
      ...(isReckoned ? [say('sheet.chart.pull')] : []),
      ...WORK.map((column) => say(`sheet.chart.work-${column}`)),
    ],
    rows: setups.map((setup): readonly Cell[] => [
      marked(setup),
      '',
      ...readingCells(setup, say),
      unitOf(setup, say),
      ...(isReckoned ? [hasWork(setup) ? pullCell(setup, language) : nothing] : []),
      ...WORK.map(() => (hasWork(setup) ? '' : nothing)),
    ]),
    widths: [
      0.8,
      1.3,
      ...Array.from({ length: READINGS }, () => 1.1),
      0.8,
      ...(isReckoned ? [1.7] : []),
      ...[1.1, 1.1, 1.3, 1.2, 1.2],
    ],
    align: ['left', 'left', 'left', 'left', 'left', 'center'],
    rowHeight: ROW_HEIGHT,
    size: 'small',
  };
}

/** Where nothing moves, or nothing is pulled, there is no work to write. */
export const hasWork = ({ prediction }: SetupSheet): boolean =>
  prediction.watched === 'pull' && !isNotDefined(prediction.account);

/** Why, somewhere on this table, the pull in newtons is another figure than the one that is read: sentence keys. */
export function pullReasons(setups: readonly SetupSheet[]): readonly string[] {
  const pulled = setups.filter(hasWork);
  return [
    ...(pulled.some((setup) => hasShift(setup)) ? ['sheet.chart.pull.shift'] : []),
    ...(pulled.some((setup) => factorOf(setup) !== null) ? ['sheet.chart.pull.unit'] : []),
  ];
}

/** How the pull follows, and under it room to write it: "middle + 0.28 =". */
function pullCell(setup: SetupSheet, language: Language): Cell {
  const { decimal } = languagePack(language);
  const factor = factorOf(setup);
  const times = factor === null ? '' : ` × ${significant(factor, 3, decimal)}`;
  return {
    text: sayIn(language)('sheet.chart.pull.is', { reckoned: `${times}${plusShift(setup, language)}` }),
    note: WRITING_LINE,
  };
}

/** Newtons that a mark of the scale stands for, where it is not marked in newtons. */
function factorOf({ prediction }: SetupSheet): number | null {
  const { unit, unitSi } = marksOf(prediction);
  return unit === 'N' ? null : unitSi;
}

/** What the scale shows too little as it hangs, in newtons as on its tag; empty where that is nothing. */
function plusShift({ scale }: SetupSheet, language: Language): string {
  if (scale === null) return '';
  const size = shiftText(language, scale.showsLess, scale.graduations, newtonMarks);
  if (!/[1-9]/.test(size)) return '';
  return ` ${scale.showsLess < 0 ? '−' : '+'} ${size}`;
}

const hasShift = (setup: SetupSheet): boolean => plusShift(setup, 'en') !== '';
