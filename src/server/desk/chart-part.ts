import type { ChartTable, GroupCard } from '../../store/wire.ts';

/** What the paper charts ask, table by table in the order of the activity, as the cards ask it. */
export const chartPart = (
  tables: readonly { readonly mark: string }[],
  cards: Readonly<Record<string, GroupCard>>,
): readonly ChartTable[] =>
  tables.flatMap(({ mark }) => {
    const card = cards[mark];
    return card === undefined
      ? []
      : [
          {
            table: mark,
            title: card.title,
            rows: card.setups.map(({ mark: setup, unit, asks, isExtra }) => ({
              setup,
              asks: asks.ease ? 'ease' : asks.turns ? 'turns' : 'number',
              unit,
              isExtra,
            })),
          },
        ];
  });
