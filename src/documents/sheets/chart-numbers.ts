import type { SetupSheet } from '../pages/sheet.ts';
import { unitLabel } from '../printing/reading-text.ts';
import { marksOf } from '../text/prediction-text.ts';
import type { Cell, Table } from './block.ts';
import type { Say } from './say.ts';

/** The first cell of a setup's row. */
export type Marked = (setup: SetupSheet) => Cell;

/** How often each setup is read. */
export const READINGS = 3;

/** Room to write in, millimetres. */
const ROW_HEIGHT = 9.5;

/** Level 2: three readings with their unit. A felt order is said once, whatever else the table reads. */
export const numbers = (setups: readonly SetupSheet[], say: Say, marked: Marked): Table => ({
  block: 'table',
  head: [
    say('page.chart.setup'),
    say('page.chart.guess'),
    ...readingHeads(say),
    say('sheet.chart.middle'),
    say('page.chart.unit'),
  ],
  rows: setups.map((setup): readonly Cell[] => {
    const again = isOrdered(setup) ? say('sheet.chart.nothing') : '';
    return [marked(setup), '', ...readingCells(setup, say), again, unitOf(setup, say)];
  }),
  widths: [1, 1.7, 1.35, 1.35, 1.35, 1.4, 1.05],
  align: ['left', 'left', 'left', 'left', 'left', 'left', 'center'],
  rowHeight: ROW_HEIGHT,
});

/** Where nothing but ease is felt: no numbers to read, only an order to guess and to find. */
export const ordering = (setups: readonly SetupSheet[], say: Say, marked: Marked): Table => ({
  block: 'table',
  head: [say('page.chart.setup'), say('sheet.chart.order-guess'), say('sheet.chart.order-found')],
  rows: setups.map((setup): readonly Cell[] => [marked(setup), '', '']),
  widths: [1, 3, 3],
  rowHeight: ROW_HEIGHT,
});

const isOrdered = ({ prediction }: SetupSheet): boolean => prediction.watched === 'ease';

export const readingHeads = (say: Say): readonly string[] =>
  Array.from({ length: READINGS }, (_, n) => say('page.chart.reading', { number: n + 1 }));

/** Room for each reading; an order is felt once, over all setups of the table. */
export const readingCells = (setup: SetupSheet, say: Say): readonly string[] =>
  Array.from({ length: READINGS }, (_, n) => (isOrdered(setup) && n > 0 ? say('sheet.chart.nothing') : ''));

/** What a number in the row counts: the instrument's own unit, turns, or a place in an order. */
export const unitOf = ({ prediction }: SetupSheet, say: Say): string =>
  prediction.watched === 'ease'
    ? say('sheet.chart.order-unit')
    : prediction.watched === 'turns'
      ? say('watched.turns')
      : unitLabel(marksOf(prediction).unit);
