import { isError } from '../../core/diagnostics/diagnostic.ts';
import { tablesAfterTrials } from '../../core/files/trials-on-arrival.ts';
import { type Prepared, prepare } from '../../core/prepare.ts';
import { rehearse } from '../../core/rehearse.ts';
import { review } from '../../core/review.ts';
import { talkCount, talkEntries } from '../../documents/discussion/talk-entries.ts';
import type { TalkPart } from '../../documents/discussion/talk-page.ts';
import { type ToldTalk, talkSheets, toldTalk } from '../../documents/discussion/talk-told.ts';
import { fragment } from '../../documents/pages/fragment.ts';
import { usualRehearsal } from '../../documents/sheets/rehearsal-sheet.ts';
import { sayIn } from '../../documents/sheets/say.ts';
import { findingsText } from '../../documents/text/findings-text.ts';
import type { AnsweredTalk, AskedTalk, TalkOf, TalkShown } from './talk-wire.ts';

/** From files and readings to all that wall and notes show. */
export function talkBench({ number, language, files, of, names }: AskedTalk): AnsweredTalk {
  const packed = prepare(files);
  const faults = findingsText(language, packed.sources, packed.diagnostics.filter(isError));
  if (packed.tables.length === 0) return { number, talk: null, faults, refused: 0 };
  const prepared =
    of.kind === 'class' ? { ...packed, tables: tablesAfterTrials(packed.tables, of.trials) } : packed;
  const found = reviewOf(prepared, of);
  const told = toldTalk(language, prepared, found, { of: of.kind, names });
  return { number, talk: talkShown(language, told), faults, refused: found.refused.length };
}

const reviewOf = (prepared: Prepared, of: TalkOf) =>
  of.kind === 'class'
    ? review(prepared, of.readings)
    : rehearse(prepared, { ...usualRehearsal(prepared), ...of.asked }).review;

function talkShown(language: AskedTalk['language'], told: ToldTalk): TalkShown {
  const say = sayIn(language);
  const { talk, about, facts } = told;
  return {
    title: say('talk.title'),
    about,
    facts,
    how: talk.how,
    leftOut: talk.leftOut.map((each) => say('talk.left-out', each)),
    answer: say('talk.answer'),
    questions: talk.pages.map((page) => ({
      kind: page.kind,
      number: say('talk.number', { number: page.number, of: page.of }),
      count: talkCount(page, say),
      ask: page.ask,
      task: page.task,
      shown: forPage(page.shown, `${page.kind} asked`),
      answer: forPage(page.answer, `${page.kind} answered`),
      notes: talkEntries(page, say),
    })),
    sheets: talkSheets(language, told),
  };
}

/** Pictures as a strict page takes them, with ids of their own. */
const forPage = (parts: readonly TalkPart[], place: string): readonly TalkPart[] =>
  parts.map((part, n) =>
    part.part === 'figure' ? { ...part, svg: fragment(part.svg, `${place} ${n}`) } : part,
  );
