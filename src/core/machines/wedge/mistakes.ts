import { type Metres, metres } from '../../quantities/brands.ts';
import { exactly, minus, plus } from '../../uncertainty/measured.ts';
import type { Reckoning, UsualMistake } from '../machine.ts';
import type { Wedge } from './station.ts';

/** How far short of its mark, or past it, a wedge is left. Common practice, no source. */
const OFF: Metres = metres(0.005);
/** Base rates are assumptions: common practice, no source. */
const NOT_TO_THE_MARK = 0.05;
const PAST_THE_MARK = 0.02;

/** What goes wrong at a wedge: it is not pushed to its mark, so the cords pull less, or it is pushed past it. */
export const mistakes: readonly UsualMistake<Wedge>[] = [
  { code: 'wedge.not-to-the-mark', baseRate: NOT_TO_THE_MARK, persists: 'reading', change: leftShort },
  { code: 'wedge.past-the-mark', baseRate: PAST_THE_MARK, persists: 'reading', change: pushedPast },
];

function leftShort(wedge: Wedge): Wedge | null {
  const { advance } = wedge.inputs;
  if (!wedge.hasMark || advance.value <= OFF) return null;
  return { ...wedge, inputs: { ...wedge.inputs, advance: minus(advance, exactly(OFF)) } };
}

/** A wedge stops where it has gone in whole. */
function pushedPast(wedge: Wedge): Wedge | null {
  const { advance, length } = wedge.inputs;
  if (!wedge.hasMark || advance.value + OFF > length.value) return null;
  return { ...wedge, inputs: { ...wedge.inputs, advance: plus(advance, exactly(OFF)) } };
}

/** The angle of one side for the whole wedge, or length and thickness upside down. */
export const reckonings: readonly Reckoning<Wedge>[] = [
  {
    code: 'wedge.half-thickness',
    ratio: ({ inputs }, at) => (2 * at(inputs.length)) / at(inputs.thickness),
  },
  { code: 'wedge.upside-down', ratio: ({ inputs }, at) => at(inputs.thickness) / at(inputs.length) },
];
