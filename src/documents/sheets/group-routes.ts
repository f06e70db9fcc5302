import {
  longWaitsOf,
  type PeriodWords,
  paperTask,
  pullsOf,
  routeOf,
  routeText,
  staysOf,
  tableWords,
  timetableOf,
} from '../text/period-words.ts';
import type { Block, Cell, SheetOfPaper } from './block.ts';
import { classesOfJob, classFacts } from './classes-of-job.ts';
import { readersOf } from './groups.ts';
import { paperWidth } from './kit-sheet.ts';
import type { PaperJob, SheetKind } from './paper-job.ts';
import { periodFacts } from './rotation-wall.ts';
import { slipHeight } from './slip-height.ts';
import { visitSheet } from './visit-sheet.ts';

/** A slip a group, in its own language: where it begins, its way, and from when it is where. */
export const groupRoutes: SheetKind = {
  name: 'routes',
  of: 'visit',
  isTimed: true,
  build: (job) =>
    readersOf(job.prepared.visit, job.languages.cards).flatMap(({ language, groups }, n) =>
      classesOfJob(job, language).flatMap(({ words, suffix }) => {
        // A class may have groups that the visit doesn't list: they read what the cards are in.
        const listed = job.prepared.visit?.groupLabels ?? [];
        const own = words.period.rotation.groups
          .map(({ label }) => label)
          .filter((label) => groups.includes(label) || (n === 0 && !listed.includes(label)));
        return own.length === 0 || timetableOf(words.period) === null
          ? []
          : [
              routesSheet(
                job,
                words,
                own,
                `${suffix}${language === job.languages.cards ? '' : `-${language}`}`,
              ),
            ];
      }),
    ),
};

function routesSheet(
  job: PaperJob,
  words: PeriodWords,
  groups: readonly string[],
  suffix: string,
): SheetOfPaper {
  const { say, language } = words;
  const rows = groups.map((group) => wayRows(words, group));
  return visitSheet(job, language, {
    name: `group-routes${suffix}`,
    title: say('sheet.routes'),
    blocks: [
      {
        block: 'title',
        text: say('sheet.routes'),
        about: say('sheet.routes.about'),
        facts: periodFacts(job, words),
      },
      {
        block: 'tags',
        width: Math.floor(paperWidth(job.paper) * 5) / 10,
        height: slipHeight(job.paper, Math.max(...rows.map(lineCount)), 36),
        tags: groups.map((group, n) => slip(words, group, rows[n] ?? [])),
      },
    ],
  });
}

/** Rows as high as their lines: what there is to do in a wait stands on a line of its own, or on two. */
const lineCount = (rows: readonly (readonly Cell[])[]): number =>
  rows.reduce((sum, [, what]) => sum + (typeof what === 'object' && 'note' in what ? 1.8 : 1), 0);

function slip(words: PeriodWords, group: string, rows: readonly (readonly Cell[])[]): readonly Block[] {
  const { say, period } = words;
  const route = routeOf(period, group);
  const [first] = route;
  const pulls = pullsOf(period, group).length > 0;
  const name = [say('sheet.routes.group', { group }), ...classFacts(words).map(([, label]) => label)].join(
    ' · ',
  );
  if (first === undefined)
    return [
      { block: 'text', text: name, tone: 'headline' },
      { block: 'text', text: say('sheet.routes.none') },
    ];
  return [
    { block: 'text', text: name, tone: 'headline' },
    { block: 'text', text: say('sheet.routes.begin', { table: first }), tone: 'strong' },
    { block: 'text', text: routeText(route), tone: 'large' },
    {
      block: 'table',
      head: [
        say('sheet.routes.when'),
        say('sheet.routes.where'),
        ...(pulls ? [say('sheet.routes.pulls')] : []),
      ],
      rows: pulls ? rows : rows.map((row) => row.slice(0, 2)),
      widths: pulls ? [1, 2.8, 0.6] : [1, 3.4],
      size: 'small',
    },
    ...(pulls ? [{ block: 'text', text: dutiesText(words, group), tone: 'small' } as const] : []),
    { block: 'text', text: say(`sheet.routes.${period.rotation.way}`), tone: 'small' },
  ];
}

/** Pupils are numbers: whose turn it is to pull stands at each table, and the others follow from it. */
function dutiesText({ say, period }: PeriodWords, group: string): string {
  const pupils = period.rotation.groups.find(({ label }) => label === group)?.pupils ?? 0;
  const many = ['two', 'three', 'four'][pupils - 2] ?? 'more';
  return say(`sheet.routes.duties.${many}`, { pupils });
}

/** From when a group is where: at tables, waiting, in breaks, and together at the end. */
function wayRows(words: PeriodWords, group: string): readonly (readonly Cell[])[] {
  const { say, at, period, language } = words;
  const pulls = pullsOf(period, group);
  const rows: readonly (readonly [number, Cell, string])[] = [
    ...staysOf(period)
      .filter((stay) => stay.group === group)
      .map(({ from, table, isDone }, n) => {
        const text = tableWords(words, table);
        const what: Cell = { text, strong: true, ...(isDone ? { note: say('sheet.routes.done') } : {}) };
        return [from, what, String(pulls[n] ?? '')] as const;
      }),
    ...longWaitsOf(period)
      .filter((wait) => wait.group === group)
      .map(({ from, task }) => {
        const what =
          task === null
            ? say('sheet.routes.wait.nothing')
            : task.kind === 'setup'
              ? say('sheet.routes.wait.setup', { setup: task.setup, table: task.table })
              : paperTask(language, task);
        return [from, { text: say('sheet.routes.wait'), note: what }, ''] as const;
      }),
    ...period.rotation.breaks.map(({ from }) => [from, say('sheet.routes.break'), ''] as const),
    ...(period.talkAtTheEnd > 0 ? [[period.rotation.bell, say('sheet.routes.talk'), ''] as const] : []),
  ];
  return [...rows].sort(([a], [b]) => a - b).map(([from, cell, pulls]) => [at(from), cell, pulls]);
}

/** A line for the head of a group's data chart: where it begins and its way; one a class. */
export const routeLines = (
  job: PaperJob,
  group: string,
  language: PeriodWords['language'],
): readonly string[] =>
  classesOfJob(job, language).flatMap(({ words: { say, period } }) => {
    const route = routeOf(period, group);
    const [table] = route;
    if (table === undefined) return [];
    const facts = { table, route: routeText(route) };
    return [
      period.label === null
        ? say('sheet.routes.line', facts)
        : say('sheet.routes.line.class', { ...facts, class: period.label }),
    ];
  });
