import type { KitPart } from '../../core/kit/kit.ts';
import type { Language } from '../sentences/language.ts';
import type { Block } from './block.ts';
import { equipmentOf, neededText } from './equipment.ts';
import { partText } from './kit-parts.ts';
import type { PaperJob } from './paper-job.ts';
import { sayIn } from './say.ts';

/** What lies on the table when it is complete: parts by their marks, then what the kit does not list. */
export function onThisTable(
  job: PaperJob,
  language: Language,
  table: string,
  playing: readonly KitPart[],
): readonly Block[] {
  const say = sayIn(language);
  const equipment = equipmentOf(job).find((each) => each.table === table);
  const parts = new Set([...playing, ...(equipment?.parts ?? [])]);
  const others = (equipment?.others ?? []).map((each) => neededText(language, each));
  return [
    { block: 'heading', level: 2, text: say('sheet.card.needs') },
    {
      block: 'list',
      items: [
        ...[...parts].map((part) =>
          // The steps call it the load, whatever is written on it.
          say(part.kind === 'weight' ? 'sheet.card.load' : 'sheet.card.part', {
            mark: part.mark,
            what: partText(language, part),
          }),
        ),
        ...(others.length === 0 ? [] : [say('sheet.card.also', { things: others })]),
      ],
    },
  ];
}
