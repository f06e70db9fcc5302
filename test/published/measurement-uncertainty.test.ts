import { describe, expect, it } from 'vitest';
import { asRead } from '../../src/core/setups/good-range.ts';
import {
  between,
  COVERAGE_95,
  covariance,
  exactly,
  type Measured,
  measured,
  plus,
  standardUncertainty,
  times,
} from '../../src/core/uncertainty/measured.ts';
import { type At, propagate } from '../../src/core/uncertainty/propagate.ts';
import { correlated, meanWithDoubt } from './correlated.ts';
import { nestedCases } from './nested-figures.ts';
import { record, recordNotRun } from './record.ts';
import { fitAnswers } from './uncertainty-by-fit.ts';
import { massInAir, trialAnswers } from './uncertainty-by-trials.ts';

type Figures = Readonly<Record<string, number>>;
type Law = (at: At) => number | null;

const normal = (id: string, value: number, u: number): Measured =>
  measured(value, { id, u, shape: 'normal', origin: 'stated' });
const evenly = (id: string, low: number, high: number): Measured => between(id, low, high, 'stated');

function through(law: Law, inputs: readonly Measured[]): Measured {
  const found = propagate(law, inputs);
  if (found === null) throw new Error('the law has no number');
  return found;
}

const uOf = standardUncertainty;
const interval = (name: string, y: Measured): Figures => ({
  [`${name}[0]`]: y.value - COVERAGE_95 * uOf(y),
  [`${name}[1]`]: y.value + COVERAGE_95 * uOf(y),
});
const shareOf = (y: Measured, id: string): number => {
  const part = y.parts.find((each) => each.unknown.id === id);
  return part === undefined ? 0 : Math.abs(part.slope) * part.unknown.u;
};

/** End gauge of 50 mm against its standard (JCGM 100, H.1, and JCGM 101, 9.5): lengths in nm. */
function endGauge(u: { readonly d0: number; readonly d1: number; readonly d2: number }) {
  const ls = normal('l_s', 50000623, 25);
  const d = [normal('d0', 215, u.d0), normal('d1', 0, u.d1), normal('d2', 0, u.d2)];
  const alpha = evenly('alpha_s', 9.5e-6, 13.5e-6);
  const dalpha = evenly('dalpha', -1e-6, 1e-6);
  const mean = normal('theta_bar', -0.1, 0.2);
  const swing = normal('Delta', 0, 0.5 / Math.SQRT2);
  const dtheta = evenly('dtheta', -0.05, 0.05);
  const law: Law = (at) =>
    at(ls) +
    d.reduce((sum, each) => sum + at(each), 0) -
    at(ls) * (at(dalpha) * (at(mean) + at(swing)) + at(alpha) * at(dtheta));
  return { d, length: through(law, [ls, ...d, alpha, dalpha, mean, swing, dtheta]) };
}

/** Comparison loss X1² + X2² at a point, its inputs correlated (JCGM 101, 9.4). */
function loss(x1: number, r: number): Figures {
  const [a, b] = correlated([x1, 0], [0.005, 0.005], [[1], [r, 1]]);
  if (a === undefined || b === undefined) throw new Error('two inputs');
  const y = through((at) => at(a) ** 2 + at(b) ** 2, [a, b]);
  return {
    'gum_first_order.y': y.value,
    'gum_first_order.u': uOf(y),
    ...interval('gum_first_order.interval95', y),
  };
}

const sumOf = (four: readonly Measured[]): Measured => plus(...four);

