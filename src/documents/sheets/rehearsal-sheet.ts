import type { Rehearsal, RehearsalOptions } from '../../core/rehearse.ts';
import { rehearse } from '../../core/rehearse.ts';
import type { Language } from '../sentences/language.ts';
import { causeNamed, causeToSee, causeToTry } from '../text/cause-text.ts';
import {
  rehearsalTitle,
  soundText,
  tableWritten,
  thoughtOf,
  whereText,
  writtenIn,
} from '../text/rehearsal-text.ts';
import type { Block, Cell, SheetOfPaper } from './block.ts';
import { groupLabels } from './groups.ts';
import type { PaperJob, SheetKind } from './paper-job.ts';
import type { Say } from './say.ts';
import { tableHeading } from './table-heading.ts';
import { sheetForAdults } from './visit-sheet.ts';

/** Groups where a visit says nothing of them, and mistakes and seed where nobody asks for others. */
const USUAL = { groups: 6, mistakes: 4, seed: 1 } as const;

/** A rehearsal for as many groups as the visit has. */
export const usualRehearsal = ({ visit }: PaperJob['prepared']): RehearsalOptions => {
  const labels = groupLabels(visit);
  return { ...USUAL, groups: labels.length > 1 ? labels.length : USUAL.groups };
};

/** The night before: what simulated groups wrote on the first page, what happened there on the next. */
export const rehearsalSheet: SheetKind = {
  name: 'rehearsal',
  of: 'visit',
  build: (job) => [rehearsalOnPaper(job, rehearse(job.prepared, usualRehearsal(job.prepared)))],
};

/** The same for a rehearsal that was asked for. */
export const rehearsalOnPaper = (job: PaperJob, rehearsal: Rehearsal): SheetOfPaper =>
  sheetForAdults(job, {
    name: 'rehearsal',
    title: 'rehearsal.sheet',
    about: 'rehearsal.sheet.about',
    blocks: (say, language) => [
      ...rehearsalTitle(language, rehearsal).map((text): Block => ({ block: 'text', text })),
      ...job.prepared.tables.flatMap(({ mark, title, titles }) =>
        writtenBlocks(tableHeading(language, { mark, title, titles }), mark, rehearsal, language),
      ),
      { block: 'text', text: say('rehearsal.sheet.answers-behind'), tone: 'strong' },
      { block: 'page-break' },
      { block: 'heading', level: 2, text: say('rehearsal.answers') },
      answers(rehearsal, language, say),
      { block: 'text', text: soundText(language, rehearsal), tone: 'small' },
    ],
  });

function writtenBlocks(
  heading: string,
  mark: string,
  rehearsal: Rehearsal,
  language: Language,
): readonly Block[] {
  const { head, rows } = tableWritten(language, mark, rehearsal);
  if (rows.length === 0) return [];
  return [
    {
      block: 'together',
      blocks: [
        { block: 'heading', level: 2, text: heading },
        {
          block: 'table',
          head,
          rows: rows.map(([setup = '', ...cells]): readonly Cell[] => [
            { text: setup, strong: true },
            ...cells,
          ]),
          widths: [1, 1, ...rehearsal.labels.map(() => 1.2)],
          align: ['left', 'left', ...rehearsal.labels.map(() => 'center' as const)],
          size: 'small',
        },
      ],
    },
  ];
}

function answers({ planted }: Rehearsal, language: Language, say: Say): Block {
  return {
    block: 'table',
    head: [
      say('rehearsal.sheet.where'),
      say('rehearsal.sheet.happened'),
      say('rehearsal.sheet.group'),
      say('rehearsal.sheet.teacher'),
    ],
    rows: planted.map((each): readonly Cell[] => [
      {
        text: writtenIn(language, each),
        strong: true,
        note: whereText(language, each),
      },
      {
        text: causeNamed(language, each.mistake),
        note: say('rehearsal.answer.program', { thinks: thoughtOf(language, each) }),
      },
      causeToTry(language, each.mistake),
      causeToSee(language, each.mistake),
    ]),
    widths: [1.3, 1.5, 1.3, 1.6],
    size: 'small',
  };
}
