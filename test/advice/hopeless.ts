import { readFileSync } from 'node:fs';
import { type PreparationFiles, type Prepared, prepare } from '../../src/core/prepare.ts';

type Change = (text: string, file: 'kit' | 'activity' | 'visit') => string;

/** Files of a day that can't work, changed as a test needs it. */
export function hopelessFiles(changed: Change = (text) => text): PreparationFiles {
  const file = (kind: 'kit' | 'activity' | 'visit') => {
    const name = `hopeless.${kind}.yaml`;
    return { name, text: changed(readFileSync(`test/advice/${name}`, 'utf8'), kind) };
  };
  return { kit: file('kit'), activity: file('activity'), visit: file('visit') };
}

export const hopeless = (changed?: Change): Prepared => prepare(hopelessFiles(changed));
