import type { Machine } from '../machine.ts';
import { balanceDrag, idealAdvantage } from './drag.ts';
import { equipment } from './equipment.ts';
import { fields, slots } from './fields.ts';
import { limits } from './limits.ts';
import { makeDrag } from './make.ts';
import { mistakes, speedingUp } from './mistakes.ts';
import { between, cautions, differences, drawing, reading, reset, slope, start, steps } from './paper.ts';
import type { Drag } from './station.ts';

/** Drag and rolling on the level: what it costs to move a load without raising it. */
export const drag: Machine<Drag> = {
  name: 'drag on the level',
  partKinds: [],
  slots,
  fields,
  make: makeDrag,
  balance: balanceDrag,
  idealAdvantage,
  limits,
  slope,
  mistakes,
  speedingUp,
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
