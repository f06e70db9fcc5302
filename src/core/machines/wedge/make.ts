import { choiceIn, measuredIn, sourcedIn } from '../../description/filled.ts';
import type { Part } from '../../description/part.ts';
import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import { lengthFact } from '../../diagnostics/facts.ts';
import {
  type Kilograms,
  kilograms,
  type Metres,
  metres,
  type Newtons,
  type NewtonsPerMetre,
  newtons,
  newtonsPerMetre,
  type Radians,
  type Ratio,
} from '../../quantities/brands.ts';
import { NO_SOURCE } from '../../sources/source.ts';
import { between, exactly, type Measured, product, times } from '../../uncertainty/measured.ts';
import type { Made, Preparation } from '../machine.ts';
import { BLOW_SHARE } from './blow.ts';
import type { Wedge } from './station.ts';

/** A wedge from its part, its cords and how far it is in; refuses what lies past its own back. */
export function makeWedge(preparation: Preparation): Made<Wedge> {
  const { wedge: part, cords } = preparation.parts;
  if (part === undefined) return { station: null, diagnostics: [] };
  const form = choiceIn(part.fields, 'kind of wedge') === 'lifting' ? 'lifting' : 'splitting';
  const pushed = choiceIn(preparation.fields, 'pushed') === 'down' ? 'down' : 'level';
  const length = measuredIn<Metres>(part.fields, 'length') ?? exactly(metres(0));
  const mark = measuredIn<Metres>(preparation.fields, 'pushed in');
  const thickness = thicknessOf(part, form, length);
  const diagnostics = [
    ...angleFaults(part, preparation),
    ...useFaults(form, pushed, mark, length, preparation),
  ];
  if (thickness === undefined || diagnostics.length > 0) return { station: null, diagnostics };

  const face = sourcedIn(part.fields, 'face friction');
  const base = sourcedIn(part.fields, 'base friction');
  const stop = sourcedIn(preparation.fields, 'stop friction');
  const friction = (value: Measured | undefined) => (value ?? exactly(0)) as Measured<Ratio>;
  const mostOpening = cords && measuredIn<Metres>(cords.fields, 'most opening');
  return {
    diagnostics,
    station: {
      machine: 'wedge',
      form,
      pushed,
      hasCords: cords !== undefined,
      hasMark: mark !== undefined,
      inputs: {
        length,
        thickness,
        mass: measuredIn<Kilograms>(part.fields, 'mass') ?? exactly(kilograms(0)),
        faceFriction: friction(face?.moving),
        faceStarting: friction(face?.starting),
        baseFriction: friction(base?.moving),
        baseStarting: friction(base?.starting),
        stopFriction: friction(stop?.moving),
        stopStarting: friction(stop?.starting),
        preTension: (cords && measuredIn<Newtons>(cords.fields, 'pre-tension')) ?? exactly(newtons(0)),
        stiffness:
          (cords && measuredIn<NewtonsPerMetre>(cords.fields, 'stiffness')) ?? exactly(newtonsPerMetre(0)),
        advance: mark ?? exactly(metres(0)),
        ...(mostOpening === undefined ? {} : { mostOpening }),
        ...mallet(preparation),
      },
    },
  };
}

/** Thickness at the back, as measured or from the whole angle at the edge. */
function thicknessOf(
  part: Part,
  form: Wedge['form'],
  length: Measured<Metres>,
): Measured<Metres> | undefined {
  const stated = measuredIn<Metres>(part.fields, 'thickness');
  if (stated !== undefined) return stated;
  const angle = measuredIn<Radians>(part.fields, 'whole angle');
  if (angle === undefined) return undefined;
  const faces = form === 'lifting' ? 1 : 2;
  const tangent = Math.tan(angle.value / faces);
  // d(n tan(angle/n))/d angle = 1 + tan², whatever the number n of working faces.
  const ratio: Measured<Ratio> = {
    ...times<Ratio>(angle, 1 + tangent ** 2),
    value: (faces * tangent) as Ratio,
  };
  return product<Metres>(length, ratio);
}

function angleFaults(part: Part, { partPlace }: Preparation): readonly Diagnostic[] {
  const thickness = measuredIn<Metres>(part.fields, 'thickness');
  const angle = measuredIn<Radians>(part.fields, 'whole angle');
  const steep = choiceIn(part.fields, 'kind of wedge') === 'lifting' ? Math.PI / 2 : Math.PI;
  const fault = (code: string, field: string | null, facts: Diagnostic['facts']): Diagnostic[] => [
    { code, severity: 'error', at: partPlace('wedge', field), facts },
  ];
  if (thickness === undefined && angle === undefined) return fault('wedge.no-angle', null, {});
  if (thickness !== undefined && angle !== undefined)
    return fault('wedge.angle-twice', 'whole angle', {
      thickness: lengthFact(thickness.value),
      angle: { si: angle.value, dimension: 'angle' },
    });
  return angle !== undefined && angle.value >= steep
    ? fault('wedge.no-edge', 'whole angle', { angle: { si: angle.value, dimension: 'angle' } })
    : [];
}

function useFaults(
  form: Wedge['form'],
  pushed: Wedge['pushed'],
  mark: Measured<Metres> | undefined,
  length: Measured<Metres>,
  { parts, place }: Preparation,
): readonly Diagnostic[] {
  const found: Diagnostic[] = [];
  const fault = (code: string, field: string | null, facts: Diagnostic['facts'] = {}) =>
    found.push({ code, severity: 'error', at: place(field), facts });
  if (mark !== undefined && mark.value > length.value)
    fault('wedge.past-its-back', 'pushed in', {
      advance: lengthFact(mark.value),
      length: lengthFact(length.value),
    });
  if (form === 'lifting' && pushed === 'down') fault('wedge.lifting-goes-level', 'pushed');
  if (form === 'lifting' && parts.cords !== undefined)
    fault('wedge.lifting-has-no-cords', 'cords', { part: parts.cords.mark });
  if (form === 'splitting' && parts.cords !== undefined && mark === undefined)
    fault('wedge.how-far-in', null, { part: parts.cords.mark });
  return found;
}

/** What strikes, where a mallet and its fall are named; the share that arrives is a wide guess. */
function mallet({ parts, fields }: Preparation) {
  const malletMass = parts.mallet && measuredIn<Kilograms>(parts.mallet.fields, 'mass');
  const malletFalls = measuredIn<Metres>(fields, 'mallet falls');
  if (parts.mallet === undefined || malletMass === undefined) return {};
  // A mallet that lies on the table is one to take care of, whether or not its fall is known.
  if (malletFalls === undefined) return { malletMass };
  const assumed = () =>
    between(
      `${parts.mallet?.mark}/blow share`,
      BLOW_SHARE[0] as Ratio,
      BLOW_SHARE[1] as Ratio,
      'assumed',
      NO_SOURCE,
    );
  return { malletMass, malletFalls, blowShare: measuredIn<Ratio>(fields, 'blow share') ?? assumed() };
}
