import type { Facts } from '../diagnostics/diagnostic.ts';

/** "Not defined here, because ...": a value that can't be said, with its reason as a sentence key. */
export interface NotDefined {
  readonly kind: 'not-defined';
  readonly because: string;
  readonly facts: Facts;
}

/**
 * @example notDefined('drag.no-useful-work').kind // => 'not-defined'
 */
export const notDefined = (because: string, facts: Facts = {}): NotDefined => ({
  kind: 'not-defined',
  because,
  facts,
});

export const isNotDefined = (value: unknown): value is NotDefined =>
  typeof value === 'object' && value !== null && 'kind' in value && value.kind === 'not-defined';
