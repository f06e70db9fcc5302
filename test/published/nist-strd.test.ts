import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { leastSquares } from '../../src/core/uncertainty/least-squares.ts';
import type { Matrix } from '../../src/core/uncertainty/matrix.ts';
import { nonlinearFit } from '../../src/core/uncertainty/nonlinear-fit.ts';
import { repeatsOf, serialCorrelation } from '../../src/core/uncertainty/repeats.ts';
import { varianceAnalysis } from '../../src/core/uncertainty/variance-analysis.ts';
import { record } from './record.ts';

const TOPIC = 'nist-strd';

interface Certified {
  readonly value: number;
}
interface StrdCase {
  readonly id: string;
  readonly kind: 'univariate' | 'linear' | 'anova' | 'nonlinear';
  readonly basis: string;
  readonly source: { readonly title: string; readonly section: string };
  readonly inputs: {
    readonly y: readonly number[];
    readonly rows: Matrix;
    readonly start1: readonly number[];
    readonly start2: readonly number[];
    readonly groups: Readonly<Record<string, readonly number[]>>;
  };
  readonly expected: {
    readonly mean: Certified;
    readonly sd_n_minus_1: Certified;
    readonly autocorrelation_lag1: Certified;
    readonly parameters: readonly { readonly name: string; readonly estimate: number; readonly sd: number }[];
    readonly residual_sd: Certified | number;
    readonly residual_ss: Certified;
    readonly r_squared: Certified | number;
    readonly F: Certified;
    readonly between: { readonly df: number; readonly ss: number };
    readonly within: { readonly df: number; readonly ss: number };
    readonly anova: { readonly residual_df: number; readonly residual_ss: number };
  };
}

const { cases } = JSON.parse(
  readFileSync(new URL(`../reference/${TOPIC}.json`, import.meta.url), 'utf8'),
) as { readonly cases: readonly StrdCase[] };
const ofKind = (kind: StrdCase['kind']): readonly StrdCase[] => cases.filter((each) => each.kind === kind);
const plain = (figure: Certified | number): number => (typeof figure === 'number' ? figure : figure.value);

/** Digits that agree: the log relative error; where 0 is certified, that of the figure itself. */
function digitsOf(got: number, certified: number): number {
  const error = certified === 0 ? Math.abs(got) : Math.abs((got - certified) / certified);
  return error === 0 ? 16 : -Math.log10(error);
}

/** Keeps the check with its tolerance in digits, and holds it to them. */
function check(each: StrdCase, quantity: string, got: number, certified: number, digits: number): void {
  const tolerance = (certified === 0 ? 1 : Math.abs(certified)) * 10 ** -digits;
  record({
    topic: TOPIC,
    id: each.id,
    basis: each.basis,
    source: `${each.source.title}, ${each.source.section}`,
    quantity,
    expected: certified,
    // What rounding leaves of a certified 0 is another figure on every machine: kept to the tolerance.
    got: certified === 0 ? Math.round(got / tolerance) * tolerance : got,
    unit: '1',
    tolerance,
  });
  expect(digitsOf(got, certified), `${quantity}: ${got} against ${certified}`).toBeGreaterThanOrEqual(digits);
}

