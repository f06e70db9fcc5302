import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { advise, MOST_BUILT, type TableAdvice } from '../../src/core/advise.ts';
import { measureNextAtTables } from '../../src/core/bench.ts';
import { type Prepared, prepare } from '../../src/core/prepare.ts';
import { setupsOf } from '../../src/core/review.ts';
import { COPIES, USUALLY_WANTED } from '../../src/core/setups/chance-to-see.ts';
import { adviceText } from '../../src/documents/text/advice-text.ts';
import { faultsIn } from './finite.ts';

/** What a kit may be, hardly ever, written into the files of an example. */
const CHANGES: Readonly<Record<string, (text: string) => string>> = {
  'a scale of five thousand marks': (text) =>
    text.replace(/^(\s+range:).*$/gm, '$1 50 N').replace(/^(\s+graduation:).*N$/gm, '$1 0.01 N'),
  'marks coarser than any reading': (text) => text.replace(/^(\s+graduation:).*N$/gm, '$1 2 N'),
  'nothing that rubs': (text) =>
    text
      .replace(/^(\s+(?:pin|axle|face) friction:).*$/gm, '$1 0')
      .replace(/^(\s+rolling arm:).*$/gm, '$1 0 mm'),
  'pins of sandpaper': (text) => text.replace(/^(\s+(?:pin|axle|face) friction:).*$/gm, '$1 0.9..1.5'),
  'everything of nine kilograms': (text) => text.replace(/^(\s+mass:) \d+ g.*$/gm, '$1 9 kg'),
  'everything of a gram': (text) => text.replace(/^(\s+mass:) \d+ g.*$/gm, '$1 1 g'),
  'masses that nobody knows': (text) => text.replace(/^(\s+mass:) (\d+) g.*$/gm, '$1 $2 g ± $2 g'),
};

function preparedWith(example: string, change: (text: string) => string): Prepared {
  const folder = join(import.meta.dirname, '../../examples', example);
  const names = readdirSync(folder);
  const file = (kind: string) => {
    const name = names.find((each) => each.includes(`.${kind}.`)) ?? '';
    return { name, text: readFileSync(join(folder, name), 'utf8') };
  };
  const kit = file('kit');
  return prepare({
    kit: { ...kit, text: change(kit.text) },
    activity: file('activity'),
    visit: file('visit'),
    bench: names.some((each) => each.includes('.bench.')) ? file('bench') : null,
  });
}

/** What is said of a table as plain data: without the prepared setups, whose figures are looked at apart. */
const plain = ({ setups, pairs, ...rest }: TableAdvice) => ({
  ...rest,
  troubles: setups.map(({ troubles, wants }) => ({ troubles, wants })),
  chances: pairs.map(({ chance, isGood }) => ({ chance, isGood })),
});

const cases = ['smallest', 'bench-book'].flatMap((example) =>
  Object.keys(CHANGES).map((change): [string, string] => [example, change]),
);

it.each(cases)('%s with %s is advised on within bounds, in finite numbers, in words', (example, change) => {
  const prepared = preparedWith(example, CHANGES[change] ?? ((text) => text));
  const figures = setupsOf(prepared).map(({ prediction: { working: _, ...rest } }) => rest);
  expect(faultsIn({ figures, next: measureNextAtTables(prepared) })).toEqual([]);
  const advice = advise(prepared);
  expect(faultsIn(advice.map(plain))).toEqual([]);
  for (const { searched } of advice) expect(searched.built).toBeLessThanOrEqual(MOST_BUILT);
  for (const language of ['en', 'es'] as const)
    expect(
      adviceText(language, prepared, advice, { wanted: USUALLY_WANTED, seed: 1, copies: COPIES }),
    ).not.toMatch(/undefined|NaN|Infinity|\{[a-z]+\}/);
});
