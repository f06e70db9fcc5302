import type { Machine } from '../machine.ts';
import { equipment } from './equipment.ts';
import { fields, pulleyBlock, slots } from './fields.ts';
import { limits } from './limits.ts';
import { makeTackle } from './make.ts';
import { mistakes, reckonings, speedingUp } from './mistakes.ts';
import { between, cautions, differences, drawing, reading, reset, steps } from './paper.ts';
import type { Tackle } from './station.ts';
import { balanceTackle, idealAdvantage } from './tackle.ts';

/** The tackle: any number of parts of line, fall off either block, sheaves that drag. */
export const tackle: Machine<Tackle> = {
  name: 'tackle',
  partKinds: [pulleyBlock],
  slots,
  fields,
  make: makeTackle,
  balance: balanceTackle,
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
