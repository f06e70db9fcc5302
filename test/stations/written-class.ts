import { causeKey, causesOf } from '../../src/core/readings/causes.ts';
import { figureOf } from '../../src/core/readings/figure.ts';
import { ownUnit } from '../../src/core/readings/judgement.ts';
import type { WrittenReading } from '../../src/core/readings/written-reading.ts';
import type { Predicted } from '../../src/core/setups/difference.ts';
import type { Unknown } from '../../src/core/uncertainty/measured.ts';
import { chanceFrom } from './honest-lever.ts';

/**
 * A class at some tables, drawn from the program's own model: one apparatus for all groups, hand and rounding anew
 * for each reading. What it shows is that probabilities are reckoned as they should be, not that the
 * model is right; that is for `bench/diagnosis`, which shares nothing with it.
 */
export interface WrittenClass {
  readonly readings: readonly WrittenReading[];
  /** What happened at each: `good`, or the code of a cause. */
  readonly truth: readonly string[];
}

/** Which mistake a group makes at a setup, as the beginning of its key; `null` is none. */
export type Plan = (group: number, at: Predicted, chance: () => number) => string | null;

export function writtenClass(
  tables: readonly { readonly setups: readonly Predicted[] }[],
  groups: number,
  seed: number,
  plan: Plan = () => null,
  farther = 1,
): WrittenClass {
  const chance = chanceFrom(seed);
  const normal = () => Math.sqrt(-2 * Math.log(1 - chance())) * Math.cos(2 * Math.PI * chance());
  const of = (unknown: Unknown) =>
    unknown.u * (unknown.shape === 'normal' ? normal() : Math.sqrt(12) * (chance() - 0.5));
  const apparatus = new Map<string, number>();
  const readings: WrittenReading[] = [];
  const truth: string[] = [];
  for (let group = 0; group < groups; group += 1)
    for (const { setups } of tables)
      for (const at of setups) {
        const { setup, prediction } = at;
        const good = figureOf(prediction.outcome);
        const marks = prediction.graduations;
        if (good === null || prediction.read === null || marks === null) continue;
        const code = plan(group, at, chance);
        const own = ownUnit(setup);
        const cause = causesOf(setup, own, prediction).find((each) =>
          causeKey(each).startsWith(code ?? 'good'),
        );
        if (cause === undefined || cause.figure === null) continue;
        let off = 0;
        for (const { unknown, slope } of prediction.read.parts) {
          if (unknown.id === 'reading/graduation') continue;
          const shared = !unknown.id.startsWith('reading/');
          const drawn =
            (shared ? apparatus.get(unknown.id) : undefined) ?? of(unknown) * (shared ? farther : 1);
          if (shared) apparatus.set(unknown.id, drawn);
          off += slope * drawn;
        }
        const place = chance();
        const shown = cause.figure.low + place * (cause.figure.high - cause.figure.low) + off;
        const marked = Math.max(Math.round(shown / marks.step) * marks.step, 0);
        const written = (marked / (cause.unit ?? own).si).toPrecision(4);
        readings.push({
          group: `group ${group + 1}`,
          setup: setup.mark,
          written: String(Number(written)),
          note: '',
          line: readings.length + 2,
        });
        truth.push(cause.code);
      }
  return { readings, truth };
}
