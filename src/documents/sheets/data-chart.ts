import type { SetupSheet, TableSheet } from '../pages/sheet.ts';
import { sheetIn } from '../pages/sheet-in.ts';
import type { Language } from '../sentences/language.ts';
import type { Block, Cell, SheetOfPaper } from './block.ts';
import { comparing } from './chart-comparing.ts';
import { numbers, ordering } from './chart-numbers.ts';
import { hasWork, pullReasons, work } from './chart-work.ts';
import { routeLines } from './group-routes.ts';
import { type GroupLabel, type Readers, readersOf } from './groups.ts';
import { gravityText } from './guide/pencil.ts';
import type { PaperJob, SheetKind } from './paper-job.ts';
import { type Say, sayIn } from './say.ts';
import { extraMarks, visitFacts, visitSheet } from './visit-sheet.ts';

const LEVELS = [1, 2, 3] as const;
type Level = (typeof LEVELS)[number];

/**
 * The charts that a group carries from table to table: a guess before every reading, then what was
 * found. Level 1 compares and orders, level 2 writes numbers with units, level 3 reckons work. A chart
 * says nothing of what will be read.
 */
export const dataCharts: SheetKind = {
  name: 'charts',
  of: 'visit',
  isTimed: true,
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
  return visitSheet({ ...job, sheet: sheetIn(language, job.sheet) }, language, {
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
  const sheet = sheetIn(language, job.sheet);
  const facts = visitFacts({ ...job, sheet }, language);
  return [
    {
      block: 'title',
      text: say('page.chart'),
      about: say(`sheet.chart.about-${level}`, level === 3 ? { gravity: gravityText(job, language) } : {}),
      facts: [[say('page.chart.group'), group ?? '________'], ...facts],
    },
    ...(group === null ? [] : routeLines(job, group, language)).map(
      (text): Block => ({ block: 'text', text, tone: 'strong' }),
    ),
    roles(say, level),
    ...sheet.tables.flatMap((table, n) => {
      const extra = extraMarks(job.prepared.tables[n]);
      return tableBlocks(table, level, language, (setup) => markCell(setup, extra, say));
    }),
  ];
}

const ROLES = ['pull', 'read', 'write', 'check'] as const;

/** Who does what, and when it moves on, so that nobody's name stands here. At level 1 no number is read. */
function roles(say: Say, level: Level): Block {
  const reads = level === 1 ? 'compares' : 'reads';
  return {
    block: 'together',
    blocks: [
      {
        block: 'columns',
        shares: ROLES.map(() => 1),
        columns: ROLES.map((role) => [
          { block: 'text', text: say(`sheet.role.${role}`), tone: 'strong' },
          { block: 'text', text: say(`sheet.role.${role}.${reads}`), tone: 'small' },
        ]),
      },
      { block: 'text', text: say(`sheet.role.change.${reads}`), tone: 'small' },
    ],
  };
}

function tableBlocks(
  table: TableSheet,
  level: Level,
  language: Language,
  marked: (setup: SetupSheet) => Cell,
): readonly Block[] {
  const { setups } = table;
  if (setups.length === 0) return [];
  const say = sayIn(language);
  const isFeltOnly = setups.every(({ prediction }) => prediction.watched === 'ease');
  const isReckoned = level === 3 && setups.some(hasWork);
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
          : isFeltOnly
            ? ordering(setups, say, marked)
            : isReckoned
              ? work(setups, language, marked)
              : numbers(setups, say, marked),
        ...pullText(isReckoned ? pullReasons(setups) : [], say),
        { block: 'line', name: say('page.chart.noticed') },
      ],
    },
  ];
}

/** Under a table of work: why the pull is reckoned, and what for. */
const pullText = (reasons: readonly string[], say: Say): readonly Block[] =>
  reasons.length === 0
    ? []
    : [
        {
          block: 'text',
          text: [...reasons, 'sheet.chart.pull.use'].map((key) => say(key)).join(' '),
          tone: 'small',
        },
      ];

/** The mark that heads a row; a setup for groups that wait says so. */
const markCell = ({ mark }: SetupSheet, extra: ReadonlySet<string>, say: Say): Cell => ({
  text: mark,
  strong: true,
  ...(extra.has(mark) ? { note: say('sheet.chart.extra') } : {}),
});
