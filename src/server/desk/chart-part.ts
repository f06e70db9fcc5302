import type { ChartTable, GroupCard } from '../../store/wire.ts';

/** What the paper charts ask, table by table, as the cards ask it. */
export const chartPart = (cards: Readonly<Record<string, GroupCard>>): readonly ChartTable[] =>
  Object.entries(cards).map(([table, { title, setups }]) => ({
    table,
    title,
    rows: setups.map(({ mark, unit, asks, isExtra }) => ({
      setup: mark,
      asks: asks.ease ? 'ease' : asks.turns ? 'turns' : 'number',
      unit,
      isExtra,
    })),
  }));