/** What the linear law says of each example that it can say, by the names of its figures. */
const linearAnswers: Readonly<Record<string, (inputs: Readonly<Record<string, unknown>>) => Figures>> = {
  'gum-H1-first-order': () => {
    const { d, length } = endGauge({ d0: 5.8, d1: 3.9, d2: 6.7 });
    return {
      y: length.value,
      uc: uOf(length),
      'components.l_s': shareOf(length, 'l_s'),
      'components.d0': shareOf(length, 'd0'),
      'components.d1': shareOf(length, 'd1'),
      'components.d2': shareOf(length, 'd2'),
      'components.d (combined)': uOf(plus(...d)),
      'components.dtheta': shareOf(length, 'dtheta'),
      'components.dalpha': shareOf(length, 'dalpha'),
      'components.alpha_s': shareOf(length, 'alpha_s'),
      'components.theta': Math.hypot(shareOf(length, 'theta_bar'), shareOf(length, 'Delta')),
    };
  },
  'gum-H2-RXZ': (inputs) => {
    const column = (name: string) => (inputs[name] as { readonly values: readonly number[] }).values;
    const [V, I, phi] = meanWithDoubt([column('V'), column('I').map((mA) => mA / 1000), column('phi')]);
    if (V === undefined || I === undefined || phi === undefined) throw new Error('three inputs');
    const R = through((at) => (at(V) / at(I)) * Math.cos(at(phi)), [V, I, phi]);
    const X = through((at) => (at(V) / at(I)) * Math.sin(at(phi)), [V, I, phi]);
    const Z = through((at) => at(V) / at(I), [V, I, phi]);
    const r = (a: Measured, b: Measured) => covariance(a, b) / (uOf(a) * uOf(b));
    return {
      'R.value': R.value,
      'R.u': uOf(R),
      'X.value': X.value,
      'X.u': uOf(X),
      'Z.value': Z.value,
      'Z.u': uOf(Z),
      'r(R,X)': r(R, X),
      'r(R,Z)': r(R, Z),
      'r(X,Z)': r(X, Z),
    };
  },
  'gum-4.3.7-rectangular': () => ({ u: uOf(evenly('alpha', 1.652e-5 - 4e-7, 1.652e-5 + 4e-7)) }),
  'gum-F2.2.1-resolution': () => {
    const u = uOf(asRead(exactly(0), { step: 1, unit: 'N', unitSi: 1 }, 0));
    return { u_over_dx: u, u_full: u };
  },
  'gum-5.2.2-ten-resistors': () => {
    const alike = times(normal('standard', 1000, 0.1), 10);
    const apart = plus(...Array.from({ length: 10 }, (_, n) => normal(`resistor ${n}`, 1000, 0.1)));
    return { u_series_r1: uOf(alike), u_series_r0: uOf(apart) };
  },
  's1-9.2.2-normal-sum': () => {
    const y = sumOf([1, 2, 3, 4].map((n) => normal(`x${n}`, 0, 1)));
    return { y: y.value, u: uOf(y), ...interval('interval95', y) };
  },
  's1-9.2.3-rectangular-sum': () => {
    const y = sumOf([1, 2, 3, 4].map((n) => evenly(`x${n}`, -Math.sqrt(3), Math.sqrt(3))));
    return { y: y.value, u: uOf(y), ...interval('gum_interval95', y) };
  },
  's1-9.3-mass-gum': () => {
    const [mR, dmR] = [normal('m_Rc', 100000, 0.05), normal('dm_Rc', 1.234, 0.02)];
    const [air, W, R] = [evenly('rho_a', 1.1, 1.3), evenly('rho_W', 7000, 9000), evenly('rho_R', 7950, 8050)];
    const y = through(
      (at) => (at(mR) + at(dmR)) * (1 + (at(air) - 1.2) * (1 / at(W) - 1 / at(R))) - 100000,
      [mR, dmR, air, W, R],
    );
    return { y: y.value, u_first_order: uOf(y), ...interval('interval95_first_order', y) };
  },
  's1-9.4-loss-x1=0-r=0': () => loss(0, 0),
  's1-9.4-loss-x1=0.05-r=0': () => loss(0.05, 0),
  's1-9.4-loss-x1=0.01-r=0.9': () => loss(0.01, 0.9),
  's1-9.5-gauge-block': () => {
    const { length } = endGauge({ d0: 6, d1: 4, d2: 7 });
    return { y: length.value - 50000000, u_gum: uOf(length) };
  },
  'npl-log-rectangular': () => {
    const x = evenly('x', 0.1, 1.1);
    const y = through((at) => Math.log(at(x)), [x]);
    return { 'gum.y': y.value, 'gum.u': uOf(y), 'gum.upper95': y.value + 1.96 * uOf(y) };
  },
  'tn1900-E3-viscometer': () => ({ 'gum.y': viscosity.value, 'gum.u': uOf(viscosity) }),
};

