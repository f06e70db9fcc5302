import type { Prepared } from '../../core/prepare.ts';
import { review } from '../../core/review.ts';
import { talkMarkup } from '../../documents/discussion/talk-markup.ts';
import type { TalkPage, TalkPart } from '../../documents/discussion/talk-page.ts';
import { toldTalk } from '../../documents/discussion/talk-told.ts';
import { element, escapeText } from '../../documents/markup.ts';
import { fragment } from '../../documents/pages/fragment.ts';
import type { Language } from '../../documents/sentences/language.ts';
import { sayIn } from '../../documents/sheets/say.ts';
import type { Stored, WallNow } from '../../store/entry.ts';
import type { WallPart } from '../../store/wire.ts';
import { readingsCsv } from '../visits/visit-export.ts';

/** The wall of the talk as a group's tablet shows it; `null` where there is none, or the talk has no such question. */
export type Wall = (
  language: Language,
  tables: Prepared['tables'],
  entries: readonly Stored[],
  now: WallNow | null,
) => WallPart | null;

interface Told {
  readonly tables: Prepared['tables'];
  readonly readings: string;
  readonly names: boolean;
  readonly pages: readonly TalkPage[];
}

/**
 * From what the class has written to the talk, by the functions and from the readings file by which the talk's own page
 * tells it: the number on a tablet is the number on the wall. Told anew only where something was written since.
 */
export function wallFor(prepared: Prepared): Wall {
  const last = new Map<Language, Told>();
  const told = (language: Language, tables: Told['tables'], readings: string, names: boolean): Told => {
    const before = last.get(language);
    if (before?.tables === tables && before.readings === readings && before.names === names) return before;
    const today = { ...prepared, tables };
    const found = review(today, { name: 'readings.csv', text: readings });
    const { talk } = toldTalk(language, today, found, { of: 'class', names });
    const next = { tables, readings, names, pages: talk.pages };
    last.set(language, next);
    return next;
  };
  return (language, tables, entries, now) => {
    if (now === null) return null;
    const { pages } = told(language, tables, readingsCsv(entries), now.names);
    const page = pages.find(({ kind }) => kind === now.question);
    return page === undefined ? null : wallPart(language, page, now.isOpen);
  };
}

function wallPart(language: Language, page: TalkPage, isOpen: boolean): WallPart {
  const say = sayIn(language);
  const parts = (all: readonly TalkPart[], place: string): string =>
    all.map((part, n) => fragment(talkMarkup(part), `${page.kind} ${place} ${n}`)).join('');
  const answer = `<h2>${escapeText(say('talk.answer'))}</h2>${parts(page.answer, 'answered')}`;
  return {
    number: say('talk.number', { number: page.number, of: page.of }),
    ask: page.ask,
    html: [
      element('p', { class: 'task' }, escapeText(page.task)),
      parts(page.shown, 'asked'),
      isOpen && page.answer.length > 0 ? element('section', { class: 'answer' }, answer) : '',
    ].join(''),
  };
}
