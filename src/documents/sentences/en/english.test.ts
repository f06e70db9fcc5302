import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { diagnosticsEn, machines } from '../../../core/machines/list.ts';
import { cautionRows } from '../../../core/sources/cautions.ts';
import { vocabulary } from '../../../core/words.ts';
import { english } from './english.ts';

const has = (key: string): boolean => Object.hasOwn(english.sentences, key);
const missing = (keys: Iterable<string>): readonly string[] => [...new Set(keys)].filter((key) => !has(key));

/** Source text without comments, of every file of a folder that is neither test nor sentences. */
function sources(folder: string): readonly string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts') && !/\.(test|en|es)\.ts$/.test(name))
    .map((name) => readFileSync(join(folder, name), 'utf8').replace(/\/\*[\s\S]*?\*\/|^\s*\/\/.*$/gm, ''));
}

const literals = (pattern: RegExp): readonly string[] =>
  sources('src/core').flatMap((text) => [...text.matchAll(pattern)].map((match) => match[1] ?? ''));

test('every machine has its name and what it is about', () => {
  expect(missing(machines.flatMap(({ name }) => [`machine.${name}`, `${name}.about`]))).toEqual([]);
});

test('every field and part of the three files has its meaning', () => {
  const meanings = literals(/meaning: '([^']+)'/g);
  expect(meanings.length).toBeGreaterThan(60);
  expect(missing(meanings)).toEqual([]);
  expect(Object.keys(vocabulary).length).toBeGreaterThan(0);
});

test('every reason why something is not defined has its words', () => {
  const reasons = literals(/notDefined\(\s*'([^']+)'/g);
  expect(reasons.length).toBeGreaterThan(10);
  expect(missing(reasons)).toEqual([]);
});

test('every line of working, cause of work, step, difference and drawing label has its words', () => {
  const keys = literals(/\b(?:what|cause|key|heading): '([a-z][a-z-]*(?:\.[a-z-]+)+)'/g);
  expect(keys.length).toBeGreaterThan(80);
  expect(missing(keys)).toEqual([]);
});

test('every dotted key that core mentions is a sentence or a diagnostic', () => {
  const codes = new Set(literals(/code: '([^']+)'/g));
  const diagnostics = readdirSync('src/documents/sentences/en')
    .filter((name) => name.endsWith('diagnostics.ts'))
    .flatMap((name) =>
      [
        ...readFileSync(join('src/documents/sentences/en', name), 'utf8').matchAll(
          /^ {2}'?([a-z.-]+)'?: \{/gm,
        ),
      ].map((match) => match[1] ?? ''),
    );
  const known = new Set([...codes, ...diagnostics, ...Object.keys(diagnosticsEn)]);
  const mentioned = literals(/'([a-z][a-z-]*(?:\.[a-z][a-z-]+)+)'/g).filter(
    (key) => !known.has(key) && !/\.(yaml|csv|json)$/.test(key),
  );
  expect(missing(mentioned)).toEqual([]);
});

test('every usual mistake is named', () => {
  const named = machines.flatMap((machine) =>
    machine.mistakes.map(({ code }) => code.replace('.', '.mistake.')),
  );
  expect(named.length).toBeGreaterThan(10);
  expect(missing(named)).toEqual([]);
});

test('every sourced caution has its sentence', () => {
  expect(missing(cautionRows.map(({ key }) => key))).toEqual([]);
});
