import type { Windlass } from '../../src/core/machines/windlass/station.ts';
import { kilograms, metres, radians, ratio } from '../../src/core/quantities/brands.ts';
import { exactly } from '../../src/core/uncertainty/measured.ts';

/** A windlass for a test: SI numbers, all known exactly; what is left out is nothing. */
export function windlassStation(said: {
  readonly wheel: number;
  readonly axle: number;
  readonly wheelLine?: number;
  readonly axleLine?: number;
  readonly drumMass?: number;
  readonly bearing?: number;
  readonly friction?: number;
  readonly starting?: number;
  readonly lean?: number;
  readonly turnedBy?: Windlass['turnedBy'];
  readonly pull?: Windlass['pull'];
  readonly layers?: number;
}): Windlass {
  return {
    machine: 'windlass',
    inputs: {
      wheelRadius: exactly(metres(said.wheel)),
      axleRadius: exactly(metres(said.axle)),
      wheelLine: exactly(metres(said.wheelLine ?? 0)),
      axleLine: exactly(metres(said.axleLine ?? 0)),
      drumMass: exactly(kilograms(said.drumMass ?? 0)),
      bearingRadius: exactly(metres(said.bearing ?? 0)),
      bearingFriction: exactly(ratio(said.friction ?? 0)),
      bearingStarting: exactly(ratio(said.starting ?? said.friction ?? 0)),
      lean: exactly(radians(said.lean ?? 0)),
    },
    turnedBy: said.turnedBy ?? 'wheel',
    pull: said.pull ?? 'down',
    layers: said.layers ?? 0,
  };
}
