import { readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { setupNamed } from '../../src/core/review.ts';
import { mistakesText } from '../../src/documents/text/mistakes-text.ts';
import { demoPrepared } from './demo-prepared.ts';

const prepared = demoPrepared();
const listOf = (language: 'en' | 'es', mark: string): string => {
  const at = setupNamed(prepared, mark);
  if (at === null) throw new Error(`no setup ${mark}`);
  return mistakesText(language, at);
};

describe('the list of usual mistakes', () => {
  it.each([
    ['en', ['L1', 'S1', 'T2', 'C1', 'C3', 'P1', 'P2', 'D1', 'G1']],
    ['es', ['L1', 'S1', 'P1']],
  ] as const)('of the demo is as it was looked at, in %s', (language, marks) => {
    const text = marks.map((mark) => listOf(language, mark)).join('\n');
    const golden = new URL(`./mistakes.${language}.golden.txt`, import.meta.url);
    if (process.env.UPDATE_GOLDEN === '1') writeFileSync(golden, text);
    expect(text).toBe(readFileSync(golden, 'utf8'));
  });

  it('has a line for each cause, and each thing to try once', () => {
    const text = listOf('en', 'S1');
    expect(text.match(/another weight hung there/g)?.length).toBeGreaterThan(3);
    expect(text.match(/Read the mark on the load/g)?.length).toBe(1);
  });
});
