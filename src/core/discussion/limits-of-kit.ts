import { isNotDefined, type NotDefined, notDefined } from '../description/not-defined.ts';
import type { ClassSummary } from '../readings/class-summary.ts';
import type { TableOfTalk } from './table-of-talk.ts';

/** Something that this kit, or this class's numbers, can't show: a kind, and the setups or pairs it is about. */
export interface LimitFound {
  readonly limit: Limit;
  readonly setups: readonly string[];
}

/**
 * `open`: work in and out too close together for these readings. `alike`: partners that the readings can't tell
 * apart. `few`: too few readings that count. `held`: held still, so that no one number is right. `counted`:
 * nothing is pulled on a scale. `felt`: an order and no number. `no-figure`: the pull is not on the scale.
 * `not-built`: it could not be built today.
 */
export type Limit = 'open' | 'alike' | 'few' | 'held' | 'counted' | 'felt' | 'no-figure' | 'not-built';

export function limitsOfKit(
  tables: readonly TableOfTalk[],
  summary: ClassSummary,
): readonly LimitFound[] | NotDefined {
  const main = tables.flatMap(({ setups }) => setups.filter(({ isExtra }) => !isExtra));
  const marks = (is: (each: (typeof main)[number]) => boolean): readonly string[] =>
    main.filter(is).map(({ setup }) => setup.mark);
  const found: readonly LimitFound[] = [
    { limit: 'open', setups: summary.saved.open },
    {
      limit: 'alike',
      setups: summary.pairs.flatMap(({ more, less, ratio }) =>
        !isNotDefined(ratio) && ratio.from <= 1 && ratio.to >= 1 ? [more, less] : [],
      ),
    },
    { limit: 'few', setups: marks(({ setup }) => isTooFew(setup.mark, summary) && setup.watched !== 'ease') },
    { limit: 'held', setups: marks(({ setup }) => setup.watched === 'pull' && setup.way === 'held') },
    {
      limit: 'counted',
      setups: marks(({ setup }) => setup.watched === 'turns' || setup.watched === 'travel'),
    },
    { limit: 'felt', setups: marks(({ setup }) => setup.watched === 'ease') },
    {
      limit: 'no-figure',
      setups: marks(
        ({ prediction: { watched, outcome } }) =>
          watched === 'pull' && outcome.kind !== 'reading' && outcome.kind !== 'band',
      ),
    },
    { limit: 'not-built', setups: tables.flatMap(({ notPrepared }) => notPrepared) },
  ];
  const told = found.filter(({ setups }) => setups.length > 0);
  return told.length === 0 ? notDefined('discuss.no-limits') : told;
}

function isTooFew(mark: string, { setups }: ClassSummary): boolean {
  const found = setups.find(({ setup }) => setup === mark);
  return found === undefined || isNotDefined(found.centre) || isNotDefined(found.centre.scatter);
}
