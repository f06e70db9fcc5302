import type { Fields, Sourced } from '../description/fields.ts';
import { measuredIn, sourcedIn } from '../description/filled.ts';
import type { Part, PartKind } from '../description/part.ts';
import type { Diagnostic, Place } from '../diagnostics/diagnostic.ts';
import { lengthFact } from '../diagnostics/facts.ts';
import { kilograms, type Metres, metres, type Ratio, ratio } from '../quantities/brands.ts';
import type { Ride } from '../statics/carriage.ts';
import { between, exactly, type Measured, plus } from '../uncertainty/measured.ts';

/** An axle left out is this share of its wheel's diameter: common practice, no source. */
const AXLE_SHARE = [0.06, 0.12] as const;

const mass = {
  type: 'quantity',
  dimensions: ['mass'],
  least: 0,
  required: true,
  meaning: 'field.mass',
  example: '50 g',
} as const;

const length = {
  type: 'quantity',
  dimensions: ['length'],
  above: 0,
  meaning: 'field.length',
  example: '12 cm',
} as const;

/**
 * A block on its bare base. Friction belongs to a pair of faces: the block's field names the pair that
 * it is usually dragged on, and a setup's own `faces` stands in front of it.
 */
export const block: PartKind = {
  kind: 'block',
  meaning: 'part.block',
  fields: {
    mass,
    length,
    faces: {
      type: 'sourced',
      table: 'friction',
      dimensions: ['ratio'],
      assumed: 'wood on wood',
      meaning: 'carriage.field.faces',
      example: 'wood on wood',
    },
  },
};

export const cart: PartKind = {
  kind: 'cart',
  meaning: 'part.cart',
  fields: {
    mass,
    length,
    'wheel diameter': {
      type: 'quantity',
      dimensions: ['length'],
      above: 0,
      required: true,
      meaning: 'carriage.field.wheel-diameter',
      example: '25 mm',
    },
    'axle diameter': {
      type: 'quantity',
      dimensions: ['length'],
      above: 0,
      meaning: 'carriage.field.axle-diameter',
      example: '2 mm',
    },
    'axle friction': {
      type: 'sourced',
      table: 'bearing',
      dimensions: ['ratio'],
      assumed: 'dry pin',
      meaning: 'carriage.field.axle-friction',
      example: 'dry pin',
    },
    'rolling arm': {
      type: 'sourced',
      table: 'rolling',
      dimensions: ['length'],
      meaning: 'carriage.field.rolling-arm',
      example: '0.5 mm',
    },
    'rolling coefficient': {
      type: 'sourced',
      table: 'rolling',
      dimensions: ['ratio'],
      assumed: 'cart with hard tyres on a good floor',
      meaning: 'carriage.field.rolling-coefficient',
      example: '0.01..0.03',
    },
    'flange drag': {
      type: 'quantity',
      dimensions: ['ratio'],
      least: 0,
      meaning: 'carriage.field.flange-drag',
      example: '0.003..0.005',
    },
  },
};

export const rollers: PartKind = {
  kind: 'rollers',
  meaning: 'part.rollers',
  fields: {
    mass: { ...mass, meaning: 'carriage.field.plank-mass' },
    length,
    diameter: {
      type: 'quantity',
      dimensions: ['length'],
      above: 0,
      required: true,
      meaning: 'carriage.field.roller-diameter',
      example: '12 mm',
    },
    'arm below': {
      type: 'sourced',
      table: 'rolling',
      dimensions: ['length'],
      assumed: 'wood on wood',
      meaning: 'carriage.field.arm-below',
      example: '1.2 mm',
    },
    'arm above': {
      type: 'sourced',
      table: 'rolling',
      dimensions: ['length'],
      assumed: 'wood on wood',
      meaning: 'carriage.field.arm-above',
      example: '1.2 mm',
    },
  },
};

/** What a load can ride on: bare base, wheels, rollers. */
export const carriageKinds: readonly PartKind[] = [block, cart, rollers];

/** What a setup may say about the faces, since friction belongs to the pair and not to the block. */
export const carriageFields: Fields = {
  faces: {
    type: 'sourced',
    table: 'friction',
    dimensions: ['ratio'],
    meaning: 'carriage.field.faces-here',
    example: 'wood on laminate',
  },
};

export interface MadeRide {
  readonly ride: Ride | null;
  readonly diagnostics: readonly Diagnostic[];
}

