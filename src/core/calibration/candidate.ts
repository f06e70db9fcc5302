import type { KitPart } from '../kit/kit.ts';
import type { Predicted } from '../setups/difference.ts';
import { type Change, figureAt } from '../setups/map-setup.ts';
import type { WayOfReading } from '../setups/prediction.ts';
import type { Setup } from '../setups/setup.ts';
import { kitchenBalance, schoolRuler } from '../sources/bench-instruments.ts';
import type { Measured } from '../uncertainty/measured.ts';
import { type Law, lawOfField, lawOfHungLoad, lawOfSetup, lawOfTurnOver, within } from './observation.ts';

/** Something that can be measured in half a minute or so, as plain data. */
export type Measurement =
  | {
      readonly kind: 'reading';
      readonly setup: string;
      readonly way: WayOfReading;
      readonly watched: Setup['watched'];
      readonly times: number;
    }
  | { readonly kind: 'hung load'; readonly scale: string; readonly load: string }
  | { readonly kind: 'turn over'; readonly scale: string }
  | { readonly kind: 'weigh' | 'ruler'; readonly part: string; readonly field: string };

/** A measurement with the law of what it would show. */
export interface Candidate {
  readonly measurement: Measurement;
  readonly law: Law;
}

/** A setup with the mark of its load, where it has one. */
export type Loaded = Predicted & { readonly load: { readonly mark: string } | null };

/** Ways that give one figure; a band tells of nothing but its ends. */
const WAYS: readonly WayOfReading[] = ['raise', 'lower', 'start'];
const BALANCE = within(kitchenBalance.within, kitchenBalance.source);
const RULER = within(schoolRuler.within, schoolRuler.source);
/** One reading, or the mean of three. */
const TIMES: readonly number[] = [1, 3];

/**
 * Everything short that this kit lets one measure at a table. `known` rewrites what the kit file says of a
 * part as the bench readings have it; the setups are given as they are known.
 */
export const candidatesAt = (
  table: readonly Loaded[],
  parts: readonly KitPart[],
  known: Change = (value) => value,
): readonly Candidate[] => [
  ...table.flatMap(({ setup }) => readingsOf(setup)),
  ...eachOnce(table.flatMap(withScale)),
  ...fieldsOf(table, parts, known),
];

function readingsOf(setup: Setup): readonly Candidate[] {
  const { watched } = setup;
  if (watched === 'ease' || (watched === 'pull' && setup.scale === null)) return [];
  const ways = watched === 'pull' ? WAYS : [setup.way];
  return ways.flatMap((way) => {
    const law = lawOfSetup({ ...setup, way });
    if (figureAt({ ...setup, way }) === null) return [];
    return TIMES.map((times) => ({
      measurement: { kind: 'reading', setup: setup.mark, way, watched, times } as const,
      law,
    }));
  });
}

/** The scale for itself: turned over, and with a load of the table hung from it. */
function withScale({ setup, load }: Loaded): readonly Candidate[] {
  const { scale, gravity } = setup;
  if (scale === null || setup.watched !== 'pull') return [];
  const turned: Candidate = {
    measurement: { kind: 'turn over', scale: scale.mark },
    law: lawOfTurnOver(scale, gravity),
  };
  const weighed: Candidate = {
    measurement: { kind: 'weigh', part: scale.mark, field: 'mass' },
    law: lawOfField(scale.inputs.mass, BALANCE),
  };
  if (load === null) return [turned, weighed];
  const law = lawOfHungLoad(scale, setup.load, gravity);
  const shows = law.figureAt(new Map())?.value ?? Number.POSITIVE_INFINITY;
  if (shows > scale.range) return [turned, weighed];
  return [turned, weighed, { measurement: { kind: 'hung load', scale: scale.mark, load: load.mark }, law }];
}

/** Masses that a balance weighs whole; a moving part inside a scale is none. */
const WEIGHED: readonly string[] = ['mass', 'of'];

/** Fields of parts that stand behind the table's figures, and that a balance or a ruler can tell. */
function fieldsOf(table: readonly Loaded[], parts: readonly KitPart[], known: Change): readonly Candidate[] {
  const asked = new Set(table.flatMap(({ prediction }) => prediction.budget.map(({ unknown }) => unknown)));
  return parts.flatMap((part) =>
    Object.entries(part.fields).flatMap(([field, filled]): readonly Candidate[] => {
      if (part.kind === 'spring scale' || filled.type !== 'quantity') return [];
      if (!asked.has(`${part.mark}/${field}`)) return [];
      return fieldCandidate(part.mark, field, known(filled.measured), filled.dimension);
    }),
  );
}

function fieldCandidate(
  part: string,
  field: string,
  value: Measured,
  dimension: string,
): readonly Candidate[] {
  if (dimension === 'mass' && WEIGHED.includes(field))
    return [{ measurement: { kind: 'weigh', part, field }, law: lawOfField(value, BALANCE) }];
  if (dimension === 'length')
    return [{ measurement: { kind: 'ruler', part, field }, law: lawOfField(value, RULER) }];
  return [];
}

const eachOnce = (candidates: readonly Candidate[]): readonly Candidate[] => [
  ...new Map(candidates.map((each) => [JSON.stringify(each.measurement), each])).values(),
];
