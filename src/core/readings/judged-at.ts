import type { Predicted } from '../setups/difference.ts';
import type { Judgement } from './judgement.ts';

/** A judged reading with the setup it belongs to: what a review is made of. */
export interface JudgedAt {
  readonly judgement: Judgement;
  readonly at: Predicted;
}
