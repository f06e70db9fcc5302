import { significant } from '../../../core/quantities/print-quantity.ts';
import type { TableSheet } from '../../pages/sheet.ts';
import { trimmed } from '../../printing/quantity-text.ts';
import { type Language, languagePack } from '../../sentences/language.ts';
import type { Block } from '../block.ts';
import type { Say } from '../say.ts';
import { setupsWithTable } from './figures.ts';
import { pencilPull } from './pencil.ts';

/** Pupils who see, grip or reach less, or read another language: what helps, with this kit's numbers. */
export function needs(tables: readonly TableSheet[], language: Language, say: Say): readonly Block[] {
  const forces = forcesOfHands(tables, language).sort((a, b) => a.newtons - b.newtons);
  const [least, most] = [forces[0], forces.at(-1)];
  const grip =
    least === undefined || most === undefined
      ? []
      : [
          say('guide.needs.grip-numbers', {
            hard: say(`guide.needs.${most.isPush ? 'push' : 'pull'}`, { setup: most.mark, force: most.text }),
            easy: say(`guide.needs.${least.isPush ? 'push' : 'pull'}`, {
              setup: least.mark,
              force: least.text,
            }),
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

/** What a hand has to pull or push at each setup, newtons: for a pull as a class gets it, its largest for a band. */
function forcesOfHands(tables: readonly TableSheet[], language: Language) {
  return setupsWithTable(tables).flatMap(({ setup }) => {
    const { mark, prediction, scale } = setup;
    const { outcome, watched } = prediction;
    const read = pencilPull(language, setup)?.newtons ?? null;
    const si =
      read !== null
        ? read.value
        : watched === 'pull' && outcome.kind === 'band'
          ? outcome.upper + (scale?.zeroed === 'in place' ? 0 : (scale?.showsLess ?? 0))
          : (prediction.pull?.value ?? 0);
    const newtons = twoDigits(language, si);
    return si <= 0 ? [] : [{ mark, newtons: si, text: newtons, isPush: watched !== 'pull' }];
  });
}

const twoDigits = (language: Language, newtons: number): string =>
  trimmed(significant(newtons, 2, languagePack(language).decimal));
