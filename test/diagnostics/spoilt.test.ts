import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { findingsOf } from './messages.ts';

const names = readdirSync(new URL('./spoilt/', import.meta.url)).filter((name) => name.endsWith('.yaml'));
const isSound = (name: string) => name.startsWith('sound');

describe('spoilt files', () => {
  it.each(names.filter(isSound))('says nothing about %s, which stands beside the spoilt ones', (name) => {
    expect(findingsOf(name).diagnostics).toEqual([]);
  });

  it.each(names.filter((name) => !isSound(name)))('says about %s what its golden message says', (name) => {
    const golden = new URL(`./${name.replace('.yaml', '')}.golden.txt`, import.meta.url);
    const { text } = findingsOf(name);
    if (process.env.UPDATE_GOLDEN === '1') writeFileSync(golden, text);
    expect(text).toBe(readFileSync(golden, 'utf8'));
  });
});
