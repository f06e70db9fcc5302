import type { Entry, Stored } from './entry.ts';

/**
 * Where entries are kept. Every storage passes the same contract test; the promise of `append` is
 * kept only once a cut of power can't undo it.
 */
export interface Journal {
  /**
   * Keeps what it does not have yet. Whatever comes twice, in any order, stands once, where it stood
   * first. Answers for each entry handed in, in their order.
   */
  append(delivery: Delivery): Promise<readonly Stored[]>;
  /** What stands after a position, in order; 0 is from the beginning. */
  since(visit: string, position: number): Promise<readonly Stored[]>;
  close(): Promise<void>;
}

export interface Delivery {
  readonly entries: readonly Entry[];
  /** Clock of the storing place. */
  readonly received: number;
  /** The sending device's clock at the moment of sending. */
  readonly sent: number;
}
