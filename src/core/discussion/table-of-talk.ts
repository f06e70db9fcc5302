import type { Predicted } from '../setups/difference.ts';

/** A table as the talk sees it: what stood there, and what could not be built today. */
export interface TableOfTalk {
  readonly mark: string;
  readonly machine: string;
  readonly setups: readonly (Predicted & { readonly isExtra: boolean })[];
  readonly notPrepared: readonly string[];
}

/** A setup of a mark, wherever it stands. */
export const setupOfTalk = (tables: readonly TableOfTalk[], mark: string): Predicted | null =>
  tables.flatMap(({ setups }) => setups).find(({ setup }) => setup.mark === mark) ?? null;
