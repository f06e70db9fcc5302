import type { Machine } from '../machine.ts';
import { equipment } from './equipment.ts';
import { board, fields, slots } from './fields.ts';
import { balanceIncline, idealAdvantage } from './incline.ts';
import { limits } from './limits.ts';
import { makeIncline } from './make.ts';
import { mistakes, reckonings, speedingUp } from './mistakes.ts';
import { between, cautions, differences, drawing, reading, reset, slope, start, steps } from './paper.ts';
import type { InclinedPlane } from './station.ts';

/** The inclined plane: a board propped at one end, a load on base, rollers or wheels, a string up it. */
export const inclinedPlane: Machine<InclinedPlane> = {
  name: 'inclined plane',
  partKinds: [board],
  slots,
  fields,
  make: makeIncline,
  balance: balanceIncline,
  idealAdvantage,
  limits,
  slope,
  mistakes,
  speedingUp,
  reckonings,
  steps,
  reading,
  between,
  reset,
  cautions,
  equipment,
  drawing,
  start,
  differences,
};
