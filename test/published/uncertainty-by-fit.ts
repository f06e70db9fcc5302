import {
  conformityOf,
  guardBand,
  normalStock,
  risksOf,
  type Stock,
} from '../../src/core/uncertainty/conformity.ts';
import { coverageFactor, effectiveFreedom } from '../../src/core/uncertainty/coverage-factor.ts';
import { leastSquares } from '../../src/core/uncertainty/least-squares.ts';
import {
  fisherShare,
  gammaDensity,
  gammaShare,
  quantileFrom,
} from '../../src/core/uncertainty/probability.ts';
import { repeatsOf } from '../../src/core/uncertainty/repeats.ts';
import { analysisOfMeans, betweenGroups } from '../../src/core/uncertainty/variance-analysis.ts';

type Figures = Readonly<Record<string, number>>;
type Inputs = Readonly<Record<string, unknown>>;

/** A straight line through the calibration of a thermometer (JCGM 100, H.3). */
function thermometer(inputs: Inputs) {
  const rows = inputs.rows as readonly { readonly t_degC: number; readonly correction_degC: number }[];
  const fit = leastSquares(
    rows.map((row) => [1, row.t_degC - 20]),
    rows.map((row) => row.correction_degC),
  );
  const [a = 0, b = 0] = fit?.parameters ?? [];
  const [[va = 0, vab = 0] = [], [, vb = 0] = []] = fit?.covariance ?? [];
  if (fit === null) throw new Error('no fit');
  return { fit, a, b, va, vab, vb };
}

function meansOf(inputs: Inputs): Figures {
  const columns = ['V', 'I', 'phi'].map((name) => ({
    name,
    values: (inputs[name] as { readonly values: readonly number[] }).values,
  }));
  const r = (a: readonly number[], b: readonly number[]): number => {
    const [one, other] = [repeatsOf(a), repeatsOf(b)];
    if (one === null || other === null) throw new Error('no repeats');
    const together = a.reduce((sum, each, n) => sum + (each - one.mean) * ((b[n] ?? 0) - other.mean), 0);
    return together / ((a.length - 1) * one.deviation * other.deviation);
  };
  return Object.fromEntries(
    columns.flatMap(({ name, values }, n) => [
      [`${name}.mean`, repeatsOf(values)?.mean ?? 0],
      [`${name}.u`, repeatsOf(values)?.u ?? 0],
      ...columns.slice(n + 1).map((other) => [`r(${name},${other.name})`, r(values, other.values)]),
    ]),
  );
}

const bearings: Stock = { from: 0, to: 15, density: (x) => 4 * gammaDensity(4, 4 * x) };

/** What fits, factors and probabilities say of each example, by the names of its figures. */
export const fitAnswers: Readonly<Record<string, (inputs: Inputs) => Figures>> = {
  'gum-H1-veff-U99': () => {
    const d = [
      { u: 5.8, freedom: 24 },
      { u: 3.9, freedom: 5 },
      { u: 6.7, freedom: 8 },
    ];
    const dalpha = { u: (50000623 * 0.1 * 1e-6) / Math.sqrt(3), freedom: 50 };
    const dtheta = { u: (50000623 * 1.15e-5 * 0.05) / Math.sqrt(3), freedom: 2 };
    const shares = [{ u: 25, freedom: 18 }, ...d, dalpha, dtheta];
    const freedom = effectiveFreedom(shares) ?? 0;
    const k = coverageFactor(freedom, 0.99);
    return {
      veff_unrounded: freedom,
      veff_used: Math.floor(freedom),
      k,
    };
  },
  'gum-H2-means-correlations': meansOf,
  'gum-H3-fit': (inputs) => {
    const { fit, a, b, va, vab, vb } = thermometer(inputs);
    return {
      y1: a,
      's(y1)': Math.sqrt(va),
      y2: b,
      's(y2)': Math.sqrt(vb),
      'r(y1,y2)': vab / Math.sqrt(va * vb),
      s: fit.deviation,
      sum_squared_residuals: fit.sumOfSquares,
      y1_full: a,
      y2_full: b,
      's(y2)_full': Math.sqrt(vb),
    };
  },
  'gum-H3-predicted-correction': (inputs) => {
    const { fit, a, b, va, vab, vb } = thermometer(inputs);
    return { 'b(30)': a + 10 * b, u: Math.sqrt(va + 20 * vab + 100 * vb), degrees_of_freedom: fit.freedom };
  },
  'gum-H5-anova': (inputs) => {
    const days = inputs.day_means_V as readonly number[];
    const within = (inputs.day_sd_uV as readonly number[]).map((each) => each * 1e-6);
    const found = analysisOfMeans(days, within, 5);
    const means = repeatsOf(days);
    if (found === null || means === null) throw new Error('no analysis');
    const critical = (share: number) => quantileFrom((f) => fisherShare(f, 9, 40), share, 0, 2);
    return {
      grand_mean: found.mean,
      s_of_day_means: means.deviation * 1e6,
      s_a: Math.sqrt(found.between.mean) * 1e6,
      s_b: Math.sqrt(found.within.mean) * 1e6,
      F: found.F ?? 0,
      'df[0]': found.between.freedom,
      'df[1]': found.within.freedom,
      s_B: betweenGroups(found, 5) * 1e6,
      u_grand_mean: means.u * 1e6,
      'F_crit_0.95': critical(0.95),
      'F_crit_0.975': critical(0.975),
    };
  },
  'gum-table-G2-t-factors': (inputs) => {
    const shares = (inputs.p_percent as readonly number[]).map((each) => each / 100);
    const rows = [1, 2, 3, 4, 5, 6, 8, 10, 12, 16, 20, 25, 30, 50, 100];
    return Object.fromEntries(
      rows.flatMap((freedom) =>
        shares.map((share, n) => [`t.${freedom}[${n}]`, coverageFactor(freedom, share)]),
      ),
    );
  },
  'j106-bearing-consumer-risk': () => {
    const good = { low: null, high: 2 };
    const guard = guardBand(bearings, 0.25, 2, 0.001);
    return {
      nonconforming_fraction: 1 - gammaShare(4, 8),
      consumer_risk_simple_acceptance: risksOf(bearings, 0.25, good, good).takenThoughBad,
      guard_band: guard,
      acceptance_limit: 2 - guard,
    };
  },
  'j106-one-sided-lower': () => {
    const p = conformityOf(509.7, 8.6, { low: 490, high: null });
    return { p_conform: p, p_full: p };
  },
  'j106-two-sided': () => {
    const p = conformityOf(13.6, 1.8, { low: 12.5, high: 16.3 });
    return { p_conform: p, p_full: p };
  },
  'risk-deaver': () => {
    const limits = { low: -8, high: 8 };
    const risks = risksOf(normalStock(0, 4), 1, limits, limits);
    return { false_accept: risks.takenThoughBad, false_reject: risks.refusedThoughGood };
  },
};
