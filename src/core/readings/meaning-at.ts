import type { Outcome } from '../setups/prediction.ts';
import type { Setup } from '../setups/setup.ts';
import { type Meaning, type ReadingUnit, readWritten } from './written-reading.ts';

/** Where a reading was taken: what decides between two meanings of one text. */
export interface ReadingPlace {
  readonly setup: Setup;
  readonly outcome: Outcome;
  /** The unit that a bare number is in. */
  readonly own: ReadingUnit;
}

/** What a written reading means at its setup. */
export const meaningAt = (written: string, { own }: ReadingPlace): Meaning =>
  readWritten(written, [own.dimension]);
