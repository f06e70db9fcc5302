import { arrivalCheckOf } from '../../../core/calibration/arrival-check.ts';
import type { Equipment } from '../../../core/description/equipment.ts';
import type { TableSheet } from '../../pages/sheet.ts';
import { cautionsOf } from '../../sentences/caution-words.ts';
import { machineName } from '../../text/explain-text.ts';
import { timetableOf } from '../../text/period-words.ts';
import { outcomeShort } from '../../text/prediction-text.ts';
import type { Block, Cell } from '../block.ts';
import { dataCharts } from '../data-chart.ts';
import { besideTheParts, neededText } from '../equipment.ts';
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
        say('guide.night.key', { key: say('key.title') }),
        say('guide.night.boxes', { list: say('sheet.packing') }),
        dryRun(job, say),
        say('guide.night.hazards', { sheet: say('guide.hazard') }),
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
    { block: 'text', text: say('guide.print.laminated', { list: say('sheet.packing') }), tone: 'small' },
    ...ownThings(job, say),
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
  const anAdult = adults === null ? say('guide.print.an-adult') : say('guide.print.count', { count: adults });
  const one = say('guide.print.count', { count: 1 });
  const rows: readonly (readonly [title: string, copies: string, use: string])[] = [
    ['guide.title', one, 'guide'],
    ['guide.hazard', one, 'hazards'],
    ['sheet.arrival', one, 'arrival'],
    ['sheet.rekey', anAdult, 'rekey'],
    ['key.title', anAdult, 'key'],
    ['sheet.carried', anAdult, 'carried'],
    ['sheet.slips', one, 'slips'],
  ];
  return [
    ...rows.map(([title, count, use]): readonly Cell[] => [
      { text: say(title), strong: true },
      count,
      say(`guide.print.${use}.for`, use === 'rekey' ? { arrival: say('sheet.arrival') } : {}),
    ]),
    ...chartRows(job, groups === null, say),
    ...rotationRows(job, say),
  ];
}

/** What a timetable adds, where there is one: chart and poster for the wall, slips to cut apart. */
function rotationRows({ period }: PaperJob, say: Say): readonly (readonly Cell[])[] {
  const planned = period?.classes.filter((each) => timetableOf(each) !== null) ?? [];
  const sheets = planned.length === 0 ? [] : ['rotation', 'rotation.poster', 'routes', 'visitors', 'posts'];
  return sheets.map((sheet): readonly Cell[] => [
    { text: say(`sheet.${sheet}`), strong: true },
    say('guide.print.count', { count: sheet === 'posts' ? 1 : planned.length }),
    say(`guide.print.${sheet}.for`),
  ]);
}

/** The charts that are really built, by the titles that they carry: one a group at each level, in its language. */
function chartRows(job: PaperJob, isOneForAll: boolean, say: Say): readonly (readonly Cell[])[] {
  const charts = dataCharts.build(job).map(({ name, title, blocks }) => ({
    level: /level-(\d)/.exec(name)?.[1] ?? '',
    title,
    count: blocks.filter(({ block }) => block === 'title').length,
  }));
  return [...new Set(charts.map(({ level }) => level))].map((level): readonly Cell[] => {
    const same = charts.filter((chart) => chart.level === level);
    return [
      { text: same.map(({ title }) => title).join(' · '), strong: true },
      isOneForAll
        ? say('guide.print.a-group')
        : same.map(({ count }) => say('guide.print.count', { count })).join(' + '),
      say(`guide.print.chart-${level}.for`),
    ];
  });
}

/** What the tables ask for and no box holds, as the packing list ends with it. */
function ownThings(job: PaperJob, say: Say): readonly Block[] {
  const beside = besideTheParts(job);
  const listed = (thing: Equipment): readonly string[] =>
    beside.find(({ what }) => what === thing)?.tables ?? [];
  const keys = job.sheet.tables.flatMap((table) =>
    cautionsOf(table).map(({ key }) => ({ key, table: table.mark })),
  );
  // A caution may ask for a thing that no setup of its table counts among what it needs.
  const tablesWith = (thing: Equipment, ...topics: readonly string[]): readonly string[] => [
    ...new Set(
      keys
        .filter(
          ({ key, table }) =>
            topics.some((topic) => key === `caution.${topic}`) && !listed(thing).includes(table),
        )
        .map(({ table }) => table),
    ),
  ];
  const trays = tablesWith('tray', 'falling-loads');
  const glasses = tablesWith('glasses', 'eye-protection', 'elastic-cords', 'hammers-and-mallets');
  const items = [
    ...beside.map((each) => neededText(job.languages.key, each)),
    ...(trays.length === 0 ? [] : [say('guide.own.trays', { tables: trays })]),
    ...(glasses.length === 0 ? [] : [say('guide.own.glasses', { tables: glasses })]),
  ];
  return items.length === 0
    ? []
    : [{ block: 'text', text: say('guide.own', { things: items, list: say('sheet.packing') }) }];
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
    {
      block: 'text',
      text: whyOrder(
        ranked.map(({ table }) => table),
        say,
      ),
    },
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
        say(`guide.day.look-${lookOf(table, rank)}`),
      ]),
      widths: [0.7, 3.2, 3, 3.6],
      align: ['center'],
      size: 'small',
    },
    {
      block: 'steps',
      items: ['arrival', 'ring', 'carried', 'start'].map((step) =>
        say(`guide.day.${step}`, step === 'carried' ? { today: say('sheet.carried.today') } : {}),
      ),
    },
  ];
}

/** What comes last is named by what is in the kit. */
function whyOrder(tables: readonly TableSheet[], say: Say): string {
  const what = lastThings(tables);
  return say('guide.day.why', { last: what === null ? '' : say(`guide.day.last-${what}`) });
}

/** Cords, a mallet, or both; `null` where there are none. */
function lastThings(tables: readonly TableSheet[]): 'cords' | 'mallet' | 'both' | null {
  const keys = tables.flatMap((table) => cautionsOf(table).map(({ key }) => key));
  const [cords, mallet] = [/elastic-cords/, /hammers/].map((what) => keys.some((key) => what.test(key)));
  return cords && mallet ? 'both' : cords ? 'cords' : mallet ? 'mallet' : null;
}

/** What is looked at when a table stands, by what it has. */
function lookOf(table: TableSheet, rank: 1 | 2 | 3): string {
  if (rank === 3) return lastThings([table]) ?? 'cords';
  if (rank === 1) return 'load';
  return table.setups.some(({ prediction }) => prediction.watched === 'pull') ? 'path' : 'start';
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
