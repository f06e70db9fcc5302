/**
 * A value with what is not known about it. It remembers *which* unknowns it depends on and how
 * strongly, so that two values that share a part stay correlated and `x - x` is exactly 0 ± 0.
 *
 * Linear law of JCGM 100:2008, 5.1 and 5.2, with one independent unknown a source of doubt.
 */
export interface Measured<Q extends number = number> {
  readonly value: Q;
  readonly parts: readonly Part[];
}

/** One unknown's share in a value: d value / d unknown. */
export interface Part {
  readonly unknown: Unknown;
  readonly slope: number;
}

/** One source of doubt. The same `id` is the same unknown wherever it turns up. */
export interface Unknown {
  readonly id: string;
  /** Standard uncertainty in the SI unit of the value it was written for. */
  readonly u: number;
  readonly shape: Shape;
  readonly origin: Origin;
  /** Where an assumed value comes from: a key of the sources, or a plain remark. */
  readonly source?: string;
}
/** `normal`: the half-width holds 19 of 20. `even`: anywhere between two ends. */
export type Shape = 'normal' | 'even';
/** `stated` with a ± or a range, `bare` (half its last digit), `assumed` because it was left out. */
export type Origin = 'stated' | 'bare' | 'assumed' | 'exact';

/** 19 of 20 under a normal law: the half-width is this many standard uncertainties. */
export const COVERAGE_95 = 1.96;

/**
 * A value known exactly: a count, a defined constant.
 *
 * @example standardUncertainty(exactly(3)) // => 0
 */
export const exactly = <Q extends number>(value: Q): Measured<Q> => ({
  value,
  parts: [],
});

/**
 * A value with one unknown of its own.
 *
 * @example standardUncertainty(measured(2, { id: 'bar/mass', u: 0.1, shape: 'normal', origin: 'stated' })) // => 0.1
 */
export const measured = <Q extends number>(value: Q, unknown: Unknown): Measured<Q> => ({
  value,
  parts: unknown.u === 0 && unknown.origin !== 'assumed' ? [] : [{ unknown, slope: 1 }],
});

/**
 * Anywhere between two ends, evenly: u = width / √12 (JCGM 100, 4.3.7).
 *
 * @example between('pin/friction', 0.15, 0.35, 'assumed').value // => 0.25
 */
export const between = <Q extends number>(
  id: string,
  low: Q,
  high: Q,
  origin: Origin,
  source?: string,
): Measured<Q> =>
  measured(((low + high) / 2) as Q, {
    id,
    u: (high - low) / Math.sqrt(12),
    shape: 'even',
    origin,
    ...(source === undefined ? {} : { source }),
  });

/** `factor` times a value, to another dimension where the caller says so. */
export const times = <Q extends number>(value: Measured, factor: number): Measured<Q> => ({
  value: (value.value * factor) as Q,
  parts: value.parts.map((part) => ({
    unknown: part.unknown,
    slope: part.slope * factor,
  })),
});

/**
 * Sum of values; an unknown that they share is added with its sign before it is squared.
 *
 * @example
 * const x = between('rope/length', 2, 3, 'stated');
 * standardUncertainty(plus(x, times(x, -1))) // => 0
 */
export const plus = <Q extends number>(...values: readonly Measured<Q>[]): Measured<Q> => ({
  value: values.reduce((sum, each) => sum + each.value, 0 as number) as Q,
  parts: gather(values.flatMap((each) => each.parts)),
});

export const minus = <Q extends number>(a: Measured<Q>, b: Measured<Q>): Measured<Q> =>
  plus(a, times<Q>(b, -1));

/** Product, to first order in the unknowns. */
export const product = <Q extends number>(a: Measured, b: Measured): Measured<Q> => ({
  value: (a.value * b.value) as Q,
  parts: gather([...times(a, b.value).parts, ...times(b, a.value).parts]),
});

/** Standard uncertainty: root of the sum of squares over the distinct unknowns (JCGM 100, 5.1.2). */
export const standardUncertainty = (value: Measured): number =>
  Math.hypot(...value.parts.map((part) => part.slope * part.unknown.u));

/** Covariance of two values: what their shared unknowns have in common (JCGM 100, 5.2 and F.1.2.3). */
export const covariance = (a: Measured, b: Measured): number =>
  a.parts.reduce((sum, part) => {
    const same = b.parts.find((other) => other.unknown.id === part.unknown.id);
    return same === undefined ? sum : sum + part.slope * same.slope * part.unknown.u ** 2;
  }, 0);

function gather(parts: readonly Part[]): readonly Part[] {
  const byId = new Map<string, Part>();
  for (const part of parts) {
    const before = byId.get(part.unknown.id);
    byId.set(part.unknown.id, before ? { ...part, slope: before.slope + part.slope } : part);
  }
  return [...byId.values()].filter((part) => part.slope !== 0);
}
