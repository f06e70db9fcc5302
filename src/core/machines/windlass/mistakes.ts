import { hungSpeedingUp } from '../../statics/speeding-up.ts';
import type { Machine, Reckoning, UsualMistake } from '../machine.ts';
import type { Windlass } from './station.ts';
import { arms } from './windlass.ts';

/** Base rates are assumptions: common practice, no source. */
const WINDS_ON_ITSELF = 0.02;
const LINES_SWAPPED = 0.01;

/** What goes wrong at a windlass: line that climbs on itself, load and pull on each other's drum. */
export const mistakes: readonly UsualMistake<Windlass>[] = [
  {
    code: 'windlass.line-winds-on-itself',
    baseRate: WINDS_ON_ITSELF,
    persists: 'station',
    change: (windlass) => ({ ...windlass, layers: windlass.layers + 1 }),
  },
  {
    code: 'windlass.lines-swapped',
    baseRate: LINES_SWAPPED,
    persists: 'station',
    change: (windlass) => {
      if (windlass.turnedBy === 'crank') return null;
      const { wheelRadius, axleRadius, wheelLine, axleLine } = windlass.inputs;
      return {
        ...windlass,
        layers: 0,
        inputs: {
          ...windlass.inputs,
          wheelRadius: axleRadius,
          axleRadius: wheelRadius,
          wheelLine: axleLine,
          axleLine: wheelLine,
        },
      };
    },
  },
];

export const speedingUp: NonNullable<Machine<Windlass>['speedingUp']> = (_, _at, asked, acceleration) =>
  hungSpeedingUp(asked, 0, acceleration);

/** Radius of one and diameter of the other, or wheel and axle upside down. */
export const reckonings: readonly Reckoning<Windlass>[] = [
  {
    code: 'windlass.radius-for-diameter',
    ratio: ({ inputs }, at) => at(inputs.wheelRadius) / (2 * at(inputs.axleRadius)),
  },
  {
    code: 'windlass.diameter-for-radius',
    ratio: ({ inputs }, at) => (2 * at(inputs.wheelRadius)) / at(inputs.axleRadius),
  },
  {
    code: 'windlass.upside-down',
    ratio: ({ inputs }, at) => at(inputs.axleRadius) / at(inputs.wheelRadius),
  },
  {
    code: 'windlass.with-the-line',
    isSound: true,
    // To the middle of the lines, as the key reckons the pull.
    ratio: (windlass, at) => {
      const { a, c } = arms(windlass, at);
      return c / a;
    },
  },
];
