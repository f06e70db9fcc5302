import { arrivalCheckOf } from '../../../core/calibration/arrival-check.ts';
import type { TableSheet } from '../../pages/sheet.ts';
import { cautionsOf } from '../../sentences/caution-words.ts';
import { machineName } from '../../text/explain-text.ts';
import { outcomeShort } from '../../text/prediction-text.ts';
import type { Block, Cell } from '../block.ts';
import type { PaperJob } from '../paper-job.ts';
import type { Say } from '../say.ts';

/** The night before, in twenty minutes: what is printed, what is read, one table tried. */
export function nightBefore(job: PaperJob, say: Say): readonly Block[] {
  return [
    { block: 'heading', level: 2, text: say('guide.night') },
    {
      block: 'steps',
      items: [
        say('guide.night.print'),
        say('guide.night.key'),
        say('guide.night.boxes'),
        dryRun(job, say),
        say('guide.night.hazards'),
      ],
    },
    { block: 'heading', level: 3, text: say('guide.print') },
    {
      block: 'table',
      head: [say('guide.print.sheet'), say('guide.print.copies'), say('guide.print.for')],
      rows: printOrder(job, say),
      widths: [3, 2, 5],
      size: 'small',
    },
    { block: 'text', text: say('guide.print.laminated'), tone: 'small' },
  ];
}

/** One trial reading at home, at the first table that has one. */
function dryRun(job: PaperJob, say: Say): string {
  for (const table of job.prepared.tables) {
    const trial = arrivalCheckOf(table.setups);
    if (trial === null || trial.setup.watched !== 'pull') continue;
    return say('guide.night.dry-run', {
      table: table.mark,
      setup: trial.setup.mark,
      range: outcomeShort(job.languages.key, trial.prediction),
    });
  }
  return say('guide.night.dry-run-none');
}

/** In the order in which they are needed; a visit that says nothing of groups has its copies written by hand. */
function printOrder(job: PaperJob, say: Say): readonly (readonly Cell[])[] {
  const { visit } = job.prepared;
  const groups = visit?.groups === null || visit === null ? null : visit.groups;
  const adults = visit?.helpers === null || visit === null ? null : visit.helpers + 1;
  const aGroup = groups === null ? say('guide.print.a-group') : say('guide.print.count', { count: groups });
  const anAdult = adults === null ? say('guide.print.an-adult') : say('guide.print.count', { count: adults });
  const one = say('guide.print.count', { count: 1 });
  const copies = {
    guide: one,
    hazards: one,
    arrival: one,
    rekey: one,
    key: anAdult,
    carried: anAdult,
    charts: aGroup,
    slips: one,
  };
  return Object.entries(copies).map(([sheet, count]) => [
    { text: say(`guide.print.${sheet}`), strong: true },
    count,
    say(`guide.print.${sheet}.for`),
  ]);
}

/** On the day: raised loads while the room is empty, cords and mallets last, in an adult's hand. */
export function setUpOrder(job: PaperJob, say: Say): readonly Block[] {
  const language = job.languages.key;
  const ranked = job.sheet.tables
    .filter((table) => table.setups.length > 0)
    .map((table, n) => ({ table, n, rank: rankOf(table) }))
    .sort((a, b) => a.rank - b.rank || a.n - b.n);
  return [
    { block: 'heading', level: 2, text: say('guide.day') },
    { block: 'text', text: say('guide.day.why') },
    {
      block: 'table',
      head: ['order', 'table', 'take', 'look'].map((column) => say(`guide.day.${column}`)),
      rows: ranked.map(({ table, rank }, n): readonly Cell[] => [
        String(n + 1),
        {
          text: say('key.text.table', { mark: table.mark, title: table.title }),
          strong: true,
          note: machineName(language, table.machine),
        },
        takenBy(table, say),
        say(`guide.day.look-${rank}`),
      ]),
      widths: [0.7, 3.2, 3, 3.6],
      align: ['center'],
      size: 'small',
    },
    {
      block: 'steps',
      items: ['arrival', 'ring', 'start', 'roles', 'end'].map((step) => say(`guide.day.${step}`)),
    },
  ];
}

/** 1 has a load that can fall, 2 has none, 3 has cords or a mallet. */
function rankOf(table: TableSheet): 1 | 2 | 3 {
  const keys = cautionsOf(table).map(({ key }) => key);
  if (keys.some((key) => /elastic-cords|hammers/.test(key))) return 3;
  return keys.some((key) => /falling-loads/.test(key)) ? 1 : 2;
}

/** Marks of loads and scales: what is easiest to mix up between tables. */
const takenBy = (table: TableSheet, say: Say): string => {
  const marks = new Set(
    table.setups.flatMap(({ load, scale }) => [
      ...(load === null ? [] : [load.label]),
      ...(scale === null ? [] : [scale.label]),
    ]),
  );
  return marks.size === 0 ? say('guide.day.take-card') : [...marks].join(', ');
};
