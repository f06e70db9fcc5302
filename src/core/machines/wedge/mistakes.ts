import { type Metres, metres } from '../../quantities/brands.ts';
import { exactly, minus } from '../../uncertainty/measured.ts';
import type { UsualMistake } from '../machine.ts';
import type { Wedge } from './station.ts';

/** How far short of its mark a wedge is left. Common practice, no source. */
const SHORT: Metres = metres(0.005);
/** Base rate is an assumption: common practice, no source. */
const NOT_TO_THE_MARK = 0.05;

/** What goes wrong at a wedge: it is not pushed to its mark, so the cords pull less. */
export const mistakes: readonly UsualMistake<Wedge>[] = [
  { code: 'wedge.not-to-the-mark', baseRate: NOT_TO_THE_MARK, change: leftShort },
];

function leftShort(wedge: Wedge): Wedge | null {
  const { advance } = wedge.inputs;
  if (!wedge.hasMark || advance.value <= SHORT) return null;
  return { ...wedge, inputs: { ...wedge.inputs, advance: minus(advance, exactly(SHORT)) } };
}
