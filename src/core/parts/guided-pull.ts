import type { Fields, Filled } from '../description/fields.ts';
import { choiceIn, measuredIn } from '../description/filled.ts';
import type { Part } from '../description/part.ts';
import type { Diagnostic, Facts, Place } from '../diagnostics/diagnostic.ts';
import { angleFact } from '../diagnostics/facts.ts';
import { type Metres, newtons, type Radians, radians, ratio } from '../quantities/brands.ts';
import type { Guide, StringPull } from '../statics/guided-pull.ts';
import { exactly } from '../uncertainty/measured.ts';
import { sheaveFaults, sheaveOf } from './sheave.ts';

/** How the string goes: by hand straight to the load, or over a guide pulley to the hand. */
export const pullFields: Fields = {
  'string leans': {
    type: 'quantity',
    dimensions: ['angle'],
    meaning: 'string.field.leans',
    example: '0 deg',
  },
  'pulley above the hook': {
    type: 'quantity',
    dimensions: ['length'],
    meaning: 'string.field.pulley-above',
    example: '3 cm',
  },
  'read at': {
    type: 'quantity',
    dimensions: ['length'],
    above: 0,
    meaning: 'string.field.read-at',
    example: '40 cm',
  },
  'after the pulley': {
    type: 'choice',
    of: ['down', 'level', 'up'],
    meaning: 'string.field.after-the-pulley',
    example: 'down',
  },
  'string leaves at': {
    type: 'quantity',
    dimensions: ['angle'],
    meaning: 'string.field.leaves-at',
    example: '-60 deg',
  },
};

export interface MadePull {
  readonly pull: StringPull | null;
  readonly diagnostics: readonly Diagnostic[];
}

/** The string of a setup; refuses what contradicts itself. Left out, it runs along the plane. */
export function stringPullOf(
  fields: Filled,
  guidePart: Part | undefined,
  place: (field: string) => Place,
  guidePlace: (field: string) => Place,
): MadePull {
  const diagnostics: Diagnostic[] = guidePart === undefined ? [] : [...sheaveFaults(guidePart, guidePlace)];
  const refuse = (code: string, field: string, facts: Facts = {}) =>
    diagnostics.push({ code, severity: 'error', at: place(field), facts });
  const lean = measuredIn<Radians>(fields, 'string leans');
  const pulleyAbove = measuredIn<Metres>(fields, 'pulley above the hook');
  const readAt = measuredIn<Metres>(fields, 'read at');
  const stated = measuredIn<Radians>(fields, 'string leaves at');
  const choice = choiceIn(fields, 'after the pulley');

  if (guidePart === undefined)
    for (const field of ['pulley above the hook', 'after the pulley', 'string leaves at'])
      if (fields[field] !== undefined) refuse('string.no-pulley', field, { field });
  if (lean !== undefined && pulleyAbove !== undefined) refuse('string.two-leans', 'string leans');
  if (pulleyAbove !== undefined && readAt === undefined)
    refuse('string.no-distance', 'pulley above the hook');
  if (choice !== undefined && stated !== undefined) refuse('string.two-directions', 'string leaves at');
  if (lean !== undefined && Math.abs(lean.value) >= Math.PI / 2)
    refuse('string.leans-too-far', 'string leans', { lean: angleFact(lean.value) });
  if (diagnostics.length > 0) return { pull: null, diagnostics };

  const sheave = guidePart === undefined ? undefined : sheaveOf(guidePart);
  const guide = guidePart === undefined ? null : guideOf(choice, stated?.value);
  const drag = {
    guideShare: sheave?.share ?? exactly(ratio(0)),
    guideConstant: sheave?.constant ?? exactly(newtons(0)),
  };
  const pull: StringPull =
    guide !== null && pulleyAbove !== undefined && readAt !== undefined
      ? { string: 'comes from the pulley', guide, inputs: { ...drag, pulleyAbove, readAt } }
      : { string: 'leans', guide, inputs: { ...drag, lean: lean ?? exactly(radians(0)) } };
  return { pull, diagnostics };
}

/** Over a guide pulley the string usually comes down to the hand. */
function guideOf(choice: string | undefined, stated: number | undefined): Guide {
  if (stated !== undefined) return { leaves: 'stated', angle: stated };
  switch (choice) {
    case 'up':
      return { leaves: 'up', angle: Math.PI / 2 };
    case 'level':
      return { leaves: 'level', angle: 0 };
    default:
      return { leaves: 'down', angle: -Math.PI / 2 };
  }
}
