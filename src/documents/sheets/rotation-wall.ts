import { sheetIn } from '../pages/sheet-in.ts';
import { sayingsOf } from '../text/period-said.ts';
import { type PeriodWords, tableWords, timetableOf } from '../text/period-words.ts';
import { betweenText } from '../text/rotation-text.ts';
import type { Block, Paper, PosterPaper, SheetOfPaper } from './block.ts';
import { classesOfJob, classFacts, timeFacts } from './classes-of-job.ts';
import type { PaperJob, SheetKind } from './paper-job.ts';
import { rotationFigure } from './rotation-figure.ts';
import { sayingBlocks } from './saying-blocks.ts';
import { sheetForAdults, visitFacts, visitSheet } from './visit-sheet.ts';

/** Room for the chart under its head, millimetres, on a sheet that lies on its side. */
const ROOM: Readonly<Record<Paper, { readonly width: number; readonly height: number }>> = {
  a4: { width: 269, height: 150 },
  'us-letter': { width: 251, height: 155 },
};
const LETTERS = 2.6;
/** A page with a mere heading has so much more than one with a head, millimetres. */
const ABOVE = 12;

/** Few adults' lines stand under those of the tables, millimetres. */
const BESIDE = { around: 30, line: 13, most: 72 } as const;

const POSTERS: Readonly<
  Record<Paper, { readonly paper: PosterPaper; readonly width: number; readonly height: number }>
> = {
  a4: { paper: 'a3', width: 391, height: 236 },
  'us-letter': { paper: 'us-tabloid', width: 403, height: 216 },
};
const POSTER_LETTERS = 5.2;

/** For the wall: the rotation chart by group, then by table and by adult; and for adults all there is to say of it. */
export const rotationCharts: SheetKind = {
  name: 'rotation',
  of: 'visit',
  isTimed: true,
  build: (job) =>
    job.period === null
      ? []
      : [
          ...classesOfJob(job, job.languages.cards).flatMap(({ words, suffix }) =>
            timetableOf(words.period) === null ? [] : [chartSheet(job, words, suffix)],
          ),
          notesSheet(job),
        ],
};

function chartSheet(job: PaperJob, words: PeriodWords, suffix: string): SheetOfPaper {
  const { say, language, period } = words;
  const own = { ...job, sheet: sheetIn(language, job.sheet) };
  const room = { ...ROOM[job.paper], least: LETTERS };
  const people = period.rotation.adults.length;
  const low = people === 0 ? 0 : BESIDE.around + BESIDE.line * people;
  const isBelow = low <= BESIDE.most;
  const groups = rotationFigure(words, 'groups', room);
  const tables = rotationFigure(words, 'tables', {
    ...room,
    height: room.height + ABOVE - (isBelow ? low + 10 : 0),
  });
  const adults =
    people === 0 ? null : rotationFigure(words, 'adults', { ...room, height: isBelow ? low : room.height });
  return visitSheet(own, language, {
    name: `rotation-chart${suffix}`,
    title: say('sheet.rotation'),
    isLandscape: true,
    blocks: [
      {
        block: 'title',
        text: say('sheet.rotation'),
        about: say('sheet.rotation.about'),
        facts: [...classFacts(words), ...timeFacts(words)],
      },
      ...(groups === null
        ? []
        : [groups, { block: 'text' as const, text: tableKey(words), tone: 'small' as const }]),
      ...(tables === null
        ? []
        : [{ block: 'page-break' } as const, heading(say('rotation.chart.tables')), tables]),
      ...(adults === null
        ? []
        : [
            ...(isBelow ? [] : [{ block: 'page-break' } as const]),
            heading(say('rotation.chart.adults')),
            adults,
          ]),
    ],
  });
}

const heading = (text: string): Block => ({ block: 'heading', level: 2, text });

/** All that is said of the period, class by class: for adults, beside the chart. */
const notesSheet = (job: PaperJob): SheetOfPaper =>
  sheetForAdults(job, {
    name: 'rotation-notes',
    title: 'sheet.rotation.notes',
    about: 'key.for-adults',
    blocks: (say, language) => [
      ...classesOfJob(job, language).flatMap(({ words }): readonly Block[] => [
        ...(words.period.label === null
          ? []
          : [heading(say('rotation.class', { class: words.period.label }))]),
        ...sayingsOf(words, job.prepared).flatMap(sayingBlocks),
      ]),
      ...(job.period?.between ?? []).map(
        (each): Block => ({ block: 'text', text: betweenText(language, each), tone: 'strong' }),
      ),
    ],
  });

/** The chart as large as a sheet of twice the size takes it: a mark is read from the back of the room. */
export const rotationPosters: SheetKind = {
  name: 'poster',
  of: 'visit',
  isTimed: true,
  build: (job) =>
    classesOfJob(job, job.languages.cards).flatMap(({ words, suffix }) => {
      const poster = posterSheet(job, words, suffix);
      return poster === null ? [] : [poster];
    }),
};

function posterSheet(job: PaperJob, words: PeriodWords, suffix: string): SheetOfPaper | null {
  const { say, language } = words;
  const { paper, ...room } = POSTERS[job.paper];
  const chart = rotationFigure(words, 'groups', { ...room, least: POSTER_LETTERS, marksOnly: true });
  if (chart === null) return null;
  const own = { ...job, sheet: sheetIn(language, job.sheet) };
  return {
    ...visitSheet(own, language, {
      name: `rotation-poster${suffix}`,
      title: say('sheet.rotation.poster'),
      isLandscape: true,
      size: 'large',
      blocks: [
        {
          block: 'title',
          text: say('sheet.rotation.poster'),
          facts: [...classFacts(words), ...timeFacts(words)],
        },
        chart,
        {
          block: 'text',
          text: tableKey(words),
        },
      ],
    }),
    paper,
  };
}

/** What the marks stand for, in one line or two: no line ends between a mark and its title. */
const tableKey = (words: PeriodWords): string =>
  words.period.rotation.tables
    .map(({ mark }) => tableWords(words, mark).replace(', ', '\u00a0'))
    .join('   ·   ');

/** Facts of the visit for a sheet of the period. */
export const periodFacts = (job: PaperJob, words: PeriodWords) => [
  ...visitFacts({ ...job, sheet: sheetIn(words.language, job.sheet) }, words.language),
  ...classFacts(words),
];
