import type { Predicted } from '../setups/difference.ts';
import { covariance, type Measured, plus, times, type Unknown } from '../uncertainty/measured.ts';
import { type Figure, figureOf } from './figure.ts';

/**
 * What the setups of one table have in common: how far each good figure may lie from its best value,
 * and how those distances go together, because bar, pin, sheaves and scale are the same for all groups.
 */
export interface Apparatus {
  readonly setups: readonly ApparatusAtSetup[];
  /** Covariance of the good figures through shared unknowns, SI² (JCGM 100, 5.2). */
  readonly prior: readonly (readonly number[])[];
}

export interface ApparatusAtSetup {
  readonly at: Predicted;
  readonly figure: Figure | null;
  readonly middle: number;
  readonly shared: number;
  /** Hand, graduation and pointer of one reading. */
  readonly own: number;
}

export function apparatusOf(table: readonly Predicted[]): Apparatus {
  const shared = table.map(({ prediction }) => partsOf(middleOf(prediction), isShared));
  const prior = shared.map((a) => shared.map((b) => covariance(a, b)));
  return {
    prior,
    setups: table.map((at, n): ApparatusAtSetup => {
      const figure = figureOf(at.prediction.outcome);
      const common = prior[n]?.[n] ?? 0;
      return {
        at,
        figure,
        middle: figure === null ? 0 : (figure.low + figure.high) / 2,
        shared: common,
        own: figure === null ? 0 : Math.max(figure.u ** 2 - common, 0),
      };
    }),
  };
}

/** Of a band the middle is taken: what rubs moves its ends apart, what weighs moves both. */
function middleOf({ read, lower }: Predicted['prediction']): Measured {
  if (read === null) return { value: 0, parts: [] };
  return lower === null ? read : times(plus(read, lower), 0.5);
}

const partsOf = (value: Measured, which: (unknown: Unknown) => boolean): Measured => ({
  value: value.value,
  parts: value.parts.filter(({ unknown }) => which(unknown)),
});

/** What belongs to one reading is drawn anew in the next; that of the arrival reading stands in them all. */
const isShared = ({ id }: Unknown): boolean => !id.startsWith('reading/') || id.endsWith(' on arrival');
