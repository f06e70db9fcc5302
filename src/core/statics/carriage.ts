import type { WorkingLine } from '../description/working.ts';
import type { Kilograms, Metres, Ratio } from '../quantities/brands.ts';
import type { Measured } from '../uncertainty/measured.ts';
import type { At } from '../uncertainty/propagate.ts';
import type { Grip } from './balance.ts';

/** What the load rides on: its bare base, rollers under a plank, or wheels on axles. */
export type Ride = BareBase | Rollers | Wheels;

export interface BareBase {
  readonly rides: 'bare base';
  readonly inputs: {
    readonly deadMass: Measured<Kilograms>;
    readonly faces: Measured<Ratio>;
    readonly facesStarting: Measured<Ratio>;
  };
}

export interface Rollers {
  readonly rides: 'rollers';
  readonly inputs: {
    /** The plank on the rollers. */
    readonly deadMass: Measured<Kilograms>;
    readonly armBelow: Measured<Metres>;
    readonly armAbove: Measured<Metres>;
    readonly rollerDiameter: Measured<Metres>;
  };
}

export interface Wheels {
  readonly rides: 'wheels';
  readonly inputs: {
    readonly deadMass: Measured<Kilograms>;
    readonly wheelDiameter: Measured<Metres>;
    readonly axleDiameter: Measured<Metres>;
    readonly axleFriction: Measured<Ratio>;
    readonly axleStarting: Measured<Ratio>;
    /** Rolling of the rim as an arm, and as a plain share of the load; they add. */
    readonly rollingArm: Measured<Metres>;
    readonly rollingShare: Measured<Ratio>;
  };
}

/** What holds a carriage back, as shares of the force that presses it down. */
export interface Resistance {
  /** Sum of the shares: drag over pressing force. */
  readonly coefficient: number;
  readonly losses: readonly { readonly cause: string; readonly share: number }[];
  readonly line: WorkingLine;
}

/**
 * How hard a carriage is to keep moving, or to start: drag = C N.
 *
 *     bare base  C = mu                 (starting: the starting friction of the faces)
 *     rollers    C = (b1 + b2)/D        (rolling arms of both sides over the roller's diameter)
 *     wheels     C = mu_b d/D + 2 b/D + c   (axle friction, rolling arm, share at the rim)
 *
 * Source: dry friction, OpenStax College Physics 2e, 5.1; rolling arm over the radius, the formula bank
 * behind the sourced rolling table (its table 7.22); axle in its hole as a friction circle (from
 * memory). Holds for a hard flat face. Neglects the weight of loose rollers and that wheels
 * do not load their own axles. A rolling arm has no starting value; an axle has one where it is stated.
 */
export function resistance(ride: Ride, at: At, grip: Grip): Resistance {
  const acts = grip === 'none' ? 0 : 1;
  switch (ride.rides) {
    case 'bare base': {
      const { faces, facesStarting } = ride.inputs;
      const mu = acts * at(grip === 'starting' ? facesStarting : faces);
      return {
        coefficient: mu,
        losses: [{ cause: 'carriage.faces', share: mu }],
        line: line('mu', { mu }, mu, 'OpenStax College Physics 2e, 5.1'),
      };
    }
    case 'rollers': {
      const { armBelow, armAbove, rollerDiameter } = ride.inputs;
      const b1 = acts * at(armBelow);
      const b2 = acts * at(armAbove);
      const D = at(rollerDiameter);
      return {
        coefficient: (b1 + b2) / D,
        losses: [
          { cause: 'carriage.rollers-below', share: b1 / D },
          { cause: 'carriage.rollers-above', share: b2 / D },
        ],
        line: line(
          '(b1 + b2)/dR',
          { b1, b2, dR: D },
          (b1 + b2) / D,
          'rolling arms of both sides, balance of moments',
        ),
      };
    }
    case 'wheels': {
      const { wheelDiameter, axleDiameter, axleFriction, axleStarting, rollingArm, rollingShare } =
        ride.inputs;
      const D = at(wheelDiameter);
      const d = at(axleDiameter);
      const mub = acts * at(grip === 'starting' ? axleStarting : axleFriction);
      const b = acts * at(rollingArm);
      const c = acts * at(rollingShare);
      const axles = (mub * d) / D;
      const rims = (2 * b) / D + c;
      return {
        coefficient: axles + rims,
        losses: [
          { cause: 'carriage.axles', share: axles },
          { cause: 'carriage.rims', share: rims },
        ],
        line: line(
          'mub*dA/dW + 2*b/dW + cR',
          { mub, dA: d, dW: D, b, cR: c },
          axles + rims,
          'axle friction and rolling arm, balance of moments on a wheel',
        ),
      };
    }
  }
}

/**
 * `bare base` as it stands in a sentence key.
 *
 * @example keyOf({ rides: 'bare base' }) // => 'bare-base'
 */
export const keyOf = ({ rides }: Pick<Ride, 'rides'>): string => rides.replace(' ', '-');

const line = (
  formula: string,
  values: WorkingLine['values'],
  value: number,
  source: string,
): WorkingLine => ({ what: 'carriage.coefficient', symbol: 'C', formula, values, value, unit: '1', source });
