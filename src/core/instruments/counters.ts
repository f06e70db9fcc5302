import { measuredIn } from '../description/filled.ts';
import type { Part, PartKind } from '../description/part.ts';
import type { Graduations } from './graduations.ts';

/** A ruler: its smallest mark. */
export const ruler: PartKind = {
  kind: 'ruler',
  meaning: 'part.ruler',
  fields: {
    graduation: {
      type: 'quantity',
      dimensions: ['length'],
      above: 0,
      required: true,
      meaning: 'ruler.field.graduation',
      example: '1 mm',
    },
  },
};

/** Something to count turns by: a mark on the head, a pointer; the least part of a turn it shows. */
export const turnCounter: PartKind = {
  kind: 'turn counter',
  meaning: 'part.turn-counter',
  fields: {
    'part of a turn': {
      type: 'quantity',
      dimensions: ['ratio'],
      above: 0,
      required: true,
      meaning: 'counter.field.part-of-a-turn',
      example: '1/4',
    },
  },
};

/** A school ruler, where the kit names none: common practice, no source. */
const MILLIMETRE: Graduations = { step: 0.001, unit: 'mm', unitSi: 0.001 };
/** Turns are counted in quarters by the side that a mark points to: common practice, no source. */
const QUARTER_TURN: Graduations = { step: 0.25, unit: 'turns', unitSi: 1 };

export const marksOfRuler = (part: Part | null): Graduations => {
  const field = part?.fields.graduation;
  if (field?.type !== 'quantity') return MILLIMETRE;
  return { step: field.measured.value, unit: field.unit?.symbol ?? 'mm', unitSi: field.unit?.si ?? 0.001 };
};

export const marksOfCounter = (part: Part | null): Graduations => {
  const step = part === null ? undefined : measuredIn(part.fields, 'part of a turn');
  return step === undefined ? QUARTER_TURN : { ...QUARTER_TURN, step: step.value };
};
