import { sentences as lever } from '../../../core/machines/lever/sentences.en.ts';
import { cautions } from './cautions.ts';
import { drawings } from './drawings.ts';
import { fields } from './fields.ts';
import { headings } from './headings.ts';
import { outcomes } from './outcomes.ts';
import { unknowns } from './unknowns.ts';
import { ways } from './ways.ts';
import { working } from './working.ts';

/** English: the general sentences here, a machine's own from its folder. */
export const english = {
  tag: 'en',
  decimal: 'point',
  sentences: merged(cautions, drawings, fields, headings, outcomes, unknowns, ways, working, lever),
} as const;

/** Two sentences for one key would hide each other by the order of this list: refused. */
function merged(...lists: readonly Readonly<Record<string, string>>[]): Readonly<Record<string, string>> {
  const all: Record<string, string> = {};
  for (const list of lists)
    for (const [key, text] of Object.entries(list)) {
      if (Object.hasOwn(all, key) && all[key] !== text)
        throw new RangeError(`two English sentences for "${key}"`);
      all[key] = text;
    }
  return all;
}
