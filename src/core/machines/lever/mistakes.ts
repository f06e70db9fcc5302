import type { Metres } from '../../quantities/brands.ts';
import { type Measured, minus } from '../../uncertainty/measured.ts';
import type { UsualMistake } from '../machine.ts';
import type { Lever } from './station.ts';

/** Base rates are assumptions: common practice, no source. */
const HOLE_OFF = 0.02;
const FROM_THE_WRONG_END = 0.01;

/** What goes wrong at a lever: a hook one hole off, or holes counted from the other end. */
export const mistakes: readonly UsualMistake<Lever>[] = [
  ...(['load', 'pull', 'fulcrum'] as const).flatMap((what) =>
    ([1, -1] as const).map((off) => ({
      code: `lever.${what}-hole-${off > 0 ? 'right' : 'left'}`,
      baseRate: what === 'fulcrum' ? HOLE_OFF / 4 : HOLE_OFF / 2,
      change: (lever: Lever) => moved(lever, what, (lever.holes[what] ?? Number.NaN) + off),
    })),
  ),
  ...(['load', 'pull'] as const).map((what) => ({
    code: `lever.${what}-counted-from-the-other-end`,
    baseRate: FROM_THE_WRONG_END / 2,
    change: (lever: Lever) =>
      moved(lever, what, lever.holePositions.length + 1 - (lever.holes[what] ?? Number.NaN)),
  })),
];

/** The lever with one hook in another hole; `null` where there is no such hole or no arm is left. */
function moved(lever: Lever, what: 'load' | 'pull' | 'fulcrum', hole: number): Lever | null {
  const at = lever.holePositions[hole - 1];
  if (at === undefined || hole === lever.holes[what]) return null;
  const changed: Lever = {
    ...lever,
    inputs: { ...lever.inputs, [what]: at },
    holes: { ...lever.holes, [what]: hole },
  };
  const { fulcrum, load, pull } = changed.inputs;
  return isNothing(fulcrum, load) || isNothing(fulcrum, pull) || sideOf(changed) !== sideOf(lever)
    ? null
    : changed;
}

const isNothing = (a: Measured<Metres>, b: Measured<Metres>): boolean => minus(a, b).value === 0;

/** A hook that lands on the other side of the pin would turn the bar the other way: nobody reads on. */
const sideOf = (lever: Lever): string =>
  [lever.inputs.load, lever.inputs.pull]
    .map((each) => Math.sign(each.value - lever.inputs.fulcrum.value))
    .join();
