import type { Outcome } from '../setups/prediction.ts';
import type { Setup } from '../setups/setup.ts';
import { unitWritten } from './reading-units.ts';
import {
  type Meaning,
  meaningsWritten,
  type NumberMeaning,
  type ReadingUnit,
  withOther,
} from './written-reading.ts';

/** Where a reading was taken: what decides between two meanings of one text. */
export interface ReadingPlace {
  readonly setup: Setup;
  readonly outcome: Outcome;
  /** The unit that a bare number is in. */
  readonly own: ReadingUnit;
  /** The unit in the heading above the cell, as written there. */
  readonly unitAbove?: string | undefined;
}

/**
 * What a written reading means at its setup: of two meanings the one that the instrument can show, 0
 * where it rests on its stop as its stop, and "more than 5" on a scale to 5 N as beyond its end.
 */
export function meaningAt(written: string, place: ReadingPlace): Meaning {
  const above = unitWritten(place.unitAbove ?? '');
  if (above === null || above.dimension !== place.own.dimension) return meaningInOwn(written, place);
  const found = meaningInOwn(written, { ...place, own: above });
  const isBare = (found.kind === 'number' || found.kind === 'bound') && found.unit === null;
  return isBare ? { ...found, unit: above } : found;
}

function meaningInOwn(written: string, place: ReadingPlace): Meaning {
  const { own, outcome } = place;
  const [first, second] = meaningsWritten(written, [own.dimension]);
  if (first.kind === 'bound') return boundAt(first, place);
  if (first.kind !== 'number') return first;
  if (first.number === 0 && !('repeats' in first) && outcome.kind === 'on its stop')
    return { kind: 'at the stop' };
  if (second === undefined) return first;
  return farFrom(second, place) < farFrom(first, place) ? withOther(second, first) : withOther(first, second);
}

function boundAt(bound: Extract<Meaning, { kind: 'bound' }>, { own, outcome, setup }: ReadingPlace): Meaning {
  const si = bound.number * (bound.unit ?? own).si;
  const slack = 1e-6 * Math.abs(si);
  if (bound.side === 'above' && setup.scale !== null && si + slack >= setup.scale.range)
    return { kind: 'off the scale' };
  return bound.side === 'below' && outcome.kind === 'on its stop' && si + slack >= outcome.stop
    ? { kind: 'at the stop' }
    : bound;
}

/** How far a number is from what can be read here, as a share: 0 within the good range. */
function farFrom({ number, unit }: NumberMeaning, { own, outcome, setup }: ReadingPlace): number {
  const si = number * (unit ?? own).si;
  const good = 'good' in outcome ? outcome.good : { from: 0, to: setup.scale?.range ?? Math.abs(si) };
  if (si >= good.from && si <= good.to) return 0;
  const limit = Math.abs(si < good.from ? good.from : good.to);
  return limit === 0 || si === 0 ? 10 : Math.abs(Math.log(Math.abs(si) / limit));
}
