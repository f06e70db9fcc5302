import { balanceLever } from '../../src/core/machines/lever/lever.ts';
import type { Lever } from '../../src/core/machines/lever/station.ts';
import {
  kilograms,
  metres,
  metresPerSecondSquared,
  newtons,
  radians,
  ratio,
} from '../../src/core/quantities/brands.ts';
import type { Balance, Direction, Grip } from '../../src/core/statics/balance.ts';
import { exactly } from '../../src/core/uncertainty/measured.ts';
import { atBest } from '../../src/core/uncertainty/propagate.ts';

export interface BareLever {
  readonly load: number;
  readonly pull: number;
  readonly fulcrum?: number;
  readonly barMass?: number;
  readonly barCentre?: number;
  readonly pinRadius?: number;
  readonly friction?: number;
  readonly starting?: number;
  /** Places of the holes, for the mistakes that go by holes. */
  readonly holes?: readonly number[];
}

/** A lever for a test: SI numbers, all known exactly; the bar's centre is at the pin where none is said. */
export function leverStation(said: BareLever): Lever {
  const { load, pull, fulcrum = 0, holes = [] } = said;
  const holeAt = (place: number): number => holes.findIndex((each) => Math.abs(each - place) < 1e-9) + 1;
  return {
    machine: 'lever',
    inputs: {
      fulcrum: exactly(metres(fulcrum)),
      load: exactly(metres(load)),
      pull: exactly(metres(pull)),
      barLength: exactly(metres(Math.max(1, ...holes, load, pull))),
      barMass: exactly(kilograms(said.barMass ?? 0)),
      barCentre: exactly(metres(said.barCentre ?? fulcrum)),
      pinRadius: exactly(metres(said.pinRadius ?? 0)),
      pinFriction: exactly(ratio(said.friction ?? 0)),
      pinStarting: exactly(ratio(said.starting ?? said.friction ?? 0)),
      holesAbove: exactly(metres(0)),
      tilt: exactly(radians(0)),
      lean: exactly(radians(0)),
    },
    pullKeepsSquare: false,
    holePositions: holes.map((each) => exactly(metres(each))),
    holes: holes.length === 0 ? {} : { fulcrum: holeAt(fulcrum), load: holeAt(load), pull: holeAt(pull) },
  };
}

/** The real law at its best values; a station that has no balance is a failed test. */
export function leverUnder(
  lever: Lever,
  load: number,
  direction: Direction = 'raise',
  grip: Grip = 'moving',
  gravity = 9.80665,
): Balance {
  const asked = { load: newtons(load), gravity: metresPerSecondSquared(gravity), direction, grip };
  const balance = balanceLever(lever, atBest, asked);
  if (balance.kind === 'not-defined') throw new Error(`no balance: ${balance.because}`);
  return balance;
}
