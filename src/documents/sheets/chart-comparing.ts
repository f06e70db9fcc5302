import type { SetupSheet } from '../pages/sheet.ts';
import type { Cell, Table } from './block.ts';
import { type Marked, unitOf } from './chart-numbers.ts';
import type { Say } from './say.ts';

/** Room to write in, millimetres: young hands write large. */
const ROW_HEIGHT = 11;

/**
 * Level 1: less or more than the partner, and which is easiest, first guessed and then found. Turns and
 * lengths are counted, since nobody can feel which of them is easier: their number is written down.
 */
export function comparing(setups: readonly SetupSheet[], say: Say, marked: Marked): Table {
  if (!setups.some(isFelt)) return counting(setups, say, marked);
  return {
    block: 'table',
    head: [
      say('sheet.chart.setup'),
      say('sheet.chart.guess'),
      say('sheet.chart.found'),
      say('sheet.chart.order-guess'),
      say('sheet.chart.order-found'),
    ],
    rows: setups.map((setup): readonly Cell[] => {
      const told = isFelt(setup) ? ring(setup, say) : blank(setup, say);
      const order = isFelt(setup) ? '' : say('sheet.chart.nothing');
      return [marked(setup), told, told, order, order];
    }),
    widths: [1.1, 2.1, 2.1, 1.8, 1.8],
    align: ['left', 'center', 'center', 'center', 'center'],
    rowHeight: ROW_HEIGHT,
  };
}

/** Where nothing is pulled or pushed, there is nothing to compare. */
const counting = (setups: readonly SetupSheet[], say: Say, marked: Marked): Table => ({
  block: 'table',
  head: [say('sheet.chart.setup'), say('sheet.chart.count-guess'), say('sheet.chart.count-found')],
  rows: setups.map((setup): readonly Cell[] => [marked(setup), blank(setup, say), blank(setup, say)]),
  widths: [1.1, 3.9, 3.9],
  align: ['left', 'center', 'center'],
  rowHeight: ROW_HEIGHT,
});

const isFelt = ({ prediction }: SetupSheet): boolean =>
  prediction.watched === 'pull' || prediction.watched === 'ease';

const blank = (setup: SetupSheet, say: Say): Cell => say('sheet.chart.blank', { unit: unitOf(setup, say) });

/** Two words to choose from, with what is compared: "less or more, pull than at L2". */
const ring = ({ partner, prediction }: SetupSheet, say: Say): Cell =>
  partner === null
    ? say('sheet.chart.nothing')
    : {
        text: say('sheet.chart.ring'),
        note: say(prediction.watched === 'pull' ? 'sheet.chart.ring.pull' : 'sheet.chart.ring.force', {
          partner,
        }),
      };
