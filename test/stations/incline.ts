import { drag } from '../../src/core/machines/drag/index.ts';
import type { Drag } from '../../src/core/machines/drag/station.ts';
import { inclinedPlane } from '../../src/core/machines/incline/index.ts';
import type { InclinedPlane } from '../../src/core/machines/incline/station.ts';
import { metres, metresPerSecondSquared, newtons, radians } from '../../src/core/quantities/brands.ts';
import type { Balance, Direction, Grip } from '../../src/core/statics/balance.ts';
import type { Ride } from '../../src/core/statics/carriage.ts';
import type { StringPull } from '../../src/core/statics/guided-pull.ts';
import { exactly } from '../../src/core/uncertainty/measured.ts';
import { atBest } from '../../src/core/uncertainty/propagate.ts';
import { stringAt } from './ride.ts';

export type Slope = { readonly angle: number } | { readonly rise: number; readonly length: number };

/** An inclined plane for a test: SI numbers, all known exactly. */
export function planeOf(slope: Slope, ride: Ride, string: StringPull = stringAt(0)): InclinedPlane {
  const steep =
    'angle' in slope
      ? ({ steep: 'measured', inputs: { angle: exactly(radians(slope.angle)) } } as const)
      : ({
          steep: 'rise over length',
          inputs: { rise: exactly(metres(slope.rise)), slopeLength: exactly(metres(slope.length)) },
        } as const);
  const boardLength = exactly(metres('angle' in slope ? 1 : slope.length));
  return {
    ...steep,
    ...ride,
    ...string,
    machine: 'inclined plane',
    inputs: { ...steep.inputs, ...ride.inputs, ...string.inputs, boardLength },
    pinHeights: [],
    pin: null,
    propped: false,
  } as InclinedPlane;
}

/** A load on the level for a test. */
export const dragOf = (ride: Ride, string: StringPull = stringAt(0)): Drag =>
  ({
    ...ride,
    ...string,
    machine: 'drag on the level',
    inputs: { ...ride.inputs, ...string.inputs },
  }) as Drag;

/** The real law of either machine at its best values; a station that has no balance is a failed test. */
export function balanceUnder(
  station: InclinedPlane | Drag,
  load: number,
  direction: Direction = 'raise',
  grip: Grip = 'moving',
  gravity = 9.80665,
): Balance {
  const asked = { load: newtons(load), gravity: metresPerSecondSquared(gravity), direction, grip };
  const balance =
    station.machine === 'inclined plane'
      ? inclinedPlane.balance(station, atBest, asked)
      : drag.balance(station, atBest, asked);
  if (balance.kind === 'not-defined') throw new Error(`no balance: ${balance.because}`);
  return balance;
}

/** A figure of the printed working, by its symbol. */
export function figureOf(balance: Balance, symbol: string): number {
  const line = balance.working().find((each) => each.symbol === symbol);
  if (line === undefined) throw new Error(`no line for ${symbol}`);
  return line.value;
}
