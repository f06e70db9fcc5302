import type { TableSheet } from '../../pages/sheet.ts';
import type { Block, Cell } from '../block.ts';
import type { Say } from '../say.ts';

/** The six of the schoolbook, in its order, by the machine of this house that each is. */
const SIX = ['lever', 'windlass', 'tackle', 'inclined plane', 'wedge', 'screw'] as const;
/** Not among the six, yet on a table. */
const BESIDES = ['drag on the level', 'compound'] as const;

/** The six names: what each does, what is paid for it, where it lives in the world, and at which table. */
export function sixNames(tables: readonly TableSheet[], say: Say): readonly Block[] {
  const besides = BESIDES.filter((machine) => tables.some((table) => table.machine === machine));
  return [
    { block: 'heading', level: 2, text: say('guide.six') },
    {
      block: 'table',
      head: ['name', 'does', 'pays', 'lives', 'here'].map((column) => say(`guide.six.${column}`)),
      rows: [...SIX, ...besides].map((machine): readonly Cell[] => [
        { text: say(`${machine}.school`), strong: true },
        say(`${machine}.does`),
        say(`${machine}.pays`),
        say(`${machine}.lives`),
        marksOf(machine, tables, say),
      ]),
      widths: [2, 3.4, 3, 4, 1.5],
      size: 'small',
    },
    ...(besides.length === 0 ? [] : [{ block: 'text' as const, text: say('guide.six.besides') }]),
  ];
}

const marksOf = (machine: string, tables: readonly TableSheet[], say: Say): string => {
  const marks = tables.filter((table) => table.machine === machine).map(({ mark }) => mark);
  return marks.length === 0 ? say('guide.six.none') : say('guide.six.tables', { tables: marks });
};
