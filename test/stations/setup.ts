import type { FilledValue } from '../../src/core/description/fields.ts';
import { type SpringScale, springScaleOf } from '../../src/core/instruments/spring-scale.ts';
import type { Machine, Station } from '../../src/core/machines/machine.ts';
import {
  kilograms,
  type MetresPerSecondSquared,
  metresPerSecondSquared,
  newtons,
} from '../../src/core/quantities/brands.ts';
import type { Dimension } from '../../src/core/quantities/dimension.ts';
import { toSi } from '../../src/core/quantities/unit.ts';
import type { Setup } from '../../src/core/setups/setup.ts';
import { exactly, type Measured, measured } from '../../src/core/uncertainty/measured.ts';

/** A value as the check of a file fills it: with ± half-width (19 of 20) where one is said. */
export function filled(
  id: string,
  value: number,
  unit: string,
  dimension: Dimension,
  halfWidth = 0,
): FilledValue {
  const si = toSi(value, unit);
  const u = toSi(halfWidth, unit) / 1.96;
  const known: Measured =
    halfWidth === 0 ? exactly(si) : measured(si, { id, u, shape: 'normal', origin: 'stated' });
  return {
    type: 'quantity',
    measured: known,
    dimension,
    written: `${value} ${unit}`,
    unit: { symbol: unit, si: toSi(1, unit) },
  };
}

export interface SaidOfScale {
  /** In the unit of the graduations. */
  readonly range?: number;
  readonly graduation?: number;
  readonly unit?: 'N' | 'gf' | 'ozf';
  readonly grams?: number;
  readonly movingGrams?: number;
  readonly springGrams?: number;
  /** What the marks are off by at most, N. */
  readonly accuracy?: number;
  /** Half-width of the scale's mass, g. */
  readonly gramsOff?: number;
  readonly tubeFriction?: number;
  readonly stop?: number;
  readonly overload?: number;
}

/** A spring scale for a test; nothing in it rubs or is off unless it is said. */
export function scaleOf(said: SaidOfScale = {}): SpringScale {
  const { range = 5, graduation = 0.1, unit = 'N' } = said;
  return springScaleOf({
    mark: 'scale',
    kind: 'spring scale',
    fields: {
      range: filled('scale/range', range, unit, 'force'),
      graduation: filled('scale/graduation', graduation, unit, 'force'),
      mass: filled('scale/mass', said.grams ?? 70, 'g', 'mass', said.gramsOff ?? 0),
      'moving part': filled('scale/moving part', said.movingGrams ?? 0, 'g', 'mass'),
      spring: filled('scale/spring', said.springGrams ?? 0, 'g', 'mass'),
      accuracy: filled('scale/accuracy', said.accuracy ?? 0, 'N', 'force'),
      'tube friction': filled('scale/tube friction', said.tubeFriction ?? 0, 'N', 'force'),
      stop: filled('scale/stop', said.stop ?? 0, 'N', 'force'),
      ...(said.overload === undefined
        ? {}
        : { overload: filled('scale/overload', said.overload, 'N', 'force') }),
    },
  });
}

export const STANDARD: Measured<MetresPerSecondSquared> = exactly(metresPerSecondSquared(9.80665));

/** A setup for a test: 200 g, standard gravity, a tapped scale that hangs hook down, no hand scatter. */
export function setupOf<S extends Station>(
  machine: Machine<S>,
  station: S,
  said: Partial<Setup> = {},
): Setup {
  return {
    table: 'table',
    mark: 'setup',
    machine: machine as unknown as Machine,
    station,
    load: { kind: 'mass', mass: exactly(kilograms(0.2)) },
    gravity: STANDARD,
    gravityWorking: [],
    watched: 'pull',
    way: 'raise',
    scale: scaleOf(),
    hang: 'hook down',
    zeroed: 'hook down',
    tapped: true,
    handCarries: false,
    marks: null,
    lift: null,
    reader: { scatter: 0, handLimit: null },
    partner: null,
    isExtra: false,
    place: (field) => ({ file: 'activity', path: field === null ? [] : [field], on: 'value' }),
    ...said,
  };
}

export const weightOf = (force: number): Setup['load'] => ({
  kind: 'weight',
  weight: exactly(newtons(force)),
});
