import { describe, expect, it } from 'vitest';
import { demoPrepared } from '../../../test/documents/demo-prepared.ts';
import { isNotDefined } from '../description/not-defined.ts';
import { rehearse } from '../rehearse.ts';
import { review, setupNamed } from '../review.ts';
import { shiftOf } from '../setups/shown.ts';
import { covariance, standardUncertainty } from '../uncertainty/measured.ts';
import { atBest, propagate } from '../uncertainty/propagate.ts';
import { randomFrom } from '../uncertainty/random.ts';
import { robustCentre } from '../uncertainty/robust.ts';
import { centreMeasured, classFigure, scatterOf } from './class-figure.ts';
import { classSummary } from './class-summary.ts';
import { pullBehind } from './class-work.ts';

const prepared = demoPrepared();
const named = (mark: string) => {
  const at = setupNamed(prepared, mark);
  if (at === null) throw new Error(`no setup ${mark}`);
  return at;
};
/** Readings of a class: by setup, those of groups A, B, C in turn. */
const summaryOf = (readings: Readonly<Record<string, readonly string[]>>) => {
  const rows = Object.entries(readings).flatMap(([setup, all]) =>
    all.map((written, n) => `${String.fromCharCode(65 + n)},${setup},"${written}",`),
  );
  return classSummary(
    review(prepared, { name: 'class.csv', text: `group,setup,reading,note\n${rows.join('\n')}\n` }),
  );
};
const foundAt = (summary: ReturnType<typeof summaryOf>, mark: string) => {
  const found = summary.setups.find(({ setup }) => setup === mark);
  if (found === undefined) throw new Error(`nothing found at ${mark}`);
  return found;
};
function defined<T>(value: T): Exclude<T, { readonly kind: 'not-defined' }> {
  if (isNotDefined(value)) throw new Error(`not defined: ${value.because}`);
  return value as Exclude<T, { readonly kind: 'not-defined' }>;
}

describe('what a class found at a setup', () => {
  const summary = summaryOf({
    L1: ['2.2', '2.1', '2.2', '225', '2.3', ''],
    L2: ['4.4', '4.3', '4.2', '4.4', '4.5', '4.3'],
    C3: ['2.0', '3.0', '1.8', '2.4'],
    T2: ['2.8', '2.8'],
  });

  it('counts what was read well, leaves out what a mistake explains better, and tells blanks apart', () => {
    const found = foundAt(summary, 'L1');
    expect(found.count).toBe(4);
    expect(found.withoutNumber).toBe(1);
    expect(found.leftOut.map(({ group, written, code }) => [group, written, code])).toEqual([
      ['D', '225', 'reading.in-grams'],
    ]);
    expect(defined(found.centre).median).toBeCloseTo(2.2, 12);
  });

  it('has the pull at the hook that the chart has: the figure and what the scale shows too little', () => {
    const { setup } = named('T2');
    const found = foundAt(summaryOf({ T2: ['2.8', '2.8', '3.0'] }), 'T2');
    if (setup.scale === null) throw new Error('T2 has a scale');
    const shift = shiftOf(setup, setup.scale, atBest);
    expect(shift).toBeGreaterThan(0.2);
    expect(defined(found.pull).value).toBeCloseTo(2.8 + shift, 10);
    expect(defined(found.advantage).value).toBeCloseTo(9.81 / (2.8 + shift), 1);
  });

  it('closes its account: what was given is what the load took and what is left over', () => {
    const work = defined(foundAt(summary, 'L2').work);
    expect(work.helped?.value).toBeGreaterThan(0);
    expect(work.pulled.value + (work.helped?.value ?? 0)).toBeCloseTo(work.out.value + work.rest, 12);
    expect(work.efficiency.value).toBeCloseTo(
      work.out.value / (work.pulled.value + (work.helped?.value ?? 0)),
      10,
    );
  });

  it('says why there is no advantage: held still, counted, or too few readings', () => {
    expect(foundAt(summary, 'C3').advantage).toMatchObject({ because: 'summary.held-still' });
    expect(foundAt(summary, 'T2').advantage).toMatchObject({ because: 'summary.too-few' });
    expect(foundAt(summaryOf({ P1: ['4', '4', '4'] }), 'P1').advantage).toMatchObject({
      because: 'summary.not-pulled',
    });
  });

  it('does not take a changed station for the setup on the card', () => {
    const high = summaryOf({
      S1: ['0.65', '0.60', '0.65', '0.85', '0.85', '0.90'],
      S2: ['1.10', '1.15', '1.15', '1.30', '1.25', '1.40'],
      S3: ['1.45', '1.45', '1.50', '1.40', '1.50', '1.45'],
    });
    const found = foundAt(high, 'S1');
    expect(found.leftOut.map(({ group, because }) => [group, because])).toEqual([
      ['D', 'station'],
      ['E', 'station'],
      ['F', 'station'],
    ]);
    expect(defined(found.centre).median).toBeCloseTo(0.65, 12);
    expect(foundAt(high, 'S3').count).toBe(6);
  });
});

