import { readFileSync, writeFileSync } from 'node:fs';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { seconds } from '../../src/core/quantities/brands.ts';
import type { Arrangement } from '../../src/core/rotation/arrangement.ts';
import type { ClassPeriod, FilledWait, Period } from '../../src/core/rotation/class-period.ts';
import type { Timetable } from '../../src/core/rotation/timetable.ts';
import type { Wish, WishedThing } from '../../src/core/rotation/wish.ts';
import { rotationPage } from '../../src/documents/pages/rotation-page.ts';
import { periodWords } from '../../src/documents/text/period-words.ts';
import { rotationCsv } from '../../src/documents/text/rotation-csv.ts';
import { rotationJson } from '../../src/documents/text/rotation-json.ts';
import { rotationText } from '../../src/documents/text/rotation-text.ts';
import { wishText } from '../../src/documents/text/wish-text.ts';
import { crowdedPrepared } from './crowded.ts';
import { demoPrepared } from './demo-prepared.ts';
import { crowdedPeriod, dayOf, demoPeriod, smallPeriod } from './made-period.ts';

const demo = demoPrepared();
const crowded = crowdedPrepared();
const golden = (name: string, text: string): string => {
  const file = new URL(`./${name}`, import.meta.url);
  if (process.env.UPDATE_GOLDEN === '1') writeFileSync(file, text);
  return readFileSync(file, 'utf8');
};
/** Without its line breaks. */
const unwrapped = (text: string): string => text.replace(/\s+/g, ' ');
const wish = (thing: WishedThing, path: Wish['path'] = null): Wish => ({
  ...thing,
  id: JSON.stringify(thing),
  path,
});
const madeTimetable = ({ outcome }: ClassPeriod): Timetable => {
  if (outcome.kind !== 'timetable') throw new Error('this period has a timetable');
  return outcome.timetable;
};
const clashing = (...wishes: readonly Wish[]): Period => clashingSets([wishes]);
const clashingSets = (
  [wishes = [], ...alsoClashing]: readonly (readonly Wish[])[],
  way: 'signal' | 'free' = 'signal',
): Period =>
  dayOf(
    demoPeriod({
      rotation: { ...demoPeriod().rotation, way },
      chance: null,
      gains: [],
      waits: [],
      outcome: { kind: 'clash', wishes, alsoClashing, proof: 'smallest' },
    }),
  );

