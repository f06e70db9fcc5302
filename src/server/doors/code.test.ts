import { describe, expect, it } from 'vitest';
import { newCode, readCode, spacedCode } from './code.ts';

describe('a code', () => {
  it('is of letters without vowels, every one of sixteen as likely', () => {
    const all = newCode(() => Uint8Array.from({ length: 256 }, (_, n) => n), 256);
    const counts = new Map<string, number>();
    for (const letter of all) counts.set(letter, (counts.get(letter) ?? 0) + 1);
    expect(counts.size).toBe(16);
    expect([...counts.values()]).toEqual(Array.from({ length: 16 }, () => 16));
    expect(all).not.toMatch(/[AEIOUY01ILSZB]/);
  });

  it('is read however it was typed', () => {
    expect([' cdf ghj', 'CDF-GHJ', 'cdf.ghj\n'].map(readCode)).toEqual(['CDFGHJ', 'CDFGHJ', 'CDFGHJ']);
  });

  it('is printed in threes, the long one in fives', () => {
    expect([spacedCode('CDFGHJ'), spacedCode('CDFGHJKMNP')]).toEqual(['CDF GHJ', 'CDFGH JKMNP']);
  });
});
