import type { UsualMistake } from '../machine.ts';
import type { Windlass } from './station.ts';

/** Base rates are assumptions: common practice, no source. */
const WINDS_ON_ITSELF = 0.02;
const LINES_SWAPPED = 0.01;

/** What goes wrong at a windlass: line that climbs on itself, load and pull on each other's drum. */
export const mistakes: readonly UsualMistake<Windlass>[] = [
  {
    code: 'windlass.line-winds-on-itself',
    baseRate: WINDS_ON_ITSELF,
    change: (windlass) => ({ ...windlass, layers: windlass.layers + 1 }),
  },
  {
    code: 'windlass.lines-swapped',
    baseRate: LINES_SWAPPED,
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
