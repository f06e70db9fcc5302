import { isNotDefined } from '../../core/description/not-defined.ts';
import type { SetupSheet, TableSheet } from '../pages/sheet.ts';
import { unitLabel } from '../printing/reading-text.ts';
import type { Language } from '../sentences/language.ts';
import { marksOf } from '../text/prediction-text.ts';
import type { Block, Cell, SheetOfPaper, Table } from './block.ts';
import { type GroupLabel, type Readers, readersOf } from './groups.ts';
import type { PaperJob, SheetKind } from './paper-job.ts';
import { type Say, sayIn } from './say.ts';
import { extraMarks, visitFacts, visitSheet } from './visit-sheet.ts';

const LEVELS = [1, 2, 3] as const;
type Level = (typeof LEVELS)[number];

/** Room to write in, millimetres: young hands write large. */
const ROW_HEIGHT = { 1: 11, 2: 9.5, 3: 10.5 } as const;
const READINGS = 3;

/**
 * The charts that a group carries from table to table: a guess before every reading, then what was
 * found. Level 1 compares and orders, level 2 writes numbers with units, level 3 reckons work. A chart
 * says nothing of what will be read.
 */
export const dataCharts: SheetKind = {
  name: 'charts',
  of: 'visit',
  build: (job) => {
    const readers = readersOf(job.prepared.visit, job.languages.cards);
    const wished = job.prepared.activity?.level ?? null;
    return LEVELS.filter((level) => wished === null || level === wished).flatMap((level) =>
      readers.map((each) => chartsOf(job, level, each)),
    );
  },
};

/** The charts of one level and language in one file, so that they are printed in one go. */
function chartsOf(job: PaperJob, level: Level, { language, groups }: Readers): SheetOfPaper {
  const say = sayIn(language);
  const title = say('sheet.chart', { level });
  return visitSheet(job, language, {
    name: `chart-level-${level}${language === job.languages.cards ? '' : `-${language}`}`,
    title,
    ...(level === 3 ? { isLandscape: true as const } : {}),
    blocks: groups.flatMap((group, n) => [
      ...(n === 0 ? [] : [{ block: 'page-break' } as const]),
      ...chart(job, level, group, language),
    ]),
  });
}

function chart(job: PaperJob, level: Level, group: GroupLabel, language: Language): readonly Block[] {
  const say = sayIn(language);
  const facts = visitFacts(job, language);
  return [
    {
      block: 'title',
      text: say('page.chart'),
      about: say(`sheet.chart.about-${level}`),
      facts: [[say('page.chart.group'), group ?? '________'], ...facts],
    },
    roles(say),
    ...job.sheet.tables.flatMap((table, n) => {
      const extra = extraMarks(job.prepared.tables[n]);
      return tableBlocks(table, level, say, (setup) => markCell(setup, extra, say));
    }),
  ];
}

const ROLES = ['pull', 'read', 'write', 'check'] as const;

/** Who does what; the roles move on, so nobody's name stands here. */
const roles = (say: Say): Block => ({
  block: 'together',
  blocks: [
    {
      block: 'columns',
      shares: ROLES.map(() => 1),
      columns: ROLES.map((role) => [
        { block: 'text', text: say(`sheet.role.${role}`), tone: 'strong' },
        { block: 'text', text: say(`sheet.role.${role}.does`), tone: 'small' },
      ]),
    },
    { block: 'text', text: say('sheet.role.change'), tone: 'small' },
  ],
});

/** The first cell of a setup's row. */
type Marked = (setup: SetupSheet) => Cell;

function tableBlocks(table: TableSheet, level: Level, say: Say, marked: Marked): readonly Block[] {
  if (table.setups.length === 0) return [];
  const setups = table.setups;
  return [
    {
      block: 'together',
      blocks: [
        {
          block: 'heading',
          level: 2,
          text: say('key.text.table', { mark: table.mark, title: table.title }),
        },
        level === 1
          ? comparing(setups, say, marked)
          : level === 2
            ? numbers(setups, say, marked)
            : work(setups, say, marked),
        { block: 'line', name: say('page.chart.noticed') },
      ],
    },
  ];
}

