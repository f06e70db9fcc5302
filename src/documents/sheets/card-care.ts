import type { Caution } from '../../core/description/step.ts';
import type { ScaleSheet, TableSheet } from '../pages/sheet.ts';
import { trimmed } from '../printing/quantity-text.ts';
import { markText, unitLabel } from '../printing/reading-text.ts';
import { type Language, languagePack } from '../sentences/language.ts';
import { hasSentence } from '../sentences/sentence.ts';
import type { Block } from './block.ts';
import { sayIn } from './say.ts';

/** Each caution once, in a pupil's words where there are some, and where the scales end. */
export function care(language: Language, table: TableSheet): readonly Block[] {
  const say = sayIn(language);
  const cautions = new Map<string, Caution>();
  for (const caution of table.setups.flatMap((setup) => setup.cautions)) cautions.set(caution.key, caution);
  const items = [...cautions.values()].map(({ key, facts }) =>
    hasSentence(language, `${key}.pupil`) ? say(`${key}.pupil`, facts) : say(key, facts),
  );
  const ends = new Set(
    table.setups.flatMap(({ scale }) => (scale === null ? [] : [endText(language, scale)])),
  );
  const all = [...items, ...ends];
  return all.length === 0 ? [] : [{ block: 'care', word: say('page.cautions'), items: all }];
}

function endText(language: Language, scale: ScaleSheet): string {
  const { decimal } = languagePack(language);
  const { graduations, range, label } = scale;
  const end = `${trimmed(markText(graduations, range, decimal))} ${unitLabel(graduations.unit)}`;
  return sayIn(language)('sheet.card.scale-ends', { scale: label, range: end });
}