/** Viscosity of a solution from the fall of a ball (NIST TN 1900, E3). */
const viscosity = ((): Measured => {
  const [muC, tM, tC] = [normal('mu_c', 4.63, 0.0463), normal('t_m', 61, 6.1), normal('t_c', 36.6, 5.49)];
  const [rhoB, rhoM, rhoC] = [
    normal('rho_b', 2217, 0.5),
    normal('rho_m', 1180, 0.5),
    normal('rho_c', 810, 0.5),
  ];
  return through(
    (at) => (at(muC) * at(tM) * (at(rhoB) - at(rhoM))) / (at(tC) * (at(rhoB) - at(rhoC))),
    [muC, tM, tC, rhoB, rhoM, rhoC],
  );
})();

const SECOND_ORDER = 'there is no second-order law here: where the linear law does not hold, trials are used';
/** By id, or `id.figure`, or a group of figures `id.group`. */
const notRun: Readonly<Record<string, string>> = {
  'gum-H1-veff-U99.veff_of_d': 'the source takes u(d) rounded to 9.7 nm (25.6); unrounded figures give 25.4',
  'gum-H1-veff-U99.U':
    'the source multiplies by its u rounded to 32 nm (93 nm); unrounded figures give 92.48 nm, as recomputed',
  'gum-4.3.3-normal-quote':
    'files take ± as 19 of 20 only; three standard deviations and 99 percent are no input',
  's1-9.2.2-normal-sum.analytic_half_width': 'the house takes 1.96 for 19 of 20, three digits by definition',
  's1-9.2.3-rectangular-sum.analytic_half_width':
    'exact to more digits than trials give; interval95 is the same figure',
  's1-9.3-mass-gum.u_second_order': SECOND_ORDER,
  's1-9.3-mass-gum.interval95_second_order': SECOND_ORDER,
};

/** Everything that is said of an example: by the linear law, by fits and probabilities, by trials. */
const answersOf = (id: string): readonly ((inputs: Readonly<Record<string, unknown>>) => Figures)[] =>
  [linearAnswers[id], fitAnswers[id], trialAnswers[id]].filter((each) => each !== undefined);

const TOPIC = 'measurement-uncertainty';
const cases = nestedCases(TOPIC);
const reasonFor = (id: string, figure: string): string | undefined => {
  const full = `${id}.${figure}`;
  return (
    notRun[id] ?? Object.entries(notRun).find(([key]) => full.startsWith(key) && key.includes(`${id}.`))?.[1]
  );
};

describe('published examples of measurement uncertainty', () => {
  it('are each run, or listed with their reason', () => {
    expect(cases).toHaveLength(25);
    for (const { id, gist, figures } of cases) {
      const reason = notRun[id];
      expect(reason === undefined, `${id} is either run or listed`).toBe(answersOf(id).length > 0);
      if (reason !== undefined) recordNotRun({ topic: TOPIC, id, gist, reason });
      expect(figures.length, id).toBeGreaterThan(0);
    }
    const all = cases.flatMap(({ id, figures }) => [id, ...figures.map(({ name }) => `${id}.${name}`)]);
    expect(Object.keys(notRun).filter((key) => !all.some((each) => each.startsWith(key)))).toEqual([]);
  });

  it.each(cases.filter(({ id }) => answersOf(id).length > 0))('$id: $gist', (each) => {
    const got: Figures = Object.assign({}, ...answersOf(each.id).map((answer) => answer(each.inputs)));
    for (const { name, value, unit, tolerance } of each.figures) {
      const said = got[name];
      const reason = reasonFor(each.id, name);
      expect(reason === undefined, `${name} is either run or listed`).toBe(said !== undefined);
      if (reason !== undefined)
        recordNotRun({ topic: TOPIC, id: `${each.id}.${name}`, gist: each.gist, reason });
      if (said === undefined) continue;
      record({
        topic: TOPIC,
        id: each.id,
        basis: each.basis,
        source: `${each.source.title}, ${each.source.section}`,
        quantity: name,
        expected: value,
        got: said,
        unit,
        tolerance,
      });
      expect(Math.abs(said - value), `${name}: ${said} against ${value}`).toBeLessThanOrEqual(tolerance);
    }
  });

  it('mass in air by trials, as JCGM 101 prints it in table 6 (from memory)', () => {
    const { value, u, shortest } = massInAir();
    expect(value).toBeCloseTo(1.234, 3);
    expect(Math.abs(u - 0.0754)).toBeLessThan(1e-4);
    expect(Math.abs(shortest.from - 1.0834)).toBeLessThan(2e-3);
    expect(Math.abs(shortest.to - 1.3825)).toBeLessThan(2e-3);
  });
});
