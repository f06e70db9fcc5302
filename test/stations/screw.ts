import type { Screw } from '../../src/core/machines/screw/station.ts';
import { kilograms, metres, radians, ratio } from '../../src/core/quantities/brands.ts';
import { exactly } from '../../src/core/uncertainty/measured.ts';

/** A screw for a test: SI numbers, all known exactly; square thread, no friction unless said. */
export function screwStation(said: {
  readonly pitch: number;
  readonly meanDiameter?: number;
  readonly diameter?: number;
  readonly starts?: number;
  readonly flank?: number;
  readonly friction?: number;
  readonly starting?: number;
  readonly collarDiameter?: number;
  readonly collarFriction?: number;
  readonly headMass?: number;
  readonly arm?: number;
  readonly startGap?: number;
  readonly travel?: number;
  readonly turns?: number;
}): Screw {
  const mean = said.meanDiameter ?? 0.01;
  return {
    machine: 'screw',
    inputs: {
      diameter: exactly(metres(said.diameter ?? mean + said.pitch / 2)),
      meanDiameter: exactly(metres(mean)),
      pitch: exactly(metres(said.pitch)),
      flank: exactly(radians(said.flank ?? 0)),
      threadFriction: exactly(ratio(said.friction ?? 0)),
      threadStarting: exactly(ratio(said.starting ?? said.friction ?? 0)),
      collarDiameter: exactly(metres(said.collarDiameter ?? 0)),
      collarFriction: exactly(ratio(said.collarFriction ?? 0)),
      collarStarting: exactly(ratio(said.collarFriction ?? 0)),
      headMass: exactly(kilograms(said.headMass ?? 0)),
      startGap: exactly(metres(said.startGap ?? 0)),
      ...(said.arm === undefined ? {} : { arm: exactly(metres(said.arm)) }),
      ...(said.travel === undefined ? {} : { travel: exactly(metres(said.travel)) }),
    },
    starts: said.starts ?? 1,
    thread: null,
    turns: said.turns ?? null,
    counting: { extra: 0, perTurn: 1 },
  };
}
