import type { Machine } from '../machine.ts';
import { equipment } from './equipment.ts';
import { bar, fields, slots } from './fields.ts';
import { balanceLever, idealAdvantage } from './lever.ts';
import { limits } from './limits.ts';
import { makeLever } from './make.ts';
import { mistakes, reckonings, speedingUp } from './mistakes.ts';
import { cautions, differences, drawing, reading, reset, steps } from './paper.ts';
import type { Lever } from './station.ts';

/** The lever: three classes from geometry, a bar with weight, a pin with friction. */
export const lever: Machine<Lever> = {
  name: 'lever',
  partKinds: [bar],
  slots,
  fields,
  make: makeLever,
  balance: balanceLever,
  idealAdvantage,
  limits,
  mistakes,
  speedingUp,
  reckonings,
  steps,
  reading,
  reset,
  cautions,
  equipment,
  drawing,
  differences,
};
