import type { RotationTable } from '../../core/rotation/rotation.ts';
import {
  adultWords,
  type PeriodWords,
  postsOf,
  staysOf,
  tableWords,
  timetableOf,
} from '../text/period-words.ts';
import type { Block, Cell, SheetOfPaper } from './block.ts';
import { classesOfJob, classFacts } from './classes-of-job.ts';
import { paperWidth } from './kit-sheet.ts';
import type { PaperJob, SheetKind } from './paper-job.ts';
import { periodFacts } from './rotation-wall.ts';
import { slipHeight } from './slip-height.ts';
import { visitSheet } from './visit-sheet.ts';

/** A slip a table, which lies on it: who comes when, until when it is put back, and who stands there. */
export const tableVisitors: SheetKind = {
  name: 'visitors',
  of: 'visit',
  isTimed: true,
  build: (job) =>
    classesOfJob(job, job.languages.cards).flatMap(({ words, suffix }) =>
      timetableOf(words.period) === null ? [] : [visitorsSheet(job, words, suffix)],
    ),
};

function visitorsSheet(job: PaperJob, words: PeriodWords, suffix: string): SheetOfPaper {
  const { say, language, period } = words;
  const { tables } = period.rotation;
  const most = Math.max(
    0,
    ...tables.map(({ mark }) => staysOf(period).filter(({ table }) => table === mark).length),
  );
  return visitSheet(job, language, {
    name: `table-visitors${suffix}`,
    title: say('sheet.visitors'),
    blocks: [
      {
        block: 'title',
        text: say('sheet.visitors'),
        about: say('sheet.visitors.about'),
        facts: periodFacts(job, words),
      },
      {
        block: 'tags',
        width: Math.floor(paperWidth(job.paper) * 5) / 10,
        height: slipHeight(job.paper, most, 26),
        tags: tables.map((table) => slip(words, table)),
      },
    ],
  });
}

function slip(words: PeriodWords, { mark, needsAdult, copies, reset }: RotationTable): readonly Block[] {
  const { say, at, period } = words;
  const stays = staysOf(period).filter(({ table }) => table === mark);
  const adults = [
    ...new Set(
      postsOf(period)
        .filter(({ table }) => table === mark)
        .map(({ adult }) => adultWords(words, adult)),
    ),
  ];
  const name = [
    say('page.table', { mark: tableWords(words, mark) }),
    ...classFacts(words).map(([, label]) => label),
  ];
  const head: readonly Block[] = [
    { block: 'text', text: name.join(' · '), tone: 'headline' },
    ...(needsAdult
      ? [
          {
            block: 'text' as const,
            text:
              adults.length === 0 ? say('sheet.visitors.adult') : say('sheet.visitors.adult-is', { adults }),
            tone: 'strong' as const,
          },
        ]
      : []),
  ];
  if (stays.length === 0) return [...head, { block: 'text', text: say('sheet.visitors.nobody') }];
  return [
    ...head,
    {
      block: 'table',
      head: [
        say('sheet.visitors.group'),
        ...(copies > 1 ? [say('sheet.visitors.copy')] : []),
        say('sheet.visitors.from'),
        say('sheet.visitors.to'),
        say('sheet.visitors.reset'),
      ],
      rows: stays.map(({ group, copy, from, to }): readonly Cell[] => [
        { text: group, strong: true },
        ...(copies > 1 ? [say('sheet.visitors.copy-is', { copy, copies })] : []),
        at(from),
        at(to),
        at(to + reset.value),
      ]),
      widths: [1, ...(copies > 1 ? [1] : []), 1.3, 1.3, 1.5],
      size: 'small',
    },
  ];
}