/** What the load rides on, from a part; `facesHere` is the pair of faces that the setup names. */
export function rideOf(
  part: Part,
  facesHere: Sourced | undefined,
  partPlace: (field: string | null) => Place,
  facesPlace: Place,
): MadeRide {
  const deadMass = measuredIn<ReturnType<typeof kilograms>>(part.fields, 'mass') ?? exactly(kilograms(0));
  const unused: readonly Diagnostic[] =
    facesHere === undefined || part.kind === 'block'
      ? []
      : [
          {
            code: 'carriage.faces-unused',
            severity: 'warning',
            at: facesPlace,
            facts: { part: part.mark, kind: part.kind },
          },
        ];
  switch (part.kind) {
    case 'block': {
      const faces = facesHere ?? sourcedIn(part.fields, 'faces');
      return {
        diagnostics: [],
        ride: {
          rides: 'bare base',
          inputs: { deadMass, faces: moving(faces), facesStarting: starting(faces) },
        },
      };
    }
    case 'rollers':
      return {
        diagnostics: unused,
        ride: {
          rides: 'rollers',
          inputs: {
            deadMass,
            armBelow: moving(sourcedIn(part.fields, 'arm below')),
            armAbove: moving(sourcedIn(part.fields, 'arm above')),
            rollerDiameter: measuredIn<Metres>(part.fields, 'diameter') ?? exactly(metres(1)),
          },
        },
      };
    case 'cart':
      return onWheels(part, deadMass, partPlace, unused);
    default:
      return { ride: null, diagnostics: unused };
  }
}

function onWheels(
  part: Part,
  deadMass: Measured<ReturnType<typeof kilograms>>,
  place: (field: string | null) => Place,
  unused: readonly Diagnostic[],
): MadeRide {
  const wheel = measuredIn<Metres>(part.fields, 'wheel diameter');
  if (wheel === undefined) return { ride: null, diagnostics: unused };
  const axle =
    measuredIn<Metres>(part.fields, 'axle diameter') ??
    between(
      `${part.mark}/axle diameter`,
      metres(AXLE_SHARE[0] * wheel.value),
      metres(AXLE_SHARE[1] * wheel.value),
      'assumed',
      'common practice, no source',
    );
  const arm = sourcedIn(part.fields, 'rolling arm');
  const share = sourcedIn(part.fields, 'rolling coefficient');
  const diagnostics: Diagnostic[] = [...unused];
  if (axle.value >= wheel.value)
    diagnostics.push({
      code: 'carriage.axle-too-thick',
      severity: 'error',
      at: place('axle diameter'),
      facts: { axle: lengthFact(axle.value), wheel: lengthFact(wheel.value), part: part.mark },
    });
  if (arm !== undefined && share !== undefined && isWritten(part, 'rolling coefficient'))
    diagnostics.push({
      code: 'carriage.two-rollings',
      severity: 'error',
      at: place('rolling coefficient'),
      facts: { arm: lengthFact(arm.moving.value), share: share.moving.value, part: part.mark },
    });
  if (diagnostics.some((each) => each.severity === 'error')) return { ride: null, diagnostics };
  const friction = sourcedIn(part.fields, 'axle friction');
  return {
    diagnostics,
    ride: {
      rides: 'wheels',
      inputs: {
        deadMass,
        wheelDiameter: wheel,
        axleDiameter: axle,
        axleFriction: moving(friction),
        axleStarting: starting(friction),
        rollingArm: moving(arm),
        // A stated arm stands in place of the coefficient that would otherwise be assumed.
        rollingShare: plus(
          arm === undefined ? moving<Ratio>(share) : exactly(ratio(0)),
          measuredIn<Ratio>(part.fields, 'flange drag') ?? exactly(ratio(0)),
        ),
      },
    },
  };
}

/** A sourced field that was left out is filled with the kind that it assumes, and has no written text. */
const isWritten = (part: Part, key: string): boolean => {
  const field = part.fields[key];
  return field?.type === 'sourced' && field.written !== '';
};

const moving = <Q extends number>(sourced: Sourced | undefined): Measured<Q> =>
  (sourced?.moving ?? exactly(0)) as Measured<Q>;
const starting = <Q extends number>(sourced: Sourced | undefined): Measured<Q> =>
  (sourced?.starting ?? exactly(0)) as Measured<Q>;
