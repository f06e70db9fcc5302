import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import {
  asGroup,
  demoAtDesk,
  ofGroup,
  reading,
  shownAfter,
  storedEntries,
} from '../../../test/server/demo-desk.ts';
import { review } from '../../core/review.ts';
import type { TalkPart } from '../../documents/discussion/talk-page.ts';
import { toldTalk } from '../../documents/discussion/talk-told.ts';
import type { Happening, Seat, WallNow } from '../../store/entry.ts';
import { readingsCsv } from '../visits/visit-export.ts';

const demo = demoAtDesk();
const teacher: Seat = { kind: 'teacher' };
type Row = readonly [number, Seat, Happening];
const written: readonly Row[] = readFileSync(join('examples', 'brackwater', 'readings.csv'), 'utf8')
  .trim()
  .split('\n')
  .slice(1)
  .map((line, n) => {
    const [group = '', setup = '', number = ''] = line.split(',');
    return [10 + n, ofGroup(group), reading(group, setup, number)];
  });
const wall = (shows: WallNow | null): Happening => ({ kind: 'wall', shows });
const after = (...more: readonly Row[]) => shownAfter(demo, storedEntries([...written, ...more]));

const talkIn = (language: 'en' | 'es') => {
  const text = readingsCsv(storedEntries(written));
  const found = review(demo.prepared, { name: 'class.csv', text });
  return toldTalk(language, demo.prepared, found, { of: 'class', names: false }).talk;
};
const wordsOf = (html: string): string =>
  html
    .replace(/<[^>]*>/g, ' ')
    .replaceAll('&quot;', '"')
    .replaceAll('&amp;', '&')
    .replace(/\s+/g, ' ');
const textsOf = (parts: readonly TalkPart[]): readonly string[] =>
  parts.flatMap((part) =>
    part.part === 'line' ? [part.text] : part.part === 'table' ? part.rows.flat() : [part.caption],
  );

test('a tablet shows nothing of the talk until the teacher says so, and nothing after it is over', () => {
  const [page] = talkIn('en').pages;
  const shows = { question: page?.kind ?? '', isOpen: false, names: false };
  expect('wall' in asGroup(after(), 'A')).toBe(false);
  expect(asGroup(after([900, teacher, wall(shows)]), 'A').wall?.ask).toBe(page?.ask);
  const over = after([900, teacher, wall(shows)], [901, teacher, wall(null)]);
  expect('wall' in asGroup(over, 'A')).toBe(false);
});

test.each([
  ['A', 'en'],
  ['F', 'es'],
] as const)(
  'group %s reads every question and answer of the talk in its own language, %s',
  (group, language) => {
    const { pages } = talkIn(language);
    expect(pages.length).toBeGreaterThan(3);
    for (const { kind, ask, task, shown, answer } of pages) {
      const part = (isOpen: boolean) =>
        asGroup(after([900, teacher, wall({ question: kind, isOpen, names: false })]), group).wall;
      const [covered, open] = [part(false), part(true)];
      expect([covered?.ask, open?.ask]).toEqual([ask, ask]);
      const [before, all] = [wordsOf(covered?.html ?? ''), wordsOf(open?.html ?? '')];
      for (const text of [task, ...textsOf(shown)])
        expect(before).toContain(text.replace(/\s+/g, ' ').trim());
      for (const text of textsOf(answer)) expect(all).toContain(text.replace(/\s+/g, ' ').trim());
      expect(open?.html).not.toMatch(/<style|\sstyle=|<script/);
    }
  },
);

test('a question that the talk has not shows nothing, and the page says that the tablets follow', () => {
  const shown = after([900, teacher, wall({ question: 'no such', isOpen: false, names: false })]);
  expect('wall' in asGroup(shown, 'A')).toBe(false);
  expect(shown.get('teacher')).toMatchObject({ visit: { isOnWall: true } });
});