/** Level 1: more or less than the partner, and which is easier, first guessed and then found. */
const comparing = (setups: readonly SetupSheet[], say: Say, marked: Marked): Table => ({
  block: 'table',
  head: ['setup', 'against', 'guess', 'found', 'order-guess', 'order-found'].map((column) =>
    say(`sheet.chart.${column}`),
  ),
  rows: setups.map((setup): readonly Cell[] => {
    const nothing = say('sheet.chart.nothing');
    const ring = !isFelt(setup)
      ? say('sheet.chart.blank', { unit: unitOf(setup, say) })
      : setup.partner === null
        ? nothing
        : say('sheet.chart.ring');
    const order = isFelt(setup) ? '' : nothing;
    return [marked(setup), setup.partner ?? nothing, ring, ring, order, order];
  }),
  widths: [1.1, 1.2, 2, 2, 1.6, 1.6],
  align: ['left', 'left', 'center', 'center', 'center', 'center'],
  rowHeight: ROW_HEIGHT[1],
});

/** Turns and lengths are counted: nobody can feel which of them is easier. A number is written there. */
const isFelt = ({ prediction }: SetupSheet): boolean =>
  prediction.watched === 'pull' || prediction.watched === 'ease';

/** Level 2: three readings with their unit. */
const numbers = (setups: readonly SetupSheet[], say: Say, marked: Marked): Table => ({
  block: 'table',
  head: [
    say('page.chart.setup'),
    say('page.chart.guess'),
    ...readingHeads(say),
    say('sheet.chart.middle'),
    say('page.chart.unit'),
  ],
  rows: setups.map((setup): readonly Cell[] => [
    marked(setup),
    '',
    ...blanks(READINGS),
    '',
    unitOf(setup, say),
  ]),
  widths: [1, 1.7, 1.4, 1.4, 1.4, 1.4, 0.9],
  align: ['left', 'left', 'left', 'left', 'left', 'left', 'center'],
  rowHeight: ROW_HEIGHT[2],
});

const WORK = ['load', 'rise', 'travel', 'in', 'out'] as const;

/** Level 3: the pull, then load, rise, travel of the pull, and the work in and out that follow. */
const work = (setups: readonly SetupSheet[], say: Say, marked: Marked): Table => ({
  block: 'table',
  head: [
    say('page.chart.setup'),
    say('page.chart.guess'),
    ...readingHeads(say),
    say('page.chart.unit'),
    ...WORK.map((column) => say(`sheet.chart.work-${column}`)),
  ],
  rows: setups.map((setup): readonly Cell[] => [
    marked(setup),
    '',
    ...blanks(READINGS),
    unitOf(setup, say),
    ...WORK.map(() => (movesALoad(setup) ? '' : say('sheet.chart.nothing'))),
  ]),
  widths: [0.8, 1.3, 1.1, 1.1, 1.1, 0.8, 1.2, 1.2, 1.4, 1.2, 1.2],
  align: ['left', 'left', 'left', 'left', 'left', 'center'],
  rowHeight: ROW_HEIGHT[3],
  size: 'small',
});

/** Where nothing moves, or nothing is pulled, there is no work to write. */
const movesALoad = ({ prediction }: SetupSheet): boolean =>
  prediction.watched === 'pull' && !isNotDefined(prediction.account);

const readingHeads = (say: Say): readonly string[] =>
  Array.from({ length: READINGS }, (_, n) => say('page.chart.reading', { number: n + 1 }));

const blanks = (count: number): readonly string[] => Array.from({ length: count }, () => '');

const unitOf = ({ prediction }: SetupSheet, say: Say): string =>
  prediction.watched === 'ease'
    ? say('sheet.chart.order-unit')
    : prediction.watched === 'turns'
      ? say('watched.turns')
      : unitLabel(marksOf(prediction).unit);

/** The mark that heads a row; a setup for groups that wait says so. */
const markCell = ({ mark }: SetupSheet, extra: ReadonlySet<string>, say: Say): Cell => ({
  text: mark,
  strong: true,
  ...(extra.has(mark) ? { note: say('sheet.chart.extra') } : {}),
});
