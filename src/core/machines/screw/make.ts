import { countIn, measuredIn, sourcedIn } from '../../description/filled.ts';
import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import { lengthFact } from '../../diagnostics/facts.ts';
import {
  type Kilograms,
  kilograms,
  type Metres,
  metres,
  type Radians,
  type Ratio,
  radians,
} from '../../quantities/brands.ts';
import { NO_SOURCE } from '../../sources/source.ts';
import { between, exactly, type Measured, plus, times } from '../../uncertainty/measured.ts';
import type { Made, Preparation } from '../machine.ts';
import type { Screw } from './station.ts';
import { type Profile, profileOf, type Size, sizeOf } from './thread.ts';

/** A screw from its part and what is turned; refuses threads that can't be cut and two askings at once. */
export function makeScrew(preparation: Preparation): Made<Screw> {
  const part = preparation.parts.screw;
  if (part === undefined) return { station: null, diagnostics: [] };
  const profile = profileOf(part);
  const { size, diagnostics: ofThread } = sizeOf(part, profile, preparation.partPlace);
  const diagnostics = [...ofThread, ...asked(preparation)];
  if (size === null || diagnostics.some((each) => each.severity === 'error'))
    return { station: null, diagnostics };
  const mean = meanDiameter(measuredIn<Metres>(part.fields, 'mean diameter'), size, profile);
  const root = profile.rootOf(size.diameter.value, size.pitch.value);
  if (root <= 0)
    diagnostics.push({
      code: 'screw.pitch-too-coarse',
      severity: 'error',
      at: preparation.partPlace('screw', size.pitchField),
      facts: { pitch: lengthFact(size.pitch.value), diameter: lengthFact(size.diameter.value) },
    });
  else if (mean.value > size.diameter.value || mean.value < root)
    diagnostics.push({
      code: 'screw.mean-diameter',
      severity: 'error',
      at: preparation.partPlace('screw', 'mean diameter'),
      facts: {
        mean: lengthFact(mean.value),
        root: lengthFact(root),
        diameter: lengthFact(size.diameter.value),
      },
    });
  if (diagnostics.some((each) => each.severity === 'error')) return { station: null, diagnostics };

  const thread = sourcedIn(part.fields, 'thread friction');
  const collar = sourcedIn(part.fields, 'collar friction');
  const arm = measuredIn<Metres>(part.fields, 'lever arm');
  const travel = measuredIn<Metres>(preparation.fields, 'travel');
  const friction = (value: Measured | undefined) => (value ?? exactly(0)) as Measured<Ratio>;
  return {
    diagnostics,
    station: {
      machine: 'screw',
      inputs: {
        diameter: size.diameter,
        meanDiameter: mean,
        pitch: size.pitch,
        flank: measuredIn<Radians>(part.fields, 'flank half angle') ?? exactly(radians(profile.flank)),
        threadFriction: friction(thread?.moving),
        threadStarting: friction(thread?.starting),
        collarDiameter:
          measuredIn<Metres>(part.fields, 'collar diameter') ?? assumedCollar(part.mark, size.diameter.value),
        collarFriction: friction(collar?.moving),
        collarStarting: friction(collar?.starting),
        headMass: measuredIn<Kilograms>(part.fields, 'head mass') ?? exactly(kilograms(0)),
        startGap: measuredIn<Metres>(preparation.fields, 'start gap') ?? exactly(metres(0)),
        ...(arm === undefined ? {} : { arm }),
        ...(travel === undefined ? {} : { travel }),
      },
      starts: countIn(part.fields, 'starts') ?? 1,
      thread: size.thread,
      turns: countIn(preparation.fields, 'turns') ?? null,
      counting: { extra: 0, perTurn: 1 },
    },
  };
}

/** A pointed end rubs on nothing, a flat one on its whole face: the ring lies between. */
const assumedCollar = (mark: string, diameter: Metres): Measured<Metres> =>
  between(`${mark}/collar diameter`, metres(0), diameter, 'assumed', NO_SOURCE);

const meanDiameter = (stated: Measured<Metres> | undefined, size: Size, profile: Profile): Measured<Metres> =>
  stated ?? plus(size.diameter, times<Metres>(size.pitch, -profile.meanDepth));

/** Of turns and travel one is set and the other is read. */
function asked(preparation: Preparation): readonly Diagnostic[] {
  const turns = countIn(preparation.fields, 'turns');
  const travel = measuredIn<Metres>(preparation.fields, 'travel');
  if (turns === undefined || travel === undefined) return [];
  return [
    {
      code: 'screw.turns-and-travel',
      severity: 'error',
      at: preparation.place('travel'),
      facts: { turns, travel: lengthFact(travel.value) },
    },
  ];
}
