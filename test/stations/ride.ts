import { kilograms, metres, newtons, radians, ratio } from '../../src/core/quantities/brands.ts';
import type { Ride } from '../../src/core/statics/carriage.ts';
import type { StringPull } from '../../src/core/statics/guided-pull.ts';
import { exactly } from '../../src/core/uncertainty/measured.ts';

/** What a load rides on, for a test: SI numbers, all known exactly. */
export const baseOf = (said: { mu?: number; muStarting?: number; deadMass?: number }): Ride => ({
  rides: 'bare base',
  inputs: {
    deadMass: exactly(kilograms(said.deadMass ?? 0)),
    faces: exactly(ratio(said.mu ?? 0)),
    facesStarting: exactly(ratio(said.muStarting ?? said.mu ?? 0)),
  },
});

export const wheelsOf = (said: {
  wheel?: number;
  axle?: number;
  friction?: number;
  frictionStarting?: number;
  arm?: number;
  share?: number;
  deadMass?: number;
}): Ride => ({
  rides: 'wheels',
  inputs: {
    deadMass: exactly(kilograms(said.deadMass ?? 0)),
    wheelDiameter: exactly(metres(said.wheel ?? 0.025)),
    axleDiameter: exactly(metres(said.axle ?? 0)),
    axleFriction: exactly(ratio(said.friction ?? 0)),
    axleStarting: exactly(ratio(said.frictionStarting ?? said.friction ?? 0)),
    rollingArm: exactly(metres(said.arm ?? 0)),
    rollingShare: exactly(ratio(said.share ?? 0)),
  },
});

export const rollersOf = (said: {
  diameter: number;
  below: number;
  above: number;
  deadMass?: number;
}): Ride => ({
  rides: 'rollers',
  inputs: {
    deadMass: exactly(kilograms(said.deadMass ?? 0)),
    rollerDiameter: exactly(metres(said.diameter)),
    armBelow: exactly(metres(said.below)),
    armAbove: exactly(metres(said.above)),
  },
});

/** A string at a stated lean, by hand or over a guide pulley that passes it down. */
export const stringAt = (lean: number, guide?: { share: number; constant: number }): StringPull => ({
  string: 'leans',
  guide: guide === undefined ? null : { leaves: 'down', angle: -Math.PI / 2 },
  inputs: {
    lean: exactly(radians(lean)),
    guideShare: exactly(ratio(guide?.share ?? 0)),
    guideConstant: exactly(newtons(guide?.constant ?? 0)),
  },
});

/** A string from a guide pulley that stands `above` the hook, read at a distance from it. */
export const stringFrom = (above: number, readAt: number): StringPull => ({
  string: 'comes from the pulley',
  guide: { leaves: 'down', angle: -Math.PI / 2 },
  inputs: {
    pulleyAbove: exactly(metres(above)),
    readAt: exactly(metres(readAt)),
    guideShare: exactly(ratio(0)),
    guideConstant: exactly(newtons(0)),
  },
});
