import type { Setup } from '../setups/setup.ts';

/** A reading as a person would write one, by what is watched. */
export const READING_EXAMPLE: Readonly<Record<Setup['watched'], string>> = {
  pull: '2.5 N',
  travel: '14 mm',
  turns: '4 turns',
  ease: '2.5 N',
};
