import type { FilledValue } from '../description/fields.ts';
import type { Part } from '../description/part.ts';
import type { Preparation } from '../machines/machine.ts';
import type { SetupDescription } from './make-setup.ts';

/** One thing that stands in a setup and could be another: a part in a slot, a field of the machine or of the setup. */
export interface Spot {
  readonly kind: 'part' | 'machine field' | 'setup field';
  /** Slot or field, as it is written in the activity. */
  readonly name: string;
  /** Which stage of a compound, from the load; `null` outside a stage. */
  readonly stage: number | null;
}

export type SpotValue =
  | { readonly part: Part; readonly filled?: undefined }
  | { readonly filled: FilledValue; readonly part?: undefined };

/** A spot with what could stand there, and that as it would be written. */
export interface Option {
  readonly spot: Spot;
  readonly value: SpotValue;
  readonly text: string;
}

/** The same for spots that are the same. */
export const spotKey = ({ kind, name, stage }: Spot): string => `${stage ?? ''}/${kind}/${name}`;

export function valueAt(description: SetupDescription, spot: Spot): SpotValue | null {
  if (spot.kind === 'part') {
    const part = partAt(description, spot);
    return part === null ? null : { part };
  }
  const fields =
    spot.kind === 'setup field' ? description.fields : preparationAt(description, spot.stage)?.fields;
  const filled = fields?.[spot.name];
  return filled === undefined ? null : { filled };
}

/** As it would be written: `hole 5`, `24.0 cm`, `in place`, the mark of a part; `null` where nothing stands. */
export function textAt(description: SetupDescription, spot: Spot): string | null {
  const value = valueAt(description, spot);
  return value === null ? null : textOf(value);
}

export function textOf({ part, filled }: SpotValue): string {
  if (part !== undefined) return part.mark;
  switch (filled.type) {
    case 'quantity':
    case 'quantities':
    case 'sourced':
      return filled.written;
    case 'count':
      return String(filled.count);
    case 'hole':
      return `hole ${filled.hole}`;
    case 'choice':
      return filled.choice;
    case 'text':
      return filled.text;
    case 'marks':
      return filled.marks.join(', ');
    case 'yes-no':
      return filled.yes ? 'yes' : 'no';
  }
}

/** The setup with something else at one spot. */
export function withOption(description: SetupDescription, { spot, value }: Option): SetupDescription {
  const { part, filled } = value;
  if (part !== undefined) return withPart(description, spot, part);
  if (spot.kind === 'setup field')
    return { ...description, fields: { ...description.fields, [spot.name]: filled } };
  return withPreparation(description, spot.stage, (preparation) => ({
    ...preparation,
    fields: { ...preparation.fields, [spot.name]: filled },
  }));
}

/** Marks of the parts that stand in a setup. */
export const marksIn = ({ preparation, load, scale }: SetupDescription): readonly string[] =>
  [preparation, ...(preparation.stages ?? []).map((stage) => stage.preparation)]
    .flatMap(({ parts }) => Object.values(parts))
    .concat(...[load, scale].filter((part) => part !== null))
    .map(({ mark }) => mark);

/** Slots that every setup has for itself. */
const OWN_SLOTS: readonly string[] = ['load', 'scale'];

function partAt(description: SetupDescription, { name, stage }: Spot): Part | null {
  if (stage === null && name === 'load') return description.load;
  if (stage === null && name === 'scale') return description.scale;
  return preparationAt(description, stage)?.parts[name] ?? null;
}

function withPart(description: SetupDescription, { name, stage }: Spot, part: Part): SetupDescription {
  if (stage === null && OWN_SLOTS.includes(name)) return { ...description, [name]: part };
  return withPreparation(description, stage, (preparation) => ({
    ...preparation,
    parts: { ...preparation.parts, [name]: part },
  }));
}

const preparationAt = ({ preparation }: SetupDescription, stage: number | null): Preparation | undefined =>
  stage === null ? preparation : preparation.stages?.[stage]?.preparation;

function withPreparation(
  description: SetupDescription,
  stage: number | null,
  change: (preparation: Preparation) => Preparation,
): SetupDescription {
  const { preparation } = description;
  if (stage === null) return { ...description, preparation: change(preparation) };
  const stages = (preparation.stages ?? []).map((each, n) =>
    n === stage ? { ...each, preparation: change(each.preparation) } : each,
  );
  return { ...description, preparation: { ...preparation, stages } };
}
