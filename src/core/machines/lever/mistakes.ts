import type { Metres } from '../../quantities/brands.ts';
import { hungSpeedingUp } from '../../statics/speeding-up.ts';
import { type Measured, minus } from '../../uncertainty/measured.ts';
import type { At } from '../../uncertainty/propagate.ts';
import type { Machine, Reckoning, UsualMistake } from '../machine.ts';
import type { Lever } from './station.ts';

/** Base rates are assumptions: common practice, no source. */
const HOLE_OFF = 0.02;
const FROM_THE_WRONG_END = 0.01;
const HOOKS_SWAPPED = 0.005;

/** What goes wrong at a lever: a hook one hole off, or holes counted from the other end. */
export const mistakes: readonly UsualMistake<Lever>[] = [
  ...(['load', 'pull', 'fulcrum'] as const).flatMap((what) =>
    ([1, -1] as const).map((off) => ({
      code: `lever.${what}-hole-${off > 0 ? 'right' : 'left'}`,
      baseRate: what === 'fulcrum' ? HOLE_OFF / 4 : HOLE_OFF / 2,
      // Each group hangs its hooks itself; the pin stays as the last group left it.
      persists: what === 'fulcrum' ? ('station' as const) : ('reading' as const),
      change: (lever: Lever) => moved(lever, what, (lever.holes[what] ?? Number.NaN) + off),
    })),
  ),
  ...(['load', 'pull'] as const).map((what) => ({
    code: `lever.${what}-counted-from-the-other-end`,
    baseRate: FROM_THE_WRONG_END / 2,
    persists: 'group' as const,
    change: (lever: Lever) =>
      moved(lever, what, lever.holePositions.length + 1 - (lever.holes[what] ?? Number.NaN)),
  })),
  { code: 'lever.hooks-swapped', baseRate: HOOKS_SWAPPED, persists: 'reading', change: swapped },
];

/** The load hung where the scale belongs, and the scale where the load belongs. */
function swapped(lever: Lever): Lever | null {
  const { load, pull } = lever.inputs;
  const { holes } = lever;
  if (holes.load === undefined || holes.pull === undefined) return null;
  return {
    ...lever,
    inputs: { ...lever.inputs, load: pull, pull: load },
    holes: { ...holes, load: holes.pull, pull: holes.load },
  };
}

export const speedingUp: NonNullable<Machine<Lever>['speedingUp']> = (_, _at, asked, acceleration) =>
  hungSpeedingUp(asked, 0, acceleration);

/** Arms taken upside down, or measured from the end of the bar instead of from the pin. */
export const reckonings: readonly Reckoning<Lever>[] = [
  {
    code: 'lever.arms-upside-down',
    ratio: (lever, at) => Math.abs(arm(lever, at, 'load') / arm(lever, at, 'pull')),
  },
  {
    code: 'lever.arms-from-the-end',
    ratio: (lever, at) => {
      const { load, pull, fulcrum, barLength } = lever.inputs;
      const fromRight = at(fulcrum) > at(barLength) / 2;
      const from = (place: Measured<Metres>): number => (fromRight ? at(barLength) - at(place) : at(place));
      return from(load) > 0 ? from(pull) / from(load) : null;
    },
  },
];

const arm = (lever: Lever, at: At, what: 'load' | 'pull'): number =>
  at(lever.inputs[what]) - at(lever.inputs.fulcrum);

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
