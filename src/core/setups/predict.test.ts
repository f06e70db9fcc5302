import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyLeverSetup, type LeverSetup, leverSetup } from '../../../test/stations/lever-setups.ts';
import { scaleOf } from '../../../test/stations/setup.ts';
import { isNotDefined } from '../description/not-defined.ts';
import { STANDARD_GRAVITY } from '../sources/gravity.ts';
import { exactly } from '../uncertainty/measured.ts';
import { unknownsOf } from '../uncertainty/propagate.ts';
import { predict } from './predict.ts';
import type { Outcome } from './prediction.ts';
import { inputsOf } from './pull.ts';

const RUNS = { numRuns: 300 };

const isRead = (outcome: Outcome): outcome is Extract<Outcome, { kind: 'reading' }> =>
  outcome.kind === 'reading';
const isBand = (outcome: Outcome): outcome is Extract<Outcome, { kind: 'band' }> => outcome.kind === 'band';
const outcomeOf = (said: LeverSetup, change: Partial<LeverSetup> = {}): Outcome =>
  predict(leverSetup({ ...said, ...change })).outcome;

/** Seen often enough in a run of setups, so that a property about it says something. */
function seen(kinds: readonly string[], least: number): void {
  const counted = new Map<string, number>();
  fc.assert(
    fc.property(anyLeverSetup, (said) => {
      const { kind } = outcomeOf(said);
      counted.set(kind, (counted.get(kind) ?? 0) + 1);
    }),
    { seed: 10, ...RUNS },
  );
  for (const kind of kinds) expect(counted.get(kind) ?? 0, kind).toBeGreaterThanOrEqual(least);
}

