import { cautionsOf } from '../sentences/caution-words.ts';
import {
  adultWords,
  type PeriodWords,
  type Post,
  postsOf,
  staysOf,
  tableWords,
  timetableOf,
} from '../text/period-words.ts';
import type { Block, Cell } from './block.ts';
import { classesOfJob, classFacts } from './classes-of-job.ts';
import type { PaperJob, SheetKind } from './paper-job.ts';
import { sheetForAdults } from './visit-sheet.ts';

const NO_BREAK = '\u00a0';

/** For each adult where to stand and when, whom to expect, and what to watch there. */
export const adultPosts: SheetKind = {
  name: 'posts',
  of: 'visit',
  isTimed: true,
  build: (job) => {
    const classes = classesOfJob(job, job.languages.key).filter(
      ({ words: { period } }) => timetableOf(period) !== null && period.rotation.adults.length > 0,
    );
    return classes.length === 0
      ? []
      : [
          sheetForAdults(job, {
            name: 'adult-posts',
            title: 'sheet.posts',
            about: 'sheet.posts.about',
            blocks: () =>
              classes.flatMap(({ words }) =>
                words.period.rotation.adults.map(({ label }) => postBlock(job, words, label)),
              ),
          }),
        ];
  },
};

function postBlock(job: PaperJob, words: PeriodWords, adult: string): Block {
  const { say, period } = words;
  const posts = postsOf(period).filter((post) => post.adult === adult);
  const carried = say('sheet.carried');
  const name = [adultWords(words, adult), ...classFacts(words).map(([, label]) => label)].join(' · ');
  const marks = [...new Set(posts.map(({ table }) => table))];
  return {
    block: 'together',
    blocks: [
      { block: 'heading', level: 2, text: name },
      ...(posts.length === 0
        ? [{ block: 'text' as const, text: say('sheet.posts.none', { carried }) }]
        : [
            {
              block: 'table' as const,
              head: [say('sheet.posts.when'), say('sheet.posts.where'), say('sheet.posts.who')],
              rows: rowsOf(words, posts, carried),
              widths: [1.6, 3, 3],
            },
            ...marks.flatMap((mark) => watchBlocks(job, words, mark)),
          ]),
    ],
  };
}

/** Posts in the order of time; between them, and before and after, the adult walks about. */
function rowsOf(words: PeriodWords, posts: readonly Post[], carried: string): readonly (readonly Cell[])[] {
  const { say, at, period } = words;
  const { begins, bell } = period.rotation;
  const stretch = (from: number, to: number): string =>
    say('sheet.rotation.from-to', { from: at(from), to: at(to) });
  const free = (from: number, to: number): readonly (readonly Cell[])[] =>
    to - from < WORTH_WALKING ? [] : [[stretch(from, to), say('sheet.posts.free', { carried }), '']];
  return [
    ...posts.flatMap((post, n) => [
      ...free(posts[n - 1]?.to ?? begins, post.from),
      [
        stretch(post.from, post.to),
        { text: say('page.table', { mark: tableWords(words, post.table) }), strong: true as const },
        staysOf(period)
          .filter(
            ({ table, copy, from }) =>
              table === post.table && copy === post.copy && from >= post.from && from < post.to,
          )
          .map(({ group, from }) =>
            say('sheet.posts.group', { group, from: at(from) }).replaceAll(' ', NO_BREAK),
          )
          .join(', '),
      ],
    ]),
    ...free(posts.at(-1)?.to ?? begins, bell),
  ];
}

/** Shorter than this nobody walks about, seconds: common practice, no source. */
const WORTH_WALKING = 120;

/** The cautions of a table, whole: an adult sees to them. */
function watchBlocks({ sheet }: PaperJob, { say }: PeriodWords, mark: string): readonly Block[] {
  const table = sheet.tables.find((each) => each.mark === mark);
  const items = table === undefined ? [] : cautionsOf(table).map(({ key, facts }) => say(key, facts));
  return items.length === 0
    ? []
    : [
        { block: 'text', text: say('sheet.posts.watch', { table: mark }), tone: 'strong' },
        { block: 'list', items },
      ];
}
