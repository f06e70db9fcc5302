import { talkCount, talkEntries } from '../discussion/talk-entries.ts';
import { talkMarkup } from '../discussion/talk-markup.ts';
import type { TalkPage } from '../discussion/talk-page.ts';
import type { Talk } from '../discussion/talk-pages.ts';
import { element, escapeText } from '../markup.ts';
import type { Language } from '../sentences/language.ts';
import { type Say, sayIn } from '../sheets/say.ts';
import { page, titleBlock } from './page.ts';
import { PAGE_STYLE, PRINT_STYLE } from './page-style.ts';
import { TALK_NOTES_STYLE, TALK_PART_STYLE, TALK_WALL_STYLE } from './talk-style.ts';

/** Facts at the head: what was visited, how many groups wrote how many readings. */
export type TalkFacts = readonly (readonly [term: string, value: string])[];

/** The talk for the wall: a question as large as the window, its answer folded away until it is wanted. */
export function talkWall(language: Language, { pages }: Talk, about: string): string {
  const say = sayIn(language);
  return page(
    language,
    say('talk.title'),
    [PAGE_STYLE, PRINT_STYLE, TALK_PART_STYLE, TALK_WALL_STYLE],
    [
      '<main>',
      element('h1', {}, escapeText(`${say('talk.title')}. ${about}`)),
      ...pages.map((each) => wallPage(each, say)),
      '</main>',
    ].join('\n'),
  );
}

const wallPage = ({ kind, number, of, ask, task, shown, answer }: TalkPage, say: Say): string =>
  element(
    'section',
    { class: 'wall', id: `ask-${kind}` },
    [
      element('p', { class: 'count' }, escapeText(say('talk.number', { number, of }))),
      element('h2', {}, escapeText(ask)),
      element('p', { class: 'task' }, escapeText(task)),
      ...shown.map(talkMarkup),
      ...(answer.length === 0
        ? []
        : [
            // Without a script, and in print of any browser, which leaves closed details closed.
            `<div class="cover"><input type="checkbox" id="cover-${kind}"><label for="cover-${kind}">${escapeText(
              say('talk.answer'),
            )}</label><div>${answer.map(talkMarkup).join('')}</div></div>`,
          ]),
    ].join(''),
  );

/** The same talk for whoever leads it: question, wait, model answer, what is often said and what to ask back. */
export function talkNotes(language: Language, talk: Talk, about: string, facts: TalkFacts): string {
  const say = sayIn(language);
  const { pages, how, leftOut } = talk;
  return page(
    language,
    say('talk.notes'),
    [PAGE_STYLE, PRINT_STYLE, TALK_PART_STYLE, TALK_NOTES_STYLE],
    [
      titleBlock(say('talk.notes'), [about], facts),
      '<main>',
      `<div class="how">${how.map((each) => element('p', {}, escapeText(each))).join('')}</div>`,
      ...pages.map((each) => notesOfPage(each, say)),
      ...(leftOut.length === 0
        ? []
        : [
            `<ul class="out">${leftOut
              .map((each) => element('li', {}, escapeText(say('talk.left-out', each))))
              .join('')}</ul>`,
          ]),
      '</main>',
    ].join('\n'),
  );
}

const notesOfPage = (page: TalkPage, say: Say): string =>
  [
    '<section class="note">',
    element('p', { class: 'count' }, escapeText(talkCount(page, say))),
    '<dl>',
    ...talkEntries(page, say).map(
      ({ term, texts, isAsk }) =>
        `<dt>${escapeText(term)}</dt>${element(
          'dd',
          { class: isAsk ? 'ask' : undefined },
          texts.map((each) => element('p', {}, escapeText(each))).join(''),
        )}`,
    ),
    '</dl></section>',
  ].join('');
