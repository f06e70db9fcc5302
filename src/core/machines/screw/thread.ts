import { choiceIn, countIn, measuredIn, textIn } from '../../description/filled.ts';
import type { Part } from '../../description/part.ts';
import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import { lengthFact } from '../../diagnostics/facts.ts';
import { type Metres, metres } from '../../quantities/brands.ts';
import { nearestThread, pitchDiameter, rootDiameter, threadNamed } from '../../sources/threads.ts';
import { exactly, type Measured } from '../../uncertainty/measured.ts';
import type { Preparation } from '../machine.ts';

const INCH = 0.0254;

/** Shape of a thread: flank half angle, depth from outside to mean diameter in pitches, and its root. */
export interface Profile {
  readonly name: 'V' | 'trapezoidal' | 'square';
  readonly flank: number;
  /** (d - d2)/P. */
  readonly meanDepth: number;
  readonly rootOf: (diameter: number, pitch: number) => number;
}

/** V as in ISO 724; trapezoidal and square threads are half a pitch deep to the mean (ISO 2901, from memory). */
const profiles: Readonly<Record<Profile['name'], Profile>> = {
  V: { name: 'V', flank: Math.PI / 6, meanDepth: -pitchDiameter(0, 1), rootOf: rootDiameter },
  trapezoidal: {
    name: 'trapezoidal',
    flank: Math.PI / 12,
    meanDepth: 0.5,
    rootOf: (diameter, pitch) => diameter - pitch,
  },
  square: { name: 'square', flank: 0, meanDepth: 0.5, rootOf: (diameter, pitch) => diameter - pitch },
};

export const profileOf = (part: Part): Profile =>
  profiles[(choiceIn(part.fields, 'form') as Profile['name'] | undefined) ?? 'V'];

/** Diameter and pitch of a screw, and where the pitch was written. */
export interface Size {
  readonly diameter: Measured<Metres>;
  readonly pitch: Measured<Metres>;
  readonly pitchField: string;
  /** Name of the standard thread, where it is one. */
  readonly thread: string | null;
}

type PartPlace = Preparation['partPlace'];

/** Size of the thread from its name or its measures; says where the two disagree or one is missing. */
export function sizeOf(
  part: Part,
  profile: Profile,
  place: PartPlace,
): { readonly size: Size | null; readonly diagnostics: readonly Diagnostic[] } {
  const name = textIn(part.fields, 'thread');
  const named = name === undefined ? undefined : threadNamed(name);
  const diagnostics: Diagnostic[] = [];
  const fault = (code: string, field: string | null, facts: Diagnostic['facts']) =>
    diagnostics.push({ code: `screw.${code}`, severity: 'error', at: place('screw', field), facts });
  if (name !== undefined && named === undefined) fault('unknown-thread', 'thread', { thread: name });

  const perInch = countIn(part.fields, 'threads per inch');
  const measuredPitch = measuredIn<Metres>(part.fields, 'pitch');
  const measuredDiameter = measuredIn<Metres>(part.fields, 'diameter');
  const perInchPitch = perInch === undefined ? undefined : metres(INCH / perInch);
  for (const [field, stated, standard, other] of [
    ['pitch', measuredPitch?.value, named?.pitch, 'thread'],
    ['threads per inch', perInchPitch, named?.pitch, 'thread'],
    ['diameter', measuredDiameter?.value, named?.diameter, 'thread'],
    ['threads per inch', perInchPitch, measuredPitch?.value, 'pitch'],
  ] as const)
    if (stated !== undefined && standard !== undefined && differs(stated, standard))
      fault('said-twice', field, { written: lengthFact(stated), named: lengthFact(standard), other });

  // A screw that was measured is taken as measured; its name stands in for what was not.
  const diameter = measuredDiameter ?? (named && exactly(named.diameter));
  const pitch =
    measuredPitch ?? (perInchPitch === undefined ? named && exactly(named.pitch) : exactly(perInchPitch));
  const misnamed = name !== undefined && named === undefined;
  if (diameter === undefined && !misnamed) fault('no-diameter', null, {});
  if (pitch === undefined && !misnamed) fault('no-pitch', null, {});
  if (diameter === undefined || pitch === undefined) return { size: null, diagnostics };

  const pitchField = measuredPitch ? 'pitch' : perInch === undefined ? 'thread' : 'threads per inch';
  const known = named ?? (profile.name === 'V' ? nearestThread(diameter.value, pitch.value) : undefined);
  if (known === undefined && profile.name === 'V' && diagnostics.length === 0)
    diagnostics.push(notStandard(diameter.value, pitch.value, place('screw', pitchField)));
  return { size: { diameter, pitch, pitchField, thread: known?.name ?? null }, diagnostics };
}

/** A worn or plated screw measures a few per cent small: more than this is another thread. */
const SAME = 0.08;
const differs = (a: number, b: number): boolean => Math.abs(a / b - 1) > SAME;

function notStandard(diameter: Metres, pitch: Metres, at: Diagnostic['at']): Diagnostic {
  const byPitch = nearestThread(undefined, pitch);
  return {
    code: 'screw.not-standard',
    severity: 'warning',
    at,
    facts: {
      diameter: lengthFact(diameter),
      pitch: lengthFact(pitch),
      nearest: byPitch?.name ?? 'none',
    },
  };
}
