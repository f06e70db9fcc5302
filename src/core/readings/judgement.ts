import type { NotDefined } from '../description/not-defined.ts';
import { notDefined } from '../description/not-defined.ts';
import type { Predicted } from '../setups/difference.ts';
import type { GoodRange, Outcome } from '../setups/prediction.ts';
import type { Setup } from '../setups/setup.ts';
import { unitsFor } from './causes.ts';
import type { Written } from './explanation.ts';
import type { ChangedStation, LikelyCause } from './likely-cause.ts';
import { meaningAt } from './meaning-at.ts';
import type { Tie } from './telling-test.ts';
import type { Meaning, ReadingUnit, WrittenReading } from './written-reading.ts';

export type { ChangedStation, LikelyCause } from './likely-cause.ts';

/**
 * What is made of one reading. `good` lies in the good range; `a little off` lies outside it and is
 * not queried; `look again` is said only where a mistake, or no known cause at all, is more probable
 * than a good reading. Where the station has changed, groups are judged against it as it stands.
 */
export interface Judgement {
  readonly reading: WrittenReading;
  readonly meaning: Meaning;
  readonly verdict: 'good' | 'a little off' | 'look again' | 'no reading' | 'unreadable' | 'not judged';
  /** Why it could not be judged, where it was not. */
  readonly because: NotDefined | null;
  /** The reading in SI, as written or in the instrument's own unit. */
  readonly value: number | null;
  readonly good: GoodRange | null;
  /** Explanations with their probability, most probable first, those above 1 percent. */
  readonly causes: readonly LikelyCause[];
  /** Causes that this reading can't tell apart, and the one test that can; `null` where one stands out. */
  readonly tie: Tie | null;
  /** The changed station that the reading was judged against; `null` where it is as its card says. */
  readonly station: ChangedStation | null;
}

/** A reading that is settled without weighing anything, or one with a number to weigh. */
export type Opened =
  | { readonly settled: Judgement; readonly written: null }
  | { readonly settled: null; readonly written: Written; readonly base: Judgement };

/** Takes a written reading as far as its number goes. */
export function opened(reading: WrittenReading, { setup, prediction }: Predicted): Opened {
  const own = ownUnit(setup);
  const { outcome } = prediction;
  const meaning = meaningAt(reading.written, { setup, outcome, own, unitAbove: reading.unitAbove });
  const good = goodOf(outcome);
  const base = { reading, meaning, because: null, value: null, good, causes: [], tie: null, station: null };
  const settled = (said: Partial<Judgement> & Pick<Judgement, 'verdict'>): Opened => ({
    settled: { ...base, ...said },
    written: null,
  });
  switch (meaning.kind) {
    case 'blank':
      return settled({ verdict: 'no reading' });
    case 'unreadable':
      return settled({ verdict: 'unreadable', because: notDefined(meaning.why, meaning.facts) });
    case 'bound':
      return settled({ verdict: 'not judged', because: notDefined('reading.bound') });
    case 'off the scale':
      if (outcome.kind === 'off the scale') return settled({ verdict: 'good' });
      return good === null && outcome.kind !== 'on its stop'
        ? settled({ verdict: 'not judged', because: whyNot(outcome) })
        : { settled: null, written: 'off the scale', base: { ...base, verdict: 'look again' } };
    case 'at the stop':
      return outcome.kind === 'on its stop'
        ? settled({ verdict: 'good' })
        : { settled: null, written: 'at the stop', base: { ...base, verdict: 'look again' } };
    case 'number': {
      const unit = meaning.unit ?? own;
      const value = meaning.number * unit.si;
      return good === null && outcome.kind !== 'on its stop'
        ? settled({ value, verdict: 'not judged', because: whyNot(outcome) })
        : {
            settled: null,
            written: { number: meaning.number, unit },
            base: { ...base, value, verdict: 'good' },
          };
    }
  }
}

/** The unit that a bare number is in: the instrument's own marks. */
export function ownUnit(setup: Setup): ReadingUnit {
  const marks = setup.marks ?? setup.scale?.graduations;
  const units = unitsFor(setup);
  const near = units.find((unit) => marks !== undefined && Math.abs(unit.si / marks.unitSi - 1) < 1e-9);
  return near ?? (units[0] as ReadingUnit);
}

const goodOf = (outcome: Outcome): GoodRange | null => ('good' in outcome ? outcome.good : null);

const whyNot = (outcome: Outcome): NotDefined =>
  outcome.kind === 'not-defined' ? outcome : notDefined(`outcome.${outcome.kind.replaceAll(' ', '-')}`);