describe('the prediction of a setup', () => {
  it('meets readings, bands and scales that run away among the setups that are tried here', () => {
    seen(['reading', 'band', 'moves under the scale', 'off the scale'], 5);
  });

  it('has a good range that holds the figure itself, on the marks of the scale', () => {
    fc.assert(
      fc.property(anyLeverSetup, (said) => {
        const outcome = outcomeOf(said);
        if (!('good' in outcome)) return;
        const { from, to } = outcome.good;
        const [low, high] =
          outcome.kind === 'band'
            ? [outcome.lower, outcome.upper]
            : outcome.kind === 'reading'
              ? [outcome.expected, outcome.expected]
              : [outcome.shows, outcome.shows];
        expect(from).toBeLessThanOrEqual(low + 1e-9);
        expect(to).toBeGreaterThanOrEqual(Math.min(high, 20) - 1e-9);
        expect(Math.abs(from / said.step - Math.round(from / said.step))).toBeLessThan(1e-6);
        expect(Math.abs(to / said.step - Math.round(to / said.step))).toBeLessThan(1e-6);
      }),
      { seed: 11, ...RUNS },
    );
  });

  it('never gets narrower when something is known less well', () => {
    fc.assert(
      fc.property(anyLeverSetup, fc.double({ min: 1, max: 4, noNaN: true }), (said, wider) => {
        const setup = leverSetup(said);
        const before = predict(setup).outcome;
        if (!('good' in before)) return;
        for (const { id } of unknownsOf(inputsOf(setup))) {
          const factor = (each: string) => (each === id ? wider : 1);
          const after = predict(leverSetup(said, { factor })).outcome;
          expect(after.kind).toBe(before.kind);
          if (!('good' in after)) continue;
          expect(after.good.from, id).toBeLessThanOrEqual(before.good.from + 1e-12);
          expect(after.good.to, id).toBeGreaterThanOrEqual(before.good.to - 1e-12);
        }
      }),
      { seed: 12, numRuns: 100 },
    );
  });

  it('shows no more while it is let back than while it is raised, and no less at the start', () => {
    fc.assert(
      fc.property(anyLeverSetup, (said) => {
        const still = { tapped: true } as const;
        const raise = outcomeOf(said, { way: 'raise', ...still });
        const lower = outcomeOf(said, { way: 'lower', ...still });
        const start = outcomeOf(said, { way: 'start', ...still });
        if (isRead(raise) && isRead(lower))
          expect(lower.expected).toBeLessThanOrEqual(raise.expected + 1e-12);
        if (isRead(raise) && isRead(start))
          expect(start.expected).toBeGreaterThanOrEqual(raise.expected - 1e-12);
      }),
      { seed: 13, ...RUNS },
    );
  });

  it('of a machine that is held still reaches from the lower to the upper starting limit', () => {
    fc.assert(
      fc.property(anyLeverSetup, (said) => {
        const still = { tapped: true } as const;
        const held = outcomeOf(said, { way: 'held', ...still });
        const start = outcomeOf(said, { way: 'start', ...still });
        if (!isBand(held) || !isRead(start)) return;
        expect(held.upper).toBeCloseTo(start.expected, 12);
        // Letting back with the starting friction as if it were kinetic.
        const friction = said.friction * said.startingRatio;
        const lower = outcomeOf(said, { way: 'lower', friction, startingRatio: 1, ...still });
        if (isRead(lower)) expect(held.lower).toBeCloseTo(lower.expected, 12);
        expect(held.good.to - held.good.from).toBeGreaterThanOrEqual(held.upper - held.lower - 1e-9);
      }),
      { seed: 14, ...RUNS },
    );
  });

  it('returns the schoolbook figure without friction, dead weight and a shift of the scale', () => {
    fc.assert(
      fc.property(anyLeverSetup, fc.constantFrom('raise', 'lower', 'start'), (said, way) => {
        const bare = { barMass: 0, friction: 0, movingShare: 0, tubeFriction: 0, handCarries: true };
        const { outcome, textbook } = predict(
          leverSetup({ ...said, ...bare, way: way as LeverSetup['way'], loadMass: said.loadMass / 8 }),
        );
        if (!isRead(outcome) || isNotDefined(textbook)) throw new Error(`a ${outcome.kind}`);
        expect(outcome.expected).toBeCloseTo(textbook.value, 12);
      }),
      { seed: 15, ...RUNS },
    );
  });

  it('is the same whatever its unknowns are called and in whichever order they stand', () => {
    fc.assert(
      fc.property(anyLeverSetup, (said) => {
        const here = outcomeOf(said);
        const setup = leverSetup(said, { name: (id) => `zz ${[...id].reverse().join('')}` });
        const inputs = Object.fromEntries(Object.entries(setup.station.inputs).reverse());
        const there = predict({ ...setup, station: { ...setup.station, inputs } }).outcome;
        expect(there.kind).toBe(here.kind);
        if (!('good' in here) || !('good' in there)) return;
        expect(there.u).toBeCloseTo(here.u, 12);
        expect(there.good).toEqual(here.good);
      }),
      { seed: 16, ...RUNS },
    );
  });

  it('is the same force whether the marks are in grams or the same marks in newtons', () => {
    fc.assert(
      fc.property(anyLeverSetup, (said) => {
        const setup = leverSetup(said);
        if (setup.scale === null) return;
        const g = STANDARD_GRAVITY / 1000;
        const marked = (unit: 'N' | 'gf') => {
          const { graduations, range } =
            unit === 'gf'
              ? scaleOf({ range: 2000, graduation: 10, unit })
              : scaleOf({ range: 2000 * g, graduation: 10 * g, unit });
          return {
            ...setup,
            scale: { ...(setup.scale as NonNullable<typeof setup.scale>), graduations, range },
          };
        };
        const [grams, newtons] = [predict(marked('gf')).outcome, predict(marked('N')).outcome];
        expect(grams.kind).toBe(newtons.kind);
        if (!('good' in grams) || !('good' in newtons)) return;
        expect(grams.good.from).toBeCloseTo(newtons.good.from, 12);
        expect(grams.good.to).toBeCloseTo(newtons.good.to, 12);
      }),
      { seed: 17, ...RUNS },
    );
  });

  it('closes the work account to a billionth, the falling scale included', () => {
    let falling = 0;
    fc.assert(
      fc.property(anyLeverSetup, fc.constantFrom('raise', 'lower'), (said, way) => {
        const setup = {
          ...leverSetup({ ...said, way: way as LeverSetup['way'] }),
          lift: exactly(0.1 as never),
        };
        const { account } = predict(setup);
        if (isNotDefined(account)) return;
        expect(account.closes).toBeLessThanOrEqual(1e-9);
        const all = [...account.given, ...account.taken];
        if (all.some(({ by }) => by === 'falling scale')) falling += 1;
        const load = all.find(({ by }) => by === 'load');
        expect(load?.joules).toBeCloseTo(0.1 * said.loadMass * 9.81, 9);
      }),
      { seed: 18, ...RUNS },
    );
    expect(falling).toBeGreaterThan(20);
  });

  it('has no work account for what stands still', () => {
    for (const way of ['held', 'start'] as const) {
      const [said] = fc.sample(anyLeverSetup, { seed: 19, numRuns: 1 });
      if (said === undefined) throw new Error('no setup');
      expect(predict(leverSetup({ ...said, way })).account).toMatchObject({ because: 'setup.nothing-moves' });
    }
  });
});
