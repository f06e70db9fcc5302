import { measuredIn } from '../description/filled.ts';
import type { KitPart } from '../kit/kit.ts';
import type { SetupDescription } from './make-setup.ts';
import { optionsFor, spotsOf } from './setup-options.ts';
import { type Option, type Spot, type SpotValue, spotKey, textAt, valueAt } from './spot.ts';

/** Says nothing about how a setup reads. */
const ASIDE: readonly string[] = ['lift', 'more to find'];

/** What differs between two partner setups: what they are there to show. */
export const contrastOf = (first: SetupDescription, second: SetupDescription): readonly Spot[] =>
  spotsOf(first).filter((spot) => !ASIDE.includes(spot.name) && textAt(first, spot) !== textAt(second, spot));

/** Both values of what differs, set anew: none, one or both of them. */
export interface Turn {
  readonly a: readonly Option[];
  readonly b: readonly Option[];
}

/**
 * Other pairs of values of what differs, in the same order: where the one arm was longer it stays longer.
 * Only where one thing differs and has a size; else it is left alone.
 */
export function contrastTurns(
  first: SetupDescription,
  second: SetupDescription,
  contrast: readonly Spot[],
  free: readonly KitPart[],
): readonly Turn[] {
  const none: Turn = { a: [], b: [] };
  const [spot, another] = contrast;
  if (spot === undefined || another !== undefined) return [none];
  const options = (of: SetupDescription): readonly Option[] =>
    optionsFor(of, free).find(([option]) => option !== undefined && spotKey(option.spot) === spotKey(spot)) ??
    [];
  const a = [null, ...options(first)];
  const b = [null, ...options(second)];
  const sizeIn = (of: SetupDescription, option: Option | null): number | null =>
    sizeOf(option?.value ?? valueAt(of, spot));
  const [nowA, nowB] = [sizeIn(first, null), sizeIn(second, null)];
  if (nowA === null || nowB === null || nowA === nowB) return [none];
  return a.flatMap((forA) =>
    b.flatMap((forB): readonly Turn[] => {
      const [sizeA, sizeB] = [sizeIn(first, forA), sizeIn(second, forB)];
      if (sizeA === null || sizeB === null) return [];
      if (Math.sign(sizeA - sizeB) !== Math.sign(nowA - nowB)) return [];
      return [{ a: forA === null ? [] : [forA], b: forB === null ? [] : [forB] }];
    }),
  );
}

/** What can be put in order: a hole, a count, a quantity, what a load is marked with. */
function sizeOf(value: SpotValue | null): number | null {
  if (value === null) return null;
  const { part, filled } = value;
  if (part !== undefined) return measuredIn(part.fields, 'of')?.value ?? null;
  switch (filled.type) {
    case 'hole':
      return filled.hole;
    case 'count':
      return filled.count;
    case 'quantity':
      return filled.measured.value;
    default:
      return null;
  }
}

/** Nothing, one thing or two things changed, out of what could stand at each spot. */
export function* optionSets(
  spots: readonly (readonly Option[])[],
  atMost: number,
): Generator<readonly Option[]> {
  yield [];
  for (let size = 1; size <= atMost; size += 1) yield* ofSize(spots, size);
}

function* ofSize(spots: readonly (readonly Option[])[], size: number): Generator<readonly Option[]> {
  if (size === 0) {
    yield [];
    return;
  }
  for (const [n, options] of spots.entries())
    for (const option of options)
      for (const rest of ofSize(spots.slice(n + 1), size - 1)) yield [option, ...rest];
}