describe('the statistical reference data sets of NIST', () => {
  it('are all here, and every kind has its test', () => {
    expect(
      ['univariate', 'linear', 'anova', 'nonlinear'].map((kind) => ofKind(kind as StrdCase['kind']).length),
    ).toEqual([8, 7, 5, 5]);
    expect(cases).toHaveLength(25);
  });

  it.each(ofKind('univariate'))('$id: mean, scatter and likeness of neighbours', (each) => {
    const { y } = each.inputs;
    const found = repeatsOf(y);
    check(each, 'mean', found?.mean ?? 0, each.expected.mean.value, 14);
    check(each, 'sd', found?.deviation ?? 0, each.expected.sd_n_minus_1.value, 8);
    check(each, 'autocorrelation', serialCorrelation(y) ?? 0, each.expected.autocorrelation_lag1.value, 8);
  });

  it.each(ofKind('linear'))('$id: a fit that is linear in its parameters', (each) => {
    const fit = leastSquares(
      factorsOf(each),
      each.inputs.rows.map(([y]) => y ?? 0),
    );
    if (fit === null) throw new Error('no fit');
    const digits = /noint|norris/.test(each.id)
      ? 9
      : /pontius/.test(each.id)
        ? 8
        : /longley/.test(each.id)
          ? 7
          : 6;
    for (const [k, { name, estimate, sd }] of each.expected.parameters.entries()) {
      check(each, name, fit.parameters[k] ?? 0, estimate, digits);
      check(each, `sd of ${name}`, Math.sqrt(fit.covariance[k]?.[k] ?? 0), sd, digits);
    }
    check(each, 'residual sd', fit.deviation, plain(each.expected.residual_sd), digits);
    expect(fit.freedom).toBe(each.expected.anova.residual_df);
  });

  it.each(ofKind('anova'))('$id: how much groups differ', (each) => {
    const found = varianceAnalysis(Object.values(each.inputs.groups));
    if (found === null) throw new Error('no analysis');
    const digits = /sirstv|smls01/.test(each.id)
      ? 12
      : /atmwtag/.test(each.id)
        ? 10
        : /smls04/.test(each.id)
          ? 8
          : 2;
    check(each, 'F', found.F ?? 0, each.expected.F.value, digits);
    check(each, 'R squared', found.rSquared ?? 0, plain(each.expected.r_squared), Math.min(digits, 8));
    check(
      each,
      'residual sd',
      Math.sqrt(found.within.mean),
      plain(each.expected.residual_sd),
      Math.min(digits, 8),
    );
    expect([found.between.freedom, found.within.freedom]).toEqual([
      each.expected.between.df,
      each.expected.within.df,
    ]);
  });

  const starts = ofKind('nonlinear').flatMap((each) => [
    { id: each.id, each, from: 'start1' as const, digits: 4 },
    { id: each.id, each, from: 'start2' as const, digits: 6 },
  ]);
  it.each(starts)('$id: a law that bends, from $from', ({ each, from, digits }) => {
    const law = lawOf(each);
    const fit = nonlinearFit({
      residuals: (b) => each.inputs.rows.map(([y = 0, x = 0]) => y - law(b, x)),
      start: each.inputs[from],
    });
    if (fit === null) throw new Error('no fit');
    expect(fit.hasSettled).toBe(true);
    for (const [k, { name, estimate, sd }] of each.expected.parameters.entries()) {
      check(each, `${name} from ${from}`, fit.parameters[k] ?? 0, estimate, digits);
      check(each, `sd of ${name} from ${from}`, Math.sqrt(fit.covariance[k]?.[k] ?? 0), sd, 4);
    }
    check(each, `sum of squares from ${from}`, fit.sumOfSquares, each.expected.residual_ss.value, digits);
  });
});

/** The factors of the parameters: what the model of the case says of its columns. */
function factorsOf({ id, inputs }: StrdCase): Matrix {
  const xs = inputs.rows.map(([, ...rest]) => rest);
  if (id.includes('noint')) return xs;
  const powers = id.includes('wampler') ? 5 : id.includes('pontius') ? 2 : 1;
  return xs.map((row) => [
    1,
    ...(powers === 1 ? row : Array.from({ length: powers }, (_, n) => (row[0] ?? 0) ** (n + 1))),
  ]);
}

type Law = (b: readonly number[], x: number) => number;

function lawOf({ id }: StrdCase): Law {
  switch (id.replace('strd-nonlinear-', '')) {
    case 'misra1a':
    case 'boxbod':
      return ([b1 = 0, b2 = 0], x) => b1 * (1 - Math.exp(-b2 * x));
    case 'danwood':
      return ([b1 = 0, b2 = 0], x) => b1 * x ** b2;
    case 'mgh09':
      return ([b1 = 0, b2 = 0, b3 = 0, b4 = 0], x) => (b1 * (x * x + x * b2)) / (x * x + x * b3 + b4);
    case 'rat43':
      return ([b1 = 0, b2 = 0, b3 = 0, b4 = 0], x) => b1 / (1 + Math.exp(b2 - b3 * x)) ** (1 / b4);
    default:
      throw new Error(`no law for ${id}`);
  }
}
