import type { PreparationFiles } from '../../core/prepare.ts';
import type { RangeAtSetup } from '../../documents/text/trials-text.ts';

/** What the worker is asked: plain text and marks, since a setup can't be sent. */
export interface TrialsJob {
  readonly files: PreparationFiles;
  readonly marks: readonly string[];
  readonly seed: number;
}

/** What it tells: how far it is, and in the end every range. */
export type TrialsTold =
  | { readonly setup: string; readonly number: number; readonly of: number }
  | { readonly ranges: readonly RangeAtSetup[] };
