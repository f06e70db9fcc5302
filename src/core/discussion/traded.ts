import { isNotDefined, type NotDefined, notDefined } from '../description/not-defined.ts';
import type { ClassFigure } from '../readings/class-figure.ts';
import type { PairFound } from '../readings/class-pairs.ts';
import type { ClassSummary } from '../readings/class-summary.ts';
import { setupOfTalk, type TableOfTalk } from './table-of-talk.ts';

/** What got easier and what got longer, setup by setup. */
export interface TradedFound {
  readonly setups: readonly TradedAt[];
  /** Partners: how many times the pull of one against the other, and how many times its way. */
  readonly pairs: readonly TradedPair[];
  /** The setup to talk about: where the pull got lighter most. `null` where it got lighter at none. */
  readonly shown: string | null;
}

export interface TradedAt {
  readonly table: string;
  readonly setup: string;
  readonly machine: string;
  /** Load over pull, by the class's readings. */
  readonly force: ClassFigure;
  /** How many times as far the hand moves as the load, by the lengths of the machine. */
  readonly way: number;
}

export interface TradedPair extends Pick<PairFound, 'more' | 'less'> {
  readonly pull: ClassFigure;
  /** How many times as far the hand moves at the one that asks for less. */
  readonly way: number;
}

/** A lighter pull and a longer way belong together: setups of which the class's numbers give the first. */
export function tradedOf(tables: readonly TableOfTalk[], summary: ClassSummary): TradedFound | NotDefined {
  const wayOf = (mark: string): number | null => {
    const ratio = setupOfTalk(tables, mark)?.prediction.velocityRatio;
    return ratio === undefined || isNotDefined(ratio) ? null : ratio;
  };
  const setups = summary.setups.flatMap(({ table, setup, advantage }): readonly TradedAt[] => {
    const way = wayOf(setup);
    const machine = setupOfTalk(tables, setup)?.prediction.machine ?? '';
    return isNotDefined(advantage) || way === null ? [] : [{ table, setup, machine, force: advantage, way }];
  });
  if (setups.length === 0) return notDefined('discuss.nothing-pulled');
  const pairs = summary.pairs.flatMap(({ more, less, ratio }): readonly TradedPair[] => {
    const [near, far] = [wayOf(more), wayOf(less)];
    return isNotDefined(ratio) || near === null || far === null
      ? []
      : [{ more, less, pull: ratio, way: far / near }];
  });
  return { setups, pairs, shown: lightest(setups)?.setup ?? null };
}

/** Where the pull surely got lighter most; one machine before several in a row. */
const lightest = (setups: readonly TradedAt[]): TradedAt | null =>
  setups
    .filter(({ force }) => force.from > 1)
    .sort(
      (a, b) =>
        Number(a.machine === 'compound') - Number(b.machine === 'compound') || b.force.value - a.force.value,
    )[0] ?? null;
