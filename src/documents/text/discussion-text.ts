import type { TalkPage, TalkPart } from '../discussion/talk-page.ts';
import type { Talk } from '../discussion/talk-pages.ts';
import type { Language } from '../sentences/language.ts';
import { altOf } from '../sheets/drawing-figure.ts';
import { type Say, sayIn } from '../sheets/say.ts';
import { columns, wrapped } from './columns.ts';

const WIDTH = 100;

/** The talk for a terminal: each question with what stands on the wall, its answer, and the notes. */
export function discussionText(language: Language, { pages, leftOut, how }: Talk, about: string): string {
  const say = sayIn(language);
  return [
    say('talk.title'),
    ...wrapped(about, WIDTH),
    ...how.flatMap((each) => wrapped(each, WIDTH)),
    ...pages.flatMap((page) => ['', ...pageText(page, say)]),
    ...(leftOut.length === 0 ? [] : ['']),
    ...leftOut.flatMap((each) => wrapped(say('talk.left-out', each), WIDTH)),
    '',
  ].join('\n');
}

function pageText({ number, of, ask, task, shown, answer, notes }: TalkPage, say: Say): readonly string[] {
  return [
    `${say('talk.number', { number, of })}: ${ask}`,
    ...paragraph(task),
    ...shown.flatMap(partText),
    '',
    `  ${say('talk.answer')}:`,
    ...answer.flatMap(partText),
    '',
    ...paragraph(
      `${say('talk.wait', { seconds: notes.wait })} (${say('talk.minutes', { minutes: notes.minutes })})`,
    ),
    ...paragraph(`${say('talk.idea')}: ${notes.idea}`),
    ...paragraph(`${say('talk.back')}: ${notes.back}`),
  ];
}

const paragraph = (text: string): readonly string[] => {
  const [first = '', ...rest] = wrapped(text, WIDTH - 4);
  return [`  ${first}`, ...rest.map((line) => `    ${line}`)];
};

/** A drawing is what it says to somebody who can't see it. */
function partText(part: TalkPart): readonly string[] {
  switch (part.part) {
    case 'line':
      return paragraph(part.text);
    case 'figure':
      return paragraph(`[${part.caption}] ${altOf(part.svg)}`);
    case 'table':
      return columns(
        [part.head, ...part.rows],
        part.head.map(() => 'left' as const),
      ).map((row) => `  ${row}`);
  }
}
