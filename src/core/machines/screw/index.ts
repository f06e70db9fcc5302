import type { Machine } from '../machine.ts';
import { equipment } from './equipment.ts';
import { fields, screwPart, slots } from './fields.ts';
import { limits } from './limits.ts';
import { makeScrew } from './make.ts';
import { mistakes, reckonings } from './mistakes.ts';
import { between, cautions, differences, drawing, reset, start, steps } from './paper.ts';
import { balanceScrew, idealAdvantage } from './screw.ts';
import type { Screw } from './station.ts';
import { tally } from './tally.ts';

/** The screw: turns and travel of a thread, and the pull on its lever with friction. */
export const screw: Machine<Screw> = {
  name: 'screw',
  partKinds: [screwPart],
  slots,
  fields,
  make: makeScrew,
  balance: balanceScrew,
  tally,
  idealAdvantage,
  limits,
  mistakes,
  reckonings,
  steps,
  between,
  reset,
  cautions,
  equipment,
  drawing,
  start,
  differences,
};
