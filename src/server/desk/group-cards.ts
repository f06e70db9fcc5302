import type { Prepared, PreparedTable } from '../../core/prepare.ts';
import { cardFragments } from '../../documents/pages/card-fragments.ts';
import { tableIn } from '../../documents/pages/sheet-in.ts';
import { sheetOf } from '../../documents/prepare.ts';
import type { Language } from '../../documents/sentences/language.ts';
import { unitWords } from '../../documents/sentences/unit-words.ts';
import { marksOf } from '../../documents/text/prediction-text.ts';
import type { GroupCard } from '../../store/wire.ts';

/** The cards of all tables in a language, by mark: how to build and read, and nothing of what will be read. */
export function groupCards(language: Language, prepared: Prepared): Readonly<Record<string, GroupCard>> {
  const sheet = sheetOf(prepared);
  return Object.fromEntries(
    prepared.tables.flatMap((table, n) => {
      const shown = sheet.tables[n];
      if (shown === undefined) return [];
      const here = tableIn(language, shown);
      const blind = { ...here, setups: here.setups.map(({ prediction: _, ...setup }) => setup) };
      const { about, setups } = cardFragments(language, blind);
      const card: GroupCard = {
        title: here.title,
        html: about,
        setups: setups.flatMap(({ mark, markup }) => askedAt(language, table, mark, markup)),
      };
      return [[table.mark, card] as const];
    }),
  );
}

function askedAt(
  language: Language,
  { setups }: PreparedTable,
  mark: string,
  html: string,
): GroupCard['setups'] {
  const at = setups.find(({ setup }) => setup.mark === mark);
  if (at === undefined) return [];
  const { watched } = at.setup;
  const unit = unitWords(language, marksOf(at.prediction).unit);
  return [
    {
      mark,
      html,
      unit: watched === 'ease' ? null : unit,
      asks: { ease: watched === 'ease', turns: watched === 'turns' },
      isExtra: at.isExtra,
    },
  ];
}
