import { describe, expect, it, test } from 'vitest';
import { crowdedPrepared } from '../../../test/documents/crowded.ts';
import { demoPrepared, paperJob, rowsOf, wordsOf } from '../../../test/documents/demo-prepared.ts';
import { crowdedPeriod, dayOf, demoPeriod } from '../../../test/documents/made-period.ts';
import { adultPosts } from './adult-posts.ts';
import type { SheetOfPaper } from './block.ts';
import { carriedPage } from './carried-page.ts';
import { dataCharts } from './data-chart.ts';
import { groupRoutes } from './group-routes.ts';
import type { SheetKind } from './paper-job.ts';
import { rotationCharts, rotationPosters } from './rotation-wall.ts';
import { tableVisitors } from './table-visitors.ts';

const kinds: readonly SheetKind[] = [rotationCharts, rotationPosters, groupRoutes, tableVisitors, adultPosts];
const prepared = demoPrepared();
const job = paperJob(prepared, { period: dayOf(demoPeriod()) });
const tagsOf = ({ blocks }: SheetOfPaper) =>
  blocks.flatMap((block) => (block.block === 'tags' ? block.tags : []));

const withPupils = (pupils: number) => {
  const { rotation } = demoPeriod();
  return { ...rotation, groups: rotation.groups.map((group) => ({ ...group, pupils })) };
};

test('without a timetable nothing is printed of it', () => {
  for (const kind of kinds) expect([kind.name, kind.build(paperJob(prepared))]).toEqual([kind.name, []]);
});

test('where wishes clash there is neither chart nor slip, but the notes say why', () => {
  const period = dayOf(
    demoPeriod({
      outcome: {
        kind: 'clash',
        wishes: [{ kind: 'bell', id: 'bell', path: null }],
        alsoClashing: [],
        proof: 'smallest',
      },
    }),
  );
  const sheets = kinds.flatMap(({ build }) => build({ ...job, period }));
  expect(sheets.map(({ name }) => name)).toEqual(['rotation-notes']);
  expect(sheets.flatMap(wordsOf)).toContain('all are done when the bell rings at 9:45');
});

test('several classes have charts and slips of their own', () => {
  const period = dayOf(demoPeriod({ label: '4a' }), demoPeriod({ label: '4b' }));
  const names = kinds.flatMap(({ build }) => build({ ...job, period })).map(({ name }) => name);
  expect(names).toEqual([
    'rotation-chart-4a',
    'rotation-chart-4b',
    'rotation-notes',
    'rotation-poster-4a',
    'rotation-poster-4b',
    'group-routes-4a',
    'group-routes-4b',
    'group-routes-4a-es',
    'group-routes-4b-es',
    'table-visitors-4a',
    'table-visitors-4b',
    'adult-posts',
  ]);
});

describe('the slips', () => {
  it('number the pupils and say who pulls at each table, so that everybody does', () => {
    const slips = groupRoutes.build(job).flatMap(tagsOf);
    for (const blocks of slips) {
      const table = blocks.find((block) => block.block === 'table');
      const pulls = table?.rows.map((row) => row[2]).filter((cell) => cell !== '') ?? [];
      expect(pulls.slice(0, 4)).toEqual(['1', '4', '3', '2']);
    }
    const alone = dayOf(demoPeriod({ rotation: withPupils(1) }));
    const few = groupRoutes
      .build(paperJob(prepared, { period: alone }))
      .flatMap(tagsOf)
      .flat();
    for (const block of few) if (block.block === 'table') expect(block.head).toHaveLength(2);
  });

  it('give each group one, in its own language, with its way and its times', () => {
    const [english, spanish] = groupRoutes.build(job);
    if (english === undefined || spanish === undefined) throw new Error('two languages');
    expect([english.language, tagsOf(english).length]).toEqual(['en', 5]);
    expect([spanish.language, tagsOf(spanish).length]).toEqual(['es', 1]);
    expect(wordsOf(english)).toEqual(
      expect.arrayContaining(['Group C', 'You begin at table 3.', '3 › 4 › 5 › 6 › 7 › 1 › 2']),
    );
    expect(wordsOf(spanish)).toEqual(
      expect.arrayContaining(['Grupo F', 'Empiezan en la mesa 6.', '6, El tolete y el calzo', '9:05']),
    );
  });

  it('give each table one, with every group that comes and until when it is put back', () => {
    const [sheet] = tableVisitors.build(job);
    if (sheet === undefined) throw new Error('no sheet');
    expect(tagsOf(sheet)).toHaveLength(7);
    const words = wordsOf(sheet);
    expect(words).toContain('Stands here: Adult 1.');
    const [first] = tagsOf(sheet).map((blocks) => rowsOf({ ...sheet, blocks }));
    expect(first?.[0]).toEqual(['A', '9:05', '9:09:47', '9:10:17']);
    expect(first?.map(([group]) => group)).toEqual(['A', 'F', 'E', 'D', 'C', 'B']);
  });

  it('tell each adult where to stand, whom to expect and what to watch there', () => {
    const [sheet] = adultPosts.build(job);
    if (sheet === undefined) throw new Error('no sheet');
    const words = wordsOf(sheet);
    expect(words).toContain('Adult 1');
    expect(words).toContain('What to watch at table 6');
    expect(rowsOf(sheet)[0]).toEqual([
      '9:05 to 9:27:08',
      'Table 4, The capstan',
      'D\u00a0at\u00a09:05, C\u00a0at\u00a09:10:47, B\u00a0at\u00a09:16:34, A\u00a0at\u00a09:22:21',
    ]);
    expect(rowsOf(sheet)[1]?.[1]).toBe('Walk about with the "Carried page".');
  });
});

test('every data chart of a group has its way in its head, and the carried page stays as it was', () => {
  for (const sheet of dataCharts.build(job)) {
    const heads = sheet.blocks.filter(({ block }) => block === 'title').length;
    const lines = wordsOf(sheet).filter((line) => /^(You begin|Empiezan)/.test(line));
    expect([sheet.name, lines.length]).toEqual([sheet.name, heads]);
  }
  expect(carriedPage.build(job)).toEqual(carriedPage.build(paperJob(prepared)));
});

test('a poster is on paper of twice the size, and says what every mark stands for', () => {
  const crowded = paperJob(crowdedPrepared(), { period: dayOf(crowdedPeriod()) });
  const papers = (['a4', 'us-letter'] as const).map(
    (paper) => rotationPosters.build({ ...crowded, paper })[0]?.paper,
  );
  expect(papers).toEqual(['a3', 'us-tabloid']);
  const [poster] = rotationPosters.build(crowded);
  const words = poster === undefined ? '' : wordsOf(poster).join('\n');
  for (const { mark, title } of crowded.sheet.tables) expect(words).toContain(`${mark}\u00a0${title}`);
});