describe('did the machine save work', () => {
  it('says no where the class surely put in more than came out', () => {
    const { saved } = summaryOf({ T1: ['5.4', '5.4', '5.6', '5.2'], T2: ['2.8', '2.8', '3.0', '2.6'] });
    expect(saved.no).toEqual(['T1', 'T2']);
    expect(saved.least?.notSaved).toBeGreaterThan(0.95);
  });

  it('leaves it open where friction is less than the readings can tell', () => {
    const { saved } = summaryOf({ L1: ['2.2', '2.2', '2.1', '2.3'] });
    expect([saved.no, saved.open, saved.yes]).toEqual([[], ['L1'], []]);
  });

  it('names a reading that by itself asks for more out than in, without a mistake being sure', () => {
    const { surprising } = summaryOf({ T2: ['2.8', '2.8', '3.0', '1.8'] });
    expect(surprising.map(({ group, written }) => [group, written])).toEqual([['D', '1.8']]);
    expect(surprising[0]?.efficiency).toBeGreaterThan(1);
  });
});

describe('partners', () => {
  const { pairs } = summaryOf({
    L1: ['2.2', '2.2', '2.1', '2.3'],
    L2: ['4.4', '4.3', '4.2', '4.4'],
  });

  it('are compared once, with the groups that read both counted', () => {
    expect(pairs.map(({ more, less }) => [more, less])).toEqual([['L2', 'L1']]);
    expect(pairs[0]?.groups).toEqual({ less: 4, more: 0, same: 0, probability: 0.125 });
    expect(pairs[0]?.expected).toBeCloseTo(2, 1);
  });

  it('have the ratio and its uncertainty of JCGM 100, equation 16, with what they share', () => {
    const pullOf = (mark: string, values: readonly number[]) => {
      const { setup } = named(mark);
      const centre = robustCentre(values);
      const pull = centre === null ? null : pullBehind(setup, centreMeasured(mark, centre, 0.1));
      if (pull === null) throw new Error(`no pull at ${mark}`);
      return pull;
    };
    const [a, b] = [pullOf('L2', [4.4, 4.3, 4.2, 4.4]), pullOf('L1', [2.2, 2.2, 2.1, 2.3])];
    const ratio = propagate((at) => at(a) / at(b), [a, b]);
    const r = a.value / b.value;
    const shared = covariance(a, b);
    expect(shared).toBeGreaterThan(0);
    const relative =
      (standardUncertainty(a) / a.value) ** 2 +
      (standardUncertainty(b) / b.value) ** 2 -
      (2 * shared) / (a.value * b.value);
    expect(ratio?.value).toBeCloseTo(r, 12);
    // The slopes are taken between two close points, which leaves a millionth.
    expect(ratio === null ? 0 : standardUncertainty(ratio)).toBeCloseTo(r * Math.sqrt(relative), 6);
  });
});

describe('felt orders', () => {
  it('are paired within a group, and a group that left one out is not counted', () => {
    const { felt } = summaryOf({ G1: ['1', '1', '2', '1', '1'], G2: ['2', '2', '1', '2'] });
    expect(felt).toHaveLength(1);
    expect(felt[0]).toMatchObject({
      table: '6',
      groups: 4,
      incomplete: 1,
      pair: { less: 3, more: 1, same: 0, probability: 0.625 },
      expected: { order: ['G1', 'G2'], agrees: true },
    });
  });
});

describe('intervals from a class of its own', () => {
  it('hold the true value in about 19 of 20 classes of six', () => {
    const random = randomFrom(20260512);
    const classes = 4000;
    let held = 0;
    for (let n = 0; n < classes; n += 1) {
      const centre = robustCentre(Array.from({ length: 6 }, () => 10 + random.normal()));
      if (centre === null) throw new Error('six are enough');
      const figure = classFigure(
        centreMeasured('X1', centre, 0),
        new Map([[scatterOf('X1'), centre.freedom]]),
      );
      if (figure.from <= 10 && figure.to >= 10) held += 1;
    }
    expect(held / classes).toBeGreaterThan(0.94);
    expect(held / classes).toBeLessThan(0.985);
  });

  it('find the scatter of the hand that the readings were made with', () => {
    const hands = [1, 2, 3, 4, 5, 6].map(
      (seed) => classSummary(rehearse(prepared, { groups: 8, mistakes: 0, seed }).review).hand,
    );
    const share = hands.reduce((sum, each) => sum + (each?.share ?? 0), 0) / hands.length;
    const assumed = hands[0]?.assumed ?? 0;
    // Besides the hand the pointer's lag in its tube scatters.
    expect(share / assumed).toBeGreaterThan(0.8);
    expect(share / assumed).toBeLessThan(1.6);
  });

  it('hold the ratio of the key in most sound classes: only the copy of the apparatus is another', () => {
    const found = [1, 2, 3, 4, 5, 6].flatMap((seed) =>
      classSummary(rehearse(prepared, { groups: 8, mistakes: 0, seed }).review).pairs.filter(
        ({ ratio, expected }) => !isNotDefined(ratio) && expected !== null,
      ),
    );
    const held = found.filter(
      ({ ratio, expected }) =>
        !isNotDefined(ratio) && ratio.from <= (expected ?? 0) && ratio.to >= (expected ?? 0),
    );
    expect(found.length).toBeGreaterThan(15);
    expect(held.length / found.length).toBeGreaterThan(0.75);
  });
});
