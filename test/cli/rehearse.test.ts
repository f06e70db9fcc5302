import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { runCommand } from '../command-line.ts';
import { exampleIn, scratchFolder } from './scratch-folder.ts';

interface RehearsalFigures {
  readonly groups: readonly string[];
  readonly mistakes: number;
  readonly readings: readonly { readonly group: string; readonly setup: string; readonly written: string }[];
  readonly planted?: readonly { readonly code: string; readonly readings: readonly unknown[] }[];
}

const folder = exampleIn(scratchFolder(), 'brackwater');
const at = (...args: string[]) => runCommand(['rehearse', ...args], { folder });

describe('handspike rehearse', () => {
  it('prints what the groups wrote and tells nothing; with --answers it tells all', () => {
    const charts = at('--seed', '3');
    const answers = at('--seed', '3', '--answers');
    expect([charts.code, answers.code]).toEqual([0, 0]);
    expect(charts.out).toContain('The answers: the same command with --answers.');
    expect(charts.out).not.toContain('What happened');
    expect(answers.out).toContain('What happened, and what to say');
    expect(answers.out.match(/^ {4}To the group: /gm)).toHaveLength(4);
  });

  it('writes a readings file that review reads whole', () => {
    const { out } = at('--groups', '5', '--mistakes', '2', '--csv');
    writeFileSync(join(folder, 'rehearsal.csv'), out);
    const reviewed = runCommand(['review', 'rehearsal.csv', '--json'], { folder });
    const { readings, refused } = JSON.parse(reviewed.out) as {
      readonly readings: readonly { readonly written: string }[];
      readonly refused: readonly unknown[];
    };
    expect(reviewed.code).toBe(0);
    expect(refused).toEqual([]);
    expect(readings).toHaveLength(out.trim().split('\n').length - 1);
  });

  it('has as JSON what was planted only where the answers are asked for', () => {
    const charts = JSON.parse(at('--groups', '4', '--json').out) as RehearsalFigures;
    const answers = JSON.parse(at('--groups', '4', '--json', '--answers').out) as RehearsalFigures;
    expect(charts.groups).toEqual(['A', 'B', 'C', 'D']);
    expect(charts.planted).toBeUndefined();
    expect(answers.planted).toHaveLength(4);
    expect(answers.readings).toEqual(charts.readings);
  });

  it('prints a sheet of two pages', () => {
    const { code, out } = at('--to', 'paper', '--paper', 'letter', '--language', 'es');
    expect([code, out.trim()]).toEqual([0, join('paper', 'rehearsal.pdf')]);
    expect(
      readFileSync(join(folder, 'paper', 'rehearsal.pdf'))
        .subarray(0, 5)
        .toString(),
    ).toBe('%PDF-');
  });

  it.each([
    [['--groups', '0'], '--groups is a whole number from 1 to 12, not "0"'],
    [['--mistakes', 'many'], '--mistakes is a whole number from 0 to 20, not "many"'],
    [['--csv', '--json'], '--csv is what the groups wrote and nothing else'],
    [['--paper', 'a5'], 'the paper is a4 or letter'],
  ])('%s is refused with what can be written instead', (args, says) => {
    const { code, err } = at(...args);
    expect(code).toBe(2);
    expect(err).toContain(says);
  });
});
