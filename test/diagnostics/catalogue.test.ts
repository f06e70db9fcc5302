import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { fileCodes } from '../../src/core/files/file-code.ts';
import type { Fault } from '../../src/core/quantities/read-fault.ts';
import { benchDiagnostics } from '../../src/documents/sentences/en/bench-diagnostics.ts';
import { dayDiagnostics } from '../../src/documents/sentences/en/day-diagnostics.ts';
import { diagnosticSentences } from '../../src/documents/sentences/en/diagnostics.ts';
import { fileDiagnostics } from '../../src/documents/sentences/en/file-diagnostics.ts';
import { quantityDiagnostics } from '../../src/documents/sentences/en/quantity-diagnostics.ts';
import { syntaxDiagnostics } from '../../src/documents/sentences/en/syntax-diagnostics.ts';
import { visitDiagnostics } from '../../src/documents/sentences/en/visit-diagnostics.ts';
import { findingsOf } from './messages.ts';

/** The compiler holds this list to the faults that the reader of quantities can give. */
const quantityFaults: Readonly<Record<Fault, true>> = {
  empty: true,
  'not-a-number': true,
  'no-unit': true,
  'unknown-unit': true,
  'wrong-dimension': true,
  'mass-for-force': true,
  'force-for-mass': true,
  'decimal-comma': true,
  'decimal-point': true,
  'empty-range': true,
  'hyphen-range': true,
  'negative-uncertainty': true,
  'ambiguous-percent': true,
  'left-over': true,
  'too-large': true,
};

/** What no file can bring about, and why. */
const notFromFiles: Readonly<Record<string, string>> = {
  'compound.too-few-stages': 'the check of the activity refuses it first, as stages-wanted',
  'compound.unknown-stage': 'the check of the activity refuses it first, as unknown-machine',
};

const emitted = new Set(
  readdirSync(new URL('./spoilt/', import.meta.url))
    .filter((name) => name.endsWith('.yaml'))
    .flatMap((name) => findingsOf(name).diagnostics.map((each) => each.code)),
);

/** Every text of core that could be a code, as it stands in the source. */
const core = new URL('../../src/core/', import.meta.url);
const literals = new Set(
  readdirSync(core, { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.ts$/.test(name) && !/\.(test|en)\.ts$/.test(name))
    .flatMap((name) => [...readFileSync(new URL(name, core), 'utf8').matchAll(/'([a-z][a-z.-]*)'/g)])
    .map((found) => found[1] ?? ''),
);
/** Codes that the source puts together from pieces: `lever.${what}-on-the-fulcrum`. */
const pieced = /^(lever\.(load|pull)-on-the-fulcrum|windlass\.no-(wheel|crank))$/;
const isInSource = (code: string): boolean =>
  literals.has(code) || literals.has(code.slice(code.indexOf('.') + 1)) || pieced.test(code);

describe('the catalogue of messages', () => {
  it('has an entry for every code of the files, and no entry that no code asks for', () => {
    const codes = [...fileCodes, ...Object.keys(quantityFaults).map((fault) => `quantity.${fault}`)];
    const entries = {
      ...syntaxDiagnostics,
      ...quantityDiagnostics,
      ...fileDiagnostics,
      ...visitDiagnostics,
      ...dayDiagnostics,
      ...benchDiagnostics,
    };
    expect(Object.keys(entries).sort()).toEqual(codes.sort());
  });

  it('has an entry for every code that core writes down in one piece', () => {
    const written = readdirSync(core, { recursive: true, encoding: 'utf8' })
      .filter((name) => /^(machines|parts|setups)\/.*\.ts$/.test(name.replaceAll('\\', '/')))
      .filter((name) => !/(\.test|\.en|mistakes)\.ts$/.test(name))
      .flatMap((name) => [...readFileSync(new URL(name, core), 'utf8').matchAll(/\bcode: '([a-z.-]+)'/g)])
      .map((found) => found[1] ?? '');
    expect(written.length).toBeGreaterThan(20);
    // What advice gains and costs is said in sentences of its own, held by the test of all sentences.
    const isDiagnostic = (code: string): boolean => !code.startsWith('advice.');
    expect(written.filter(isDiagnostic).filter((code) => !Object.hasOwn(diagnosticSentences, code))).toEqual(
      [],
    );
  });

  it('has no entry that the source does not write', () => {
    expect(Object.keys(diagnosticSentences).filter((code) => !isInSource(code))).toEqual([]);
  });

  it('is told in full by the spoilt files: each entry by one of them at least', () => {
    const untold = Object.keys(diagnosticSentences).filter((code) => !emitted.has(code));
    expect(untold.sort()).toEqual(Object.keys(notFromFiles).sort());
  });

  it.each(Object.entries(diagnosticSentences))(
    'says what, where, why and what to do about %s',
    (_, entry) => {
      for (const text of [entry.what, entry.here, entry.why, entry.help]) expect(text.trim()).not.toBe('');
      expect(entry.what).not.toMatch(/[.!]$/);
      expect(entry.help).not.toMatch(/manual|documentation|see above/i);
    },
  );
});
