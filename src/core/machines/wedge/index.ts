import type { Machine } from '../machine.ts';
import { drawing, start } from './drawing.ts';
import { equipment } from './equipment.ts';
import { cordsPart, fields, malletPart, slots, wedgePart } from './fields.ts';
import { limits } from './limits.ts';
import { makeWedge } from './make.ts';
import { mistakes, reckonings } from './mistakes.ts';
import { between, cautions, differences, reading, reset, steps } from './paper.ts';
import type { Wedge } from './station.ts';
import { balanceWedge, idealAdvantage, tally } from './wedge.ts';

/** The wedge: one slope under a load, or two faces between cords; self-holding and blows. */
export const wedge: Machine<Wedge> = {
  name: 'wedge',
  partKinds: [wedgePart, cordsPart, malletPart],
  slots,
  fields,
  make: makeWedge,
  balance: balanceWedge,
  tally,
  idealAdvantage,
  limits,
  mistakes,
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
