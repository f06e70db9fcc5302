import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { record, recordNotRun } from './record.ts';

/** A case of a reference file: inputs and figures with their units, as the file has them. */
export interface PublishedCase {
  readonly id: string;
  readonly kind: string;
  readonly gist: string;
  readonly basis: string;
  readonly source: { readonly title: string; readonly section?: string; readonly year?: string };
  readonly source_answer_disagrees?: true;
  readonly inputs: Readonly<Record<string, { readonly value: number; readonly unit: string }>>;
  readonly expected: Readonly<Record<string, PublishedFigure>>;
}

export interface PublishedFigure {
  readonly value: number | boolean;
  readonly unit: string;
  readonly tol_abs?: number;
  readonly recomputed?: number;
  readonly source_disagrees?: true;
  readonly tol_reason?: string;
}

/** The laws' answers to a case, in SI, by the names of its figures. */
export type Answer = (published: PublishedCase) => Readonly<Record<string, number | boolean>>;

/** The cases of one topic, in the order of the file. */
export const casesOf = (topic: string): readonly PublishedCase[] =>
  (
    JSON.parse(readFileSync(new URL(`../reference/${topic}.json`, import.meta.url), 'utf8')) as {
      readonly cases: readonly PublishedCase[];
    }
  ).cases;

/** One of each unit in SI; written apart from the program's own table, as a second opinion. */
const SI: Readonly<Record<string, number>> = {
  '1': 1,
  '%': 0.01,
  deg: Math.PI / 180,
  rad: 1,
  m: 1,
  cm: 0.01,
  mm: 0.001,
  in: 0.0254,
  ft: 0.3048,
  '1/in': 1 / 0.0254,
  N: 1,
  kN: 1000,
  gf: 0.00980665,
  kgf: 9.80665,
  lbf: 4.4482216152605,
  'lbf/in': 4.4482216152605 / 0.0254,
  'lbf*in': 4.4482216152605 * 0.0254,
  'lbf*ft': 4.4482216152605 * 0.3048,
  'gf*cm': 0.00980665 * 0.01,
  'N*m': 1,
  'N*mm': 0.001,
  kg: 1,
  'long ton': 2240 * 0.45359237,
  g: 0.001,
  'm/s': 1,
  'ft/s': 0.3048,
  'm/s^2': 1,
  'ft/s^2': 0.3048,
  'mm/min': 0.001 / 60,
  kW: 1000,
  J: 1,
  'ft*lbf': 0.3048 * 4.4482216152605,
  'N/m': 1,
  s: 1,
  // As a force; cases in tons ask for shares of a load, so it cancels.
  ton: 2240 * 4.4482216152605,
  'short ton': 2000 * 0.45359237,
  hp: 550 * 0.3048 * 4.4482216152605,
  'mi/h': 1609.344 / 3600,
};

export function siOf(unit: string): number {
  const factor = SI[unit];
  if (factor === undefined) throw new Error(`no SI factor for the unit ${unit}`);
  return factor;
}

/** Inputs of a case in SI; a missing one is a fault of the adapter and says so. */
export function inputsOf(published: PublishedCase) {
  return (name: string, otherwise?: number): number => {
    const input = published.inputs[name];
    if (input !== undefined) return input.value * siOf(input.unit);
    if (otherwise !== undefined) return otherwise;
    throw new Error(`${published.id} has no input ${name}`);
  };
}

/**
 * Runs every case of a topic on the laws, by kind, and holds the file to it: each case is run or
 * listed (by id or kind) with its reason, and each figure of a run case is answered or listed as
 * `id.figure`.
 */
export function runTopic(
  topic: string,
  answers: Readonly<Record<string, Answer>>,
  notRun: Readonly<Record<string, string>>,
): void {
  const cases = casesOf(topic);
  const reasonFor = (each: PublishedCase): string | undefined => notRun[each.id] ?? notRun[each.kind];
  const run = cases.filter((each) => reasonFor(each) === undefined);

  describe(`published cases of ${topic}`, () => {
    it('are each run, or listed with their reason', () => {
      expect(run.filter((each) => answers[each.kind] === undefined).map((each) => each.id)).toEqual([]);
      const known = new Set(cases.flatMap((each) => [each.id, each.kind]));
      const figures = new Set(
        run.flatMap((each) => Object.keys(each.expected).map((name) => `${each.id}.${name}`)),
      );
      for (const [listed, reason] of Object.entries(notRun)) {
        expect(known.has(listed) || figures.has(listed), `${listed} is listed but not in the file`).toBe(
          true,
        );
        expect(reason.length).toBeGreaterThan(10);
      }
      for (const each of cases) {
        const reason = reasonFor(each);
        if (reason !== undefined) recordNotRun({ topic, id: each.id, gist: each.gist, reason });
      }
    });

    for (const published of run)
      it(`${published.id}: ${published.gist}`, () => {
        const got = answers[published.kind]?.(published) ?? {};
        for (const [name, figure] of Object.entries(published.expected)) {
          const reason = notRun[`${published.id}.${name}`];
          if (reason === undefined) compare(topic, published, name, figure, got[name]);
          else recordNotRun({ topic, id: `${published.id}.${name}`, gist: published.gist, reason });
        }
      });
  });
}

function compare(
  topic: string,
  published: PublishedCase,
  quantity: string,
  figure: PublishedFigure,
  got: number | boolean | undefined,
): void {
  const { title, section } = published.source;
  const disagrees = published.source_answer_disagrees || figure.source_disagrees;
  const wanted = disagrees && figure.recomputed !== undefined ? figure.recomputed : figure.value;
  const inUnit = typeof got === 'number' ? got / siOf(figure.unit) : got;
  record({
    topic,
    id: published.id,
    basis: basisOf(published, figure),
    source: section === undefined ? title : `${title}, ${section}`,
    quantity,
    expected: wanted,
    got: inUnit ?? 'no answer',
    unit: figure.unit,
    tolerance: figure.tol_abs ?? null,
  });
  if (typeof wanted === 'boolean') {
    expect(inUnit, quantity).toBe(wanted);
    return;
  }
  expect(inUnit, quantity).toBeTypeOf('number');
  expect(Math.abs((inUnit as number) - wanted), quantity).toBeLessThanOrEqual(figure.tol_abs ?? 0);
}

/** A published case may have figures that its source does not print: those are only recomputed. */
const basisOf = (published: PublishedCase, figure: PublishedFigure): string =>
  published.basis === 'published' && figure.tol_reason?.startsWith('source prints no usable answer')
    ? 'published inputs, recomputed answer'
    : published.basis;
