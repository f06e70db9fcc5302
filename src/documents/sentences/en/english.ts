import { sentences as drag } from '../../../core/machines/drag/sentences.en.ts';
import { sentences as incline } from '../../../core/machines/incline/sentences.en.ts';
import { sentences as lever } from '../../../core/machines/lever/sentences.en.ts';
import { sentences as screw } from '../../../core/machines/screw/sentences.en.ts';
import { sentences as tackle } from '../../../core/machines/tackle/sentences.en.ts';
import { sentences as wedge } from '../../../core/machines/wedge/sentences.en.ts';
import { sentences as carriage } from '../../../core/parts/carriage-sentences.en.ts';
import { sentences as parts } from '../../../core/parts/sentences.en.ts';
import { causes } from './causes.ts';
import { cautions } from './cautions.ts';
import { drawings } from './drawings.ts';
import { fields } from './fields.ts';
import { fileFields } from './file-fields.ts';
import { headings } from './headings.ts';
import { outcomes } from './outcomes.ts';
import { unknowns } from './unknowns.ts';
import { ways } from './ways.ts';
import { working } from './working.ts';

/** Each from the folder that knows what it says. */
const fromCore = [carriage, drag, incline, lever, parts, screw, tackle, wedge];

/** English: the general sentences here, those of parts and machines from their folders. */
export const english = {
  tag: 'en',
  decimal: 'point',
  sentences: merged(
    causes,
    cautions,
    drawings,
    fields,
    fileFields,
    headings,
    outcomes,
    unknowns,
    ways,
    working,
    ...fromCore,
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
