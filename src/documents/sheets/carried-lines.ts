import type { RekeyRow } from '../../core/calibration/rekey-table.ts';
import type { Graduations } from '../../core/instruments/graduations.ts';
import type { PreparedTable } from '../../core/prepare.ts';
import { type TellingFigure, tellingFigures } from '../../core/readings/telling-figure.ts';

/** More lines a table than this nobody reads while walking. */
const LINES_A_TABLE = 4;
/** Causes rarer than this take the room of likelier ones: common practice, no source. */
const WORTH_CARRYING = 0.008;
/** More causes of one figure than this can't be told to a group. */
const CAUSES_A_FIGURE = 2;

/** One cause, or two that look alike, with its figure at each setup of the table. */
export interface CarriedLine {
  readonly codes: readonly string[];
  readonly rate: number;
  readonly figures: readonly CarriedFigure[];
}

export interface CarriedFigure {
  readonly setup: string;
  readonly figure: TellingFigure;
  /** Marks of what is read at that setup. */
  readonly own: Graduations | null;
}

/** The likeliest lines of a table; the same cause at several setups is one line. */
export function linesOf(table: PreparedTable): readonly CarriedLine[] {
  const lines = new Map<string, CarriedLine>();
  for (const { setup, prediction } of table.setups)
    for (const figure of tellingFigures(setup, prediction)) {
      if (figure.rate < WORTH_CARRYING) continue;
      const codes = figure.codes
        .filter((_, n) => n === 0 || (figure.rates[n] ?? 0) >= WORTH_CARRYING)
        .slice(0, CAUSES_A_FIGURE);
      const key = [codes.join(' '), figure.number === null].join(' ');
      const known = lines.get(key);
      lines.set(key, {
        codes,
        rate: Math.max(known?.rate ?? 0, figure.rate),
        figures: [...(known?.figures ?? []), { setup: setup.mark, figure, own: prediction.graduations }],
      });
    }
  return [...lines.values()]
    .sort((a, b) => b.rate * b.figures.length - a.rate * a.figures.length)
    .slice(0, LINES_A_TABLE);
}

/**
 * Whether a row that may be ringed calls that number good. The line is kept all the same, with a sign: with
 * most rows it does give its cause away, and whoever has filled in the range of today sees which holds.
 */
export function isGoodInARow(rows: readonly RekeyRow[], { setup, figure, own }: CarriedFigure): boolean {
  const { number, marks } = figure;
  if (number === null || own === null) return false;
  const slack = (0.5 * marks.step) / marks.unitSi;
  return rows.some(({ good }) => {
    const range = good.find((each) => each.setup === setup)?.good ?? null;
    return (
      range !== null && number > range.from / own.unitSi - slack && number < range.to / own.unitSi + slack
    );
  });
}
