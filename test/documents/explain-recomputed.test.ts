import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { runCommand } from '../command-line.ts';

/**
 * Reads what `explain` printed, and nothing else, and reckons every line again from the numbers that
 * stand in it. Two roundings to six figures meet in a line, so a difference of some units of the
 * sixth figure is all that may remain; where numbers cancel, of the largest number in the line.
 */
const examples = join(import.meta.dirname, '../../examples');
const EQUATION = /^ {6}(\S+) = (.+?) {3}\[(.+)\]$/;
/** Contribution with its unit, share, c and u with theirs. */
const DOUBT = /^ +([\d.e-]+) \S+ +[\d.]+ % +(-?[\d.e-]+)(?: \S+)? +([\d.e-]+)/gm;
const SIX_FIGURES = 5e-5;

const visits = readdirSync(examples, { recursive: true, encoding: 'utf8' }).filter((name) =>
  name.endsWith('.visit.yaml'),
);

describe('explain, recomputed from its own print', () => {
  it.each(visits)('every line of every setup of %s follows from the numbers in it', (visit) => {
    const { code, out } = runCommand(['explain', '--in', join(examples, visit)]);
    expect(code).toBe(0);
    const lines = out.split('\n').filter((line) => EQUATION.test(line));
    expect(lines.length).toBeGreaterThan(20);
    for (const line of lines) {
      const { got, printed, largest, names } = recomputed(line);
      expect(names, `numbers stand in for every name in: ${line}`).toEqual([]);
      expect(Math.abs(got - printed), `${line}\n  gives ${got}`).toBeLessThanOrEqual(
        SIX_FIGURES * Math.max(Math.abs(printed), largest * 0.2, 1e-9),
      );
    }
  });

  it.each(visits)('every doubt of %s is |c| x u of its own line, and all together make u', (visit) => {
    const { out } = runCommand(['explain', '--in', join(examples, visit)]);
    const setups = out.split(/^Setup /m).slice(1);
    expect(setups.length).toBeGreaterThan(1);
    for (const text of setups) {
      const rows = [...text.matchAll(DOUBT)].map(([, product, c, u]) => ({
        product: Number(product),
        worked: Math.abs(Number(c)) * Number(u),
      }));
      for (const { product, worked } of rows)
        expect(Math.abs(worked - product)).toBeLessThanOrEqual(2e-5 * product);
      // Graduations of grams print grams, the working newtons: the roots are compared where units agree.
      const combined = / u = .* = ([\d.e-]+) N {3}/.exec(text);
      if (rows.length === 0 || combined === null || !/^ +[\d.e-]+ N +\d/m.test(text)) continue;
      const root = Math.sqrt(rows.reduce((sum, each) => sum + each.product ** 2, 0));
      expect(Math.abs(root - Number(combined[1]))).toBeLessThanOrEqual(2e-5 * root);
    }
  });

  it('every line of an equation names its source', () => {
    const { out } = runCommand(['explain', '--in', join(examples, 'brackwater/harbour-day.visit.yaml')]);
    const equations = out.split('\n').filter((line) => /^ {6}\S+ = /.test(line));
    expect(equations.filter((line) => !EQUATION.test(line))).toEqual([]);
  });
});

/** The last but one step of a line is arithmetic in numbers; the last is the result. */
function recomputed(line: string) {
  const [, , rest = ''] = EQUATION.exec(line) ?? [];
  const steps = rest.split(' = ');
  const printed = Number(/^(-?[\d.]+(?:e[+-]?\d+)?)/.exec(steps.at(-1) ?? '')?.[1]);
  const arithmetic = steps.at(-2) ?? steps.at(-1) ?? '';
  const numbers = [...arithmetic.matchAll(/\d+(?:\.\d+)?(?:e[+-]?\d+)?/g)].map(([text]) => Number(text));
  const names = [...arithmetic.matchAll(/[A-Za-z_][A-Za-z_0-9]*/g)]
    .map(([name]) => name)
    .filter((name) => !(name in functions) && name !== 'pi' && !/^e\d*$/.test(name));
  return {
    got: steps.length < 2 ? printed : evaluate(arithmetic),
    printed,
    largest: Math.max(0, ...numbers.filter((n) => n < 1e6)),
    names: steps.length < 2 ? [] : names,
  };
}

const functions: Readonly<Record<string, (...values: number[]) => number>> = {
  sin: Math.sin,
  cos: Math.cos,
  tan: Math.tan,
  asin: Math.asin,
  acos: Math.acos,
  atan: Math.atan,
  sqrt: Math.sqrt,
  exp: Math.exp,
  ln: Math.log,
  abs: Math.abs,
  min: Math.min,
  max: Math.max,
  hypot: Math.hypot,
  // Rounding is the one step that six figures can turn over: a hair inside a mark counts as on it.
  floor: (x) => Math.floor(x + 1e-4),
  ceil: (x) => Math.ceil(x - 1e-4),
};

/** Plain arithmetic, by the language's own grammar, with ^ for powers. */
function evaluate(arithmetic: string): number {
  const names = Object.keys(functions);
  const body = arithmetic.replaceAll('^', '**').replaceAll(/(?<![\w.])pi\b/g, 'Math.PI');
  return Function(
    ...names,
    `"use strict"; return (${body});`,
  )(...names.map((name) => functions[name])) as number;
}