describe.each(['en', 'es'] as const)('a period in %s', (language) => {
  it('has its chart, its chances, its waits and its gains as they were looked at', () => {
    const text = [
      rotationText(language, demo, dayOf(demoPeriod({ label: '4a' }))),
      rotationText(language, crowded, dayOf(crowdedPeriod())),
      rotationText(language, demo, dayOf(smallPeriod())),
    ].join('\n');
    expect(text).toBe(golden(`rotation.${language}.golden.txt`, text));
  });

  it('has no line wider than a terminal of 80 columns', () => {
    for (const period of [demoPeriod(), crowdedPeriod(), smallPeriod()])
      for (const line of rotationText(language, crowded, dayOf(period)).split('\n'))
        expect([...line].length, line).toBeLessThanOrEqual(80);
  });

  it('has words for every kind of wish, for one group and for all', () => {
    const table = '4';
    const [from, to] = [seconds(600), seconds(1200)];
    const things: readonly WishedThing[] = [
      { kind: 'bell' },
      { kind: 'adults' },
      { kind: 'does', table, group: 'A' },
      { kind: 'does', table, group: null },
      { kind: 'skips', table, group: 'A' },
      { kind: 'closed', table, from: seconds(0), to: null },
      { kind: 'closed', table, from, to: null },
      { kind: 'closed', table, from, to },
      { kind: 'copies', table, copies: 1 },
      { kind: 'copies', table, copies: 2 },
      // biome-ignore lint/suspicious/noThenProperty: the contract's own word
      { kind: 'before', first: '1', then: '2', group: 'A' },
      // biome-ignore lint/suspicious/noThenProperty: the contract's own word
      { kind: 'before', first: '1', then: '2', group: null },
      { kind: 'first', table, group: 'A' },
      { kind: 'first', table, group: null },
      { kind: 'last', table, group: 'A' },
      { kind: 'last', table, group: null },
      { kind: 'at', table, group: 'A', time: from },
      { kind: 'away', group: 'A', from, to },
      { kind: 'away', group: 'A', from, to: null },
      { kind: 'away', group: 'A', from: seconds(0), to },
      { kind: 'apart', groups: ['A', 'B'] },
      { kind: 'together', groups: ['A', 'B'] },
    ];
    const words = periodWords(language, demo, demoPeriod());
    const texts = things.map((thing) => wishText(words, wish(thing)));
    expect(new Set(texts).size).toBe(things.length);
    expect(`${texts.join('\n')}\n`).toBe(golden(`wishes.${language}.golden.txt`, `${texts.join('\n')}\n`));
  });

  it('has every group, table and adult on its page, and no script and nothing fetched', () => {
    for (const [prepared, period] of [
      [demo, demoPeriod()],
      [crowded, crowdedPeriod()],
    ] as const) {
      const html = rotationPage(language, prepared, dayOf(period));
      expect(html).not.toMatch(/<script|<link|<img|\ssrc=|\shref=|url\(|@import/);
      for (const [cell] of html.matchAll(/<th[ >][^>]*/g)) expect(cell).toMatch(/scope="(col|row)"/);
      const ids = [...html.matchAll(/ id="([^"]+)"/g)].map((match) => match[1]);
      expect(new Set(ids).size).toBe(ids.length);
      expect(html.match(/<figure/g)).toHaveLength(3);
      const headed = [...html.matchAll(/<th scope="row">([^<]+)</g)].map((match) => match[1]);
      expect(headed).toEqual(period.rotation.groups.map(({ label }) => label));
    }
  });
});

it('a clash is told with the line of the visit on which each wish stands', () => {
  const told = rotationText(
    'en',
    demo,
    clashing(wish({ kind: 'bell' }, ['period']), wish({ kind: 'does', table: '6', group: null })),
  );
  const visit = demo.sources.find(({ name }) => name.endsWith('.visit.yaml'))?.text ?? '';
  const line = visit.split('\n').findIndex((each) => each.startsWith('period:')) + 1;
  expect(line).toBeGreaterThan(0);
  expect(told).toContain(`all are done when the bell rings at 9:45 (harbour-day.visit.yaml, line ${line})`);
  expect(told).toContain('every group does table 6\n');
  expect(unwrapped(told)).toContain(
    'Give up any one of these, and the others of these can all be kept; other wishes may still clash with them.',
  );
  expect(told).not.toContain('By the plan');
});

it('of several clashes each is named, in words and in JSON, and nothing is promised of the others', () => {
  const first = [wish({ kind: 'bell' }), wish({ kind: 'does', table: '6', group: null })];
  const also = [
    wish({ kind: 'skips', table: '2', group: 'B' }),
    wish({ kind: 'first', table: '2', group: 'B' }),
  ];
  const period = clashingSets([first, also]);
  const told = unwrapped(rotationText('en', demo, period));
  expect(told).toContain(
    'the others of these can all be kept; the clashes named below stay. No smaller set of wishes clashes',
  );
  expect(told).toMatch(
    /Apart from that, these clash too, .*: group B does not do table 2 group B does table 2/,
  );
  const [json] = JSON.parse(rotationJson(demo, period)).classes;
  expect(json.clashProof).toBe('smallest');
  expect(json.clash.map(({ kind }: Wish) => kind)).toEqual(['bell', 'does']);
  expect(json.alsoClashing).toHaveLength(1);
  expect(json.alsoClashing[0].map(({ says }: { says: string }) => says)).toEqual([
    'group B does not do table 2',
    'group B does table 2 first',
  ]);
  const [planned] = JSON.parse(rotationJson(demo, dayOf(demoPeriod()))).classes;
  expect(planned).toMatchObject({ clash: [], alsoClashing: [], clashProof: null });
});

it.each([
  ['en', 'can only be promised where all move together. Write "move: on a signal" into the visit'],
  ['es', 'solo se puede prometer si todos cambian a la vez. Escribe "move: on a signal" en la visita'],
] as const)(
  'in %s side by side as tables free up is refused with the reason and the way out',
  (language, why) => {
    const sideBySide = [wish({ kind: 'together', groups: ['A', 'B'] })];
    const told = (period: Period): string => unwrapped(rotationText(language, demo, period));
    expect(told(clashingSets([sideBySide], 'free'))).toContain(why);
    expect(told(clashingSets([[wish({ kind: 'bell' })], sideBySide], 'free'))).toContain(why);
    expect(told(clashingSets([sideBySide], 'signal'))).not.toContain(why);
  },
);

it('what was done before now stands beside what is planned anew, once', () => {
  const before = demoPeriod();
  if (before.outcome.kind !== 'timetable') throw new Error('the demo has a timetable');
  const done = before.outcome.timetable.stays.filter(({ round }) => round === 1);
  const period = demoPeriod({ underWay: { now: seconds(640), done, changes: 3 } });
  const text = rotationText('en', demo, dayOf(period));
  expect(text).toContain('Planned anew at 9:10:40.');
  expect(text).toContain('Visits done, which stay done: 6.');
  expect(text).toContain('Places that differ from the plan before: 3.');
  const stays = JSON.parse(rotationJson(demo, dayOf(period))).classes[0].stays;
  expect(stays).toHaveLength(before.outcome.timetable.stays.length);
  expect(stays.filter((stay: { isDone: boolean }) => stay.isDone)).toHaveLength(6);
});

it('who waits is a line a group: what several have to do is said once, and a short wait with nothing is not told', () => {
  const texts = { en: 'Draw a pulley.', es: 'Dibujen una polea.' };
  const paper = { kind: 'paper', text: 'Draw a pulley.', texts } as const;
  const setup = { kind: 'setup', table: '1', setup: 'L4' } as const;
  const wait = (group: string, from: number, to: number, task: FilledWait['task']): FilledWait => ({
    group,
    from: seconds(from),
    to: seconds(to),
    task,
  });
  const outcome: Arrangement = {
    kind: 'timetable',
    shortage: null,
    timetable: { ...madeTimetable(demoPeriod()), stays: [] },
  };
  const period = demoPeriod({
    outcome,
    waits: [
      wait('A', 300, 600, paper),
      wait('A', 630, 900, paper),
      wait('B', 300, 600, paper),
      wait('B', 600, 779, null),
      wait('B', 900, 1200, setup),
      wait('C', 300, 479, null),
      wait('D', 300, 480, null),
    ],
  });
  expect(rotationText('en', demo, dayOf(period))).toContain(
    [
      'Who waits, and what there is to do:',
      '  Task 1: on paper ("Draw a pulley")',
      '  Group A: from 9:05 to 9:15 task 1',
      '  Group B: from 9:05 to 9:10 task 1; from 9:15 to 9:20 more to find, setup L4',
      '    at table 1',
      '  Group D: from 9:05 to 9:08 nothing is planned',
      '',
    ].join('\n'),
  );
});

it('terminal, page, CSV and JSON have the same visits at the same times', () => {
  const period = demoPeriod();
  const html = rotationPage('en', demo, dayOf(period));
  const { stays } = JSON.parse(rotationJson(demo, dayOf(period))).classes[0];
  const { data } = Papa.parse<Record<string, string>>(rotationCsv('en', demo, dayOf(period)), {
    header: true,
    skipEmptyLines: true,
  });
  const inCsv = data
    .filter(({ kind }) => kind === 'stay')
    .map(({ group, table, from, to }) => [group, table, from, to]);
  expect(inCsv).toHaveLength(42);
  expect(
    stays.map((stay: Record<string, string>) => [stay.group, stay.table, stay.fromClock, stay.toClock]),
  ).toEqual(inCsv);
  const [, description = ''] = /<desc[^>]*>([^<]*)</.exec(html) ?? [];
  for (const [group, table, from, to] of inCsv) {
    const line = new RegExp(`Group ${group}: [^.]*\\btable ${table} from ${from} to ${to}\\b`);
    expect(description).toMatch(line);
  }
});
