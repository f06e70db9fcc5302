import { machineNamed } from '../../core/machines/list.ts';
import type { PreparedTable } from '../../core/prepare.ts';
import type { SetupSheet, TableSheet } from '../pages/sheet.ts';
import { quantityText } from '../printing/quantity-text.ts';
import { type Language, languagePack } from '../sentences/language.ts';
import { machineName } from '../text/explain-text.ts';
import type { Block, Cell, SheetOfPaper } from './block.ts';
import { discussion } from './guide/discussion.ts';
import { expectedWithUnit } from './guide/figures.ts';
import { hazardSheet } from './guide/hazard-sheet.ts';
import { limitsOfTable } from './guide/limits-of-table.ts';
import { needs } from './guide/needs.ts';
import { nightBefore, setUpOrder } from './guide/night-before.ts';
import { gravityText, pencilPull } from './guide/pencil.ts';
import { periodPlan } from './guide/period-plan.ts';
import { pupilQuestions } from './guide/pupil-questions.ts';
import { sixNames } from './guide/six-names.ts';
import type { PaperJob, SheetKind } from './paper-job.ts';
import { type Say, sayIn } from './say.ts';
import { extraMarks, notPreparedBlocks, visitFacts, visitSheet } from './visit-sheet.ts';

/**
 * For a teacher who has never seen the kit: twenty minutes the night before, the day in order, each
 * table with what it shows and what it can't, the talk at the end; and the hazard sheet to sign.
 */
export const teachersGuide: SheetKind = {
  name: 'guide',
  of: 'visit',
  isTimed: true,
  build: (job) => [guide(job), hazardSheet(job)],
};

function guide(job: PaperJob): SheetOfPaper {
  const language = job.languages.key;
  const say = sayIn(language);
  const { tables } = job.sheet;
  return visitSheet(job, language, {
    name: 'teachers-guide',
    title: say('guide.title'),
    blocks: [
      {
        block: 'title',
        text: say('guide.title'),
        about: say('guide.about'),
        facts: [...visitFacts(job, language), ...sizeFacts(job, language, say)],
      },
      ...nightBefore(job, say),
      ...setUpOrder(job, say),
      ...periodPlan(job, say),
      { block: 'heading', level: 2, text: say('guide.tables') },
      { block: 'text', text: say('guide.tables.about') },
      {
        block: 'text',
        text: say('guide.tables.times', {
          key: say('key.title'),
          column: say('key.textbook'),
          gravity: gravityText(job, language),
        }),
      },
      ...job.prepared.tables.flatMap((prepared, n) => {
        const table = tables[n];
        return table === undefined ? [] : tableNotes(prepared, table, language, say);
      }),
      ...sixNames(tables, say),
      ...discussion(tables, language, say),
      ...needs(tables, language, say),
    ],
  });
}

/** Groups, pupils, helpers and period, as far as the visit says them. */
function sizeFacts(job: PaperJob, language: Language, say: Say): readonly (readonly [string, string])[] {
  const { visit } = job.prepared;
  const period = visit?.period ?? null;
  const counts = (['groups', 'pupils', 'helpers'] as const).flatMap((what) => {
    const count = visit?.[what] ?? null;
    return count === null ? [] : [[say(`guide.fact.${what}`), String(count)] as const];
  });
  return [
    ...counts,
    ...(period === null
      ? []
      : [
          [
            say('guide.fact.period'),
            quantityText({ si: period.value, dimension: 'time' }, languagePack(language).decimal),
          ] as const,
        ]),
  ];
}

function tableNotes(
  prepared: PreparedTable,
  table: TableSheet,
  language: Language,
  say: Say,
): readonly Block[] {
  const heading = say('key.text.table', { mark: table.mark, title: table.title });
  // What only a group that waits has seen, the class doesn't ask about.
  const extra = extraMarks(prepared);
  const seen = { ...table, setups: table.setups.filter(({ mark }) => !extra.has(mark)) };
  const questions = pupilQuestions(seen, language, say);
  const limits = limitsOfTable(prepared, table.setups, language, say);
  const isKnown = machineNamed(table.machine) !== undefined;
  return [
    {
      block: 'together',
      blocks: [
        { block: 'heading', level: 3, text: `${heading} · ${machineName(language, table.machine)}` },
        ...(isKnown ? [{ block: 'text' as const, text: say(`${table.machine}.about`) }] : []),
        ...notPreparedBlocks(say, prepared.notPrepared),
        ...shown(table, language, say),
      ],
    },
    ...(questions.length === 0
      ? []
      : [
          {
            block: 'table' as const,
            head: [say('guide.ask'), say('guide.answer')],
            rows: questions.map(({ asks, answer }): readonly Cell[] => [
              { text: asks, strong: true },
              answer,
            ]),
            widths: [2, 5],
            size: 'small' as const,
          },
        ]),
    ...(limits.length === 0
      ? []
      : [
          {
            block: 'together' as const,
            blocks: [
              { block: 'text' as const, text: say('guide.limit'), tone: 'strong' as const },
              { block: 'list' as const, items: limits },
            ],
          },
        ]),
  ];
}

/** What the partners show side by side, each pair once, with both figures. */
function shown(table: TableSheet, language: Language, say: Say): readonly Block[] {
  const said = new Set<string>();
  const items = table.setups.flatMap((setup): readonly string[] => {
    const other = table.setups.find(({ mark }) => mark === setup.partner);
    const pair = [setup.mark, other?.mark ?? ''].sort().join(' ');
    if (other === undefined || said.has(pair)) return [];
    said.add(pair);
    const shows = setup.shows ?? (other.partner === setup.mark ? other.shows : null);
    const [one, two] = [
      expectedWithUnit(language, setup.prediction),
      expectedWithUnit(language, other.prediction),
    ];
    const facts = { one: setup.mark, other: other.mark };
    const figures = one === null || two === null ? '' : say('guide.shows.figures', { one, two });
    const pulls = pullsOf(setup, other, language, say);
    return [
      [
        shows === null ? say('guide.shows.pair', facts) : say('guide.shows.words', { ...facts, shows }),
        figures,
        pulls,
      ]
        .filter((each) => each !== '')
        .join(' '),
    ];
  });
  return items.length === 0
    ? []
    : [
        { block: 'text', text: say('guide.shows'), tone: 'strong' },
        { block: 'list', items },
      ];
}

/** Both pulls, where what the scale shows is not the pull: what a class divides. */
function pullsOf(setup: SetupSheet, other: SetupSheet, language: Language, say: Say): string {
  const [one, two] = [pencilPull(language, setup), pencilPull(language, other)];
  if (one === null || two === null || (one.shift === null && two.shift === null)) return '';
  return say('guide.shows.pulls', {
    one: `${one.pull.text} ${one.unit}`,
    two: `${two.pull.text} ${two.unit}`,
  });
}
