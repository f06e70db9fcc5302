import { cardFragments } from '../../src/documents/pages/card-fragments.ts';
import { tableIn } from '../../src/documents/pages/sheet-in.ts';
import { sheetOf } from '../../src/documents/prepare.ts';
import type { Language } from '../../src/documents/sentences/language.ts';
import type { GroupCard } from '../../src/store/wire.ts';
import { demoPrepared } from '../documents/demo-prepared.ts';

/** The demo's cards as a group's page gets them; one setup asks how easy it felt, one leaves the unit open. */
export function cardsOfDemo(language: Language): Readonly<Record<string, GroupCard>> {
  const sheet = sheetOf(demoPrepared());
  return Object.fromEntries(
    sheet.tables.map((table) => {
      const here = tableIn(language, table);
      const blind = { ...here, setups: here.setups.map(({ prediction: _, ...setup }) => setup) };
      const { about, setups } = cardFragments(language, blind);
      const card: GroupCard = {
        title: here.title,
        html: about,
        setups: setups.map(({ mark, markup }, n) => ({
          mark,
          html: markup,
          unit: n === 1 ? null : 'N',
          asks: { ease: n === 2, turns: false },
          isExtra: false,
        })),
      };
      return [table.mark, card];
    }),
  );
}
