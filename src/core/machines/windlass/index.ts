import type { Machine } from '../machine.ts';
import { equipment } from './equipment.ts';
import { fields, slots, windlassPart } from './fields.ts';
import { limits } from './limits.ts';
import { makeWindlass } from './make.ts';
import { mistakes, reckonings, speedingUp } from './mistakes.ts';
import { between, cautions, differences, drawing, reading, reset, steps } from './paper.ts';
import type { Windlass } from './station.ts';
import { balanceWindlass, idealAdvantage } from './windlass.ts';

/** The windlass (wheel and axle, or axle and crank): lines with thickness, a drum with weight, a bearing. */
export const windlass: Machine<Windlass> = {
  name: 'windlass',
  partKinds: [windlassPart],
  slots,
  fields,
  make: makeWindlass,
  balance: balanceWindlass,
  idealAdvantage,
  limits,
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
  differences,
};
