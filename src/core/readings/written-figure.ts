import { numbersWritten } from './written-number.ts';

/** A figure that a group reckoned: its number, in joules where its unit was written, and how it was rounded. */
export interface WrittenFigure {
  readonly number: number;
  /** One of its unit in joules; `null` where none was written. */
  readonly joules: number | null;
  /** Half of its last digit, in the same unit. */
  readonly rounding: number;
}

/** Units of work that a class writes, in joules, without dots and spaces. */
const WORK_UNITS: Readonly<Record<string, number>> = {
  j: 1,
  joule: 1,
  joules: 1,
  julio: 1,
  julios: 1,
  nm: 1,
  ncm: 0.01,
  mj: 0.001,
};

const FIGURE = /^(?:about |approx\.? |ca\.? |unos |~|≈|x ?)?([-+]?[\d.,]+(?:[ -]?\d+ ?\/ ?\d+)?) *([^\d]*)$/i;

/**
 * The figure of a computed column, with a unit of work where one was written; `null` where it is none.
 *
 * @example figureWritten('0,44 J') // => { number: 0.44, joules: 1, rounding: 0.005 }
 * @example figureWritten('22 N cm')?.joules // => 0.01
 * @example figureWritten('three') // => null
 */
export function figureWritten(text: string): WrittenFigure | null {
  const [, amount = '', word = ''] = FIGURE.exec(text.trim()) ?? [];
  const [number] = numbersWritten(amount);
  if (number === undefined) return null;
  const unit = word.replace(/[\s.·*x×]/g, '').toLowerCase();
  const joules = unit === '' || unit === 'times' ? null : WORK_UNITS[unit];
  if (joules === undefined) return null;
  const decimals = /[.,](\d+)$/.exec(amount)?.[1]?.length ?? 0;
  return { number, joules, rounding: 0.5 * 10 ** -decimals };
}
