import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { runCommand } from '../command-line.ts';
import { exampleIn, scratchFolder } from './scratch-folder.ts';

interface Found {
  readonly setups: readonly { readonly setup: string; readonly leftOut: readonly object[] }[];
  readonly surprising: readonly object[];
}
interface DiscussionFigures {
  readonly of: string;
  readonly groups: number;
  readonly readings: number;
  readonly summary: Found;
  readonly questions: readonly { readonly kind: string; readonly found: unknown }[];
}

const folder = exampleIn(scratchFolder(), 'brackwater');
const at = (...args: string[]) => runCommand(args, { folder });
const figures = (...args: string[]) => JSON.parse(at('discuss', ...args, '--json').out) as DiscussionFigures;
/** A summary without what tells whose a reading is. */
const unnamed = (found: Found): unknown =>
  JSON.parse(JSON.stringify(found, (key, value) => (key === 'group' || key === 'line' ? undefined : value)));

describe('handspike discuss', () => {
  const reviewed = JSON.parse(at('review', '--json').out) as {
    readonly summary: Found;
    readonly readings: readonly unknown[];
  };

  it('has the figures of review to the digit, of the readings file that the visit names', () => {
    const found = figures();
    expect([found.of, found.readings]).toEqual(['class', reviewed.readings.length]);
    expect(reviewed.summary.setups.length).toBeGreaterThan(5);
    expect(figures('--name-groups').summary).toEqual(reviewed.summary);
    expect(found.summary).toEqual(unnamed(reviewed.summary));
  });

  it('names a group only where that is asked for: in JSON, in text and on the pages', () => {
    const named = /"group": |"groups": \[\s*"/;
    expect(at('discuss', '--json').out).not.toMatch(named);
    expect(at('discuss', '--json', '--name-groups').out).toMatch(named);
    expect(at('discuss').out).not.toMatch(/\bgroup [A-F]\b/i);
    expect(at('discuss', '--name-groups').out).toMatch(/\bgroup [A-F]\b/i);
  });

  it('talks of a class that never was by its seed, as review would of its file', () => {
    const asked = ['--groups', '5', '--mistakes', '3', '--seed', '8'];
    const rehearsed = figures(...asked, '--name-groups');
    writeFileSync(join(folder, 'made.csv'), at('rehearse', ...asked, '--csv').out);
    const { summary } = JSON.parse(at('review', 'made.csv', '--json').out) as { readonly summary: Found };
    expect([rehearsed.of, rehearsed.groups]).toEqual(['rehearsal', 5]);
    expect(rehearsed.summary).toEqual(summary);
    expect(figures('made.csv').of).toBe('class');
    expect(at('discuss', '--seed', '8').out).toContain('its numbers are made up');
  });

  it.each([
    ['en', 'Question 1 of', 'Ask back'],
    ['es', 'Pregunta 1 de', 'Devuelve la pregunta'],
  ])(
    'in %s, writes a page for the wall and one of notes, and the same questions to the terminal',
    (language, first, back) => {
      const { code, out } = at('discuss', '--to', 'talk', '--language', language);
      const names = ['talk-wall.html', 'talk-notes.html'].map((name) => join('talk', name));
      // One row of the example's readings belongs to no setup.
      expect([code, out.trim().split('\n')]).toEqual([1, names]);
      const [wall = '', notes = ''] = names.map((name) => readFileSync(join(folder, name), 'utf8'));
      const text = at('discuss', '--language', language).out;
      for (const each of [wall, notes, text]) expect(each).toContain(first);
      for (const each of [notes, text]) expect(each).toContain(back);
      expect(wall).not.toContain(back);
    },
  );

  it('tells that rows of no setup are left out, and ends with 1', () => {
    writeFileSync(join(folder, 'odd.csv'), 'group,setup,reading,note\nA,L1,2.0,\nA,Q9,2.0,\n');
    const { code, err } = at('discuss', 'odd.csv');
    expect(code).toBe(1);
    expect(err).toContain('1 row belongs to no setup');
  });

  it.each([
    [['--json', '--to', 'talk'], '--json and --to are two outlets'],
    [['readings.csv', '--seed', '2'], 'a class that never was has no readings file'],
    [['--seed', 'x'], '--seed is a whole number from 0 to'],
    [['boathouse.kit.yaml', 'harbour-day.activity.yaml'], 'no readings: name a CSV file'],
  ])('%s is refused with what can be written instead', (args, says) => {
    const { code, err } = at('discuss', ...args);
    expect(code).toBe(2);
    expect(err).toContain(says);
  });
});
