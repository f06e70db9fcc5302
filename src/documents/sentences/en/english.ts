import { sentencesEn } from '../../../core/machines/list.ts';
import { arrivals } from './arrivals.ts';
import { causes } from './causes.ts';
import { cautions } from './cautions.ts';
import { drawings } from './drawings.ts';
import { fields } from './fields.ts';
import { fileFields } from './file-fields.ts';
import { headings } from './headings.ts';
import { outcomes } from './outcomes.ts';
import { reviews } from './reviews.ts';
import { sheetsVisit } from './sheets-visit.ts';
import { unknownFields } from './unknown-fields.ts';
import { unknowns } from './unknowns.ts';
import { ways } from './ways.ts';
import { working } from './working.ts';
import { works } from './works.ts';

/** English: the general sentences here, those of parts and machines from their folders. */
export const english = {
  tag: 'en',
  decimal: 'point',
  sentences: merged(
    arrivals,
    causes,
    cautions,
    drawings,
    fields,
    fileFields,
    headings,
    outcomes,
    reviews,
    sheetsVisit,
    unknownFields,
    unknowns,
    ways,
    works,
    working,
    sentencesEn,
  ),
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
