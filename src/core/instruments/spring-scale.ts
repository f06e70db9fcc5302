import type { Filled } from '../description/fields.ts';
import { dimensionIn, measuredIn } from '../description/filled.ts';
import type { Part } from '../description/part.ts';
import {
  type Kilograms,
  kilograms,
  type MetresPerSecondSquared,
  type Newtons,
  newtons,
  type Radians,
} from '../quantities/brands.ts';
import { scaleAccuracy, scaleMass, scaleMovingShare, tubeFriction } from '../sources/scales.ts';
import { between, exactly, type Measured, measured, product } from '../uncertainty/measured.ts';
import type { At } from '../uncertainty/propagate.ts';
import type { Graduations } from './graduations.ts';

/** A spring scale: its marks, where it stops, and what its own weight does when it is turned. */
export interface SpringScale {
  readonly mark: string;
  readonly graduations: Graduations;
  /** The second column of a dual scale. */
  readonly other: Graduations | null;
  readonly range: Newtons;
  readonly stop: Newtons;
  /** Beyond this pull the spring stays stretched. */
  readonly overload: Newtons | null;
  readonly inputs: {
    /** The whole scale. */
    readonly mass: Measured<Kilograms>;
    /** Hook with rod, and the spring; `null` where the turn-over shift itself is known. */
    readonly moving: { readonly part: Measured<Kilograms>; readonly spring: Measured<Kilograms> } | null;
    readonly turnOver: Measured<Newtons> | null;
    readonly tubeFriction: Measured<Newtons>;
    /** What the marks are off by: 0 with its doubt. */
    readonly accuracy: Measured<Newtons>;
  };
}

/** The scale that a part is; what the kit does not know is assumed from the sources. */
export function springScaleOf(part: Part): SpringScale {
  const { fields, mark } = part;
  const range = measuredIn<Newtons>(fields, 'range')?.value ?? newtons(0);
  const mass =
    measuredIn<Kilograms>(fields, 'mass') ??
    between(`${mark}/mass`, ...scaleMass.between, 'assumed', scaleMass.source);
  const turnOver = measuredIn<Newtons>(fields, 'turn-over shift') ?? null;
  return {
    mark,
    graduations: graduationsIn(fields, 'graduation') ?? { step: range, unit: 'N', unitSi: 1 },
    other: graduationsIn(fields, 'other graduation'),
    range,
    stop: measuredIn<Newtons>(fields, 'stop')?.value ?? newtons(0),
    overload: measuredIn<Newtons>(fields, 'overload')?.value ?? null,
    inputs: {
      mass,
      moving: turnOver === null ? movingOf(part, mass) : null,
      turnOver,
      tubeFriction:
        measuredIn<Newtons>(fields, 'tube friction') ??
        between(`${mark}/tube friction`, ...tubeFriction.between, 'assumed', tubeFriction.source),
      accuracy: accuracyOf(part, range),
    },
  };
}

/**
 * Turn-over figure D: what the scale shows too little when it hangs upside down with a zero set hook
 * down. D = 2 m g with m = hook + rod + half of the spring, or straight from the turn-over test.
 * Derived from the balance of the moving part; no published page states it.
 */
export function turnOverShift(scale: SpringScale, at: At, gravity: MetresPerSecondSquared): Newtons {
  const { turnOver, moving } = scale.inputs;
  if (turnOver !== null) return at(turnOver);
  return newtons(moving === null ? 0 : (2 * at(moving.part) + at(moving.spring)) * gravity);
}

/**
 * What the scale shows less than the force at its hook: (D/2)(cos z - cos t), with t the angle of
 * the hook from hanging straight down and z the same angle when the zero was set.
 */
export const ownShift = (shift: Newtons, angle: Radians, zeroedAt: Radians): Newtons =>
  newtons((shift / 2) * (Math.cos(zeroedAt) - Math.cos(angle)));

/** Weight of the whole scale: the least it can pull with when it hangs upside down. */
export const ownWeight = (scale: SpringScale, at: At, gravity: MetresPerSecondSquared): Newtons =>
  newtons(at(scale.inputs.mass) * gravity);

export function measuredOfScale(scale: SpringScale): readonly Measured[] {
  const { mass, moving, turnOver, tubeFriction, accuracy } = scale.inputs;
  return [mass, moving?.part, moving?.spring, turnOver, tubeFriction, accuracy].filter(
    (each) => each !== null && each !== undefined,
  );
}

function movingOf(part: Part, mass: Measured<Kilograms>) {
  const assumedShare = between(
    `${part.mark}/moving part`,
    ...scaleMovingShare.between,
    'assumed',
    scaleMovingShare.source,
  );
  return {
    part: measuredIn<Kilograms>(part.fields, 'moving part') ?? product<Kilograms>(mass, assumedShare),
    spring: measuredIn<Kilograms>(part.fields, 'spring') ?? exactly(kilograms(0)),
  };
}

/** Stated as a force or as a share of the range; the marks are anywhere within it, evenly. */
function accuracyOf(part: Part, range: Newtons): Measured<Newtons> {
  const stated = measuredIn(part.fields, 'accuracy');
  const half =
    stated === undefined
      ? scaleAccuracy.share * range
      : stated.value * (dimensionIn(part.fields, 'accuracy') === 'ratio' ? range : 1);
  return measured(newtons(0), {
    id: `${part.mark}/accuracy`,
    u: half / Math.sqrt(3),
    shape: 'even',
    ...(stated === undefined
      ? { origin: 'assumed', source: scaleAccuracy.source }
      : { origin: 'stated' as const }),
  });
}

function graduationsIn(fields: Filled, key: string): Graduations | null {
  const field = fields[key];
  if (field?.type !== 'quantity') return null;
  const { symbol, si } = field.unit ?? { symbol: 'N', si: 1 };
  return { step: field.measured.value, unit: symbol, unitSi: si };
}
