import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { hasSentence } from '../../src/documents/sentences/sentence.ts';

/** Outcomes without a figure, as trouble and as reason why there is no chance. */
const OUTCOMES = ['on its stop', 'off the scale', 'moves under the scale', 'scale on the other side'];

/** Keys in quotes or at the start of a template, as the code of the advice writes them. */
const written = [
  'advise',
  'setups/alternative',
  'setups/trouble',
  'setups/chance-to-see',
  'setups/best-figure',
]
  .map((name) => readFileSync(`src/core/${name}.ts`, 'utf8').replace(/\/\*[\s\S]*?\*\//g, ''))
  .flatMap((text) =>
    [...text.matchAll(/'((?:advice|chance)\.[a-z -]+(?:\.[a-z -]+)*)'/g)].map(([, key = '']) => key),
  );

describe('the words of advice', () => {
  it.each(['en', 'es'] as const)('are there in %s for whatever it may say', (language) => {
    const troubles = ['not-defined', 'few-graduations', 'near-the-end', 'near-its-weight', 'hand-limit'];
    const keys = [
      ...written,
      ...[...OUTCOMES, ...troubles].map((kind) => `advice.trouble.${kind}`),
      ...[...OUTCOMES, 'no figure', 'does not come back', 'felt'].map((kind) => `chance.${kind}`),
      ...['works', 'clear', 'order', 'order.now', 'ratio', 'ratio.now'].map((kind) => `advice.gain.${kind}`),
      ...['change', 'changes'].map((kind) => `advice.cost.${kind}`),
    ];
    expect(written.length).toBeGreaterThan(12);
    expect(keys.filter((key) => !hasSentence(language, key))).toEqual([]);
  });
});
