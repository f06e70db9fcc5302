import type { Facts } from '../diagnostics/diagnostic.ts';

/** One action at the table: a sentence key with facts. One step, one verb of doing. */
export interface Step {
  readonly key: string;
  readonly facts: Facts;
}

/** A caution that belongs to a table: sentence key with facts, and the source it comes from. */
export interface Caution {
  readonly key: string;
  readonly facts: Facts;
  readonly source: string;
}
