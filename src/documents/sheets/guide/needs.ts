import type { TableSheet } from '../../pages/sheet.ts';
import type { Language } from '../../sentences/language.ts';
import type { Block } from '../block.ts';
import type { Say } from '../say.ts';
import { expectedWithUnit, setupsWithTable } from './figures.ts';

/** Pupils who see, grip or reach less, or read another language: what helps, with this kit's numbers. */
export function needs(tables: readonly TableSheet[], language: Language, say: Say): readonly Block[] {
  const pulls = setupsWithTable(tables)
    .flatMap(({ table, setup }) => {
      const pull = setup.prediction.watched === 'pull' ? (setup.prediction.pull?.value ?? null) : null;
      const shown = expectedWithUnit(language, setup.prediction);
      return pull === null || shown === null ? [] : [{ table: table.mark, setup: setup.mark, pull, shown }];
    })
    .sort((a, b) => a.pull - b.pull);
  const [least, most] = [pulls[0], pulls.at(-1)];
  const grip =
    least === undefined || most === undefined
      ? []
      : [
          say('guide.needs.grip-numbers', {
            hard: most.setup,
            most: most.shown,
            easy: least.setup,
            least: least.shown,
          }),
        ];
  return [
    { block: 'heading', level: 2, text: say('guide.needs') },
    {
      block: 'list',
      items: [
        ...['sight', 'grip'].map((need) => say(`guide.needs.${need}`)),
        ...grip,
        ...['reach', 'one-hand', 'language', 'noise'].map((need) => say(`guide.needs.${need}`)),
      ],
    },
  ];
}
