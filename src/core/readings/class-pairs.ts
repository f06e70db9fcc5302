import { isNotDefined, type NotDefined, notDefined } from '../description/not-defined.ts';
import type { Predicted } from '../setups/difference.ts';
import { shiftOf } from '../setups/shown.ts';
import type { Measured } from '../uncertainty/measured.ts';
import { type SignTest, signTest } from '../uncertainty/ordinal.ts';
import { atBest, propagate } from '../uncertainty/propagate.ts';
import { type ClassFigure, classFigure, type Freedoms } from './class-figure.ts';
import type { Judgement } from './judgement.ts';

/** Two partner setups side by side, as the class read them. */
export interface PairFound {
  /** The one that asks for more, and its partner. */
  readonly more: string;
  readonly less: string;
  /** What `more` asks for over what `less` asks for: pulls at the hook, turns, or lengths. */
  readonly ratio: ClassFigure | NotDefined;
  /** The same by the key; `null` where the key has no such figures. */
  readonly expected: number | null;
  /** Groups that read both: how many found it so, how many the other way round. */
  readonly groups: SignTest;
}

/** A setup with the centre of its readings; `null` where there are too few. */
interface Sided {
  readonly at: Predicted;
  readonly counted: readonly Judgement[];
  readonly figure: Measured | null;
}

/** Every pair of partners of which both were read, once. */
export function pairsFound(sides: readonly Sided[], freedoms: Freedoms): readonly PairFound[] {
  return sides.flatMap((one, n) => {
    const other = sides.find(({ at }) => at.setup.mark === one.at.setup.partner);
    if (other === undefined || other === one) return [];
    const isSaidBefore = other.at.setup.partner === one.at.setup.mark && sides.indexOf(other) < n;
    const isAlike = one.at.setup.watched === other.at.setup.watched && !isHeld(one) && !isHeld(other);
    return isSaidBefore || !isAlike ? [] : [pairFound(one, other, freedoms)];
  });
}

/** Held still a group may read anything in a band: which of two bands is more, no reading says. */
const isHeld = ({ at }: Sided): boolean => at.setup.watched === 'pull' && at.setup.way === 'held';

function pairFound(one: Sided, other: Sided, freedoms: Freedoms): PairFound {
  const [a, b] = [expectedOf(one), expectedOf(other)];
  const [more, less] = (a ?? 0) >= (b ?? 0) ? [one, other] : [other, one];
  const expected = [expectedOf(more), expectedOf(less)];
  return {
    more: more.at.setup.mark,
    less: less.at.setup.mark,
    ratio: ratioOf(more, less, freedoms),
    expected:
      expected[0] === undefined || expected[1] === undefined || expected[1] <= 0
        ? null
        : expected[0] / expected[1],
    groups: signTest(pairedIn(less, more)),
  };
}

/**
 * Ratio of two centres by the linear law (JCGM 100, 5.1 and 5.2; the ratio of H.2): what both setups share, as a scale's
 * shift and its marks, is in both and goes out as far as it does. That one group's hand is in both is left
 * aside, which makes the interval rather too wide.
 */
function ratioOf(more: Sided, less: Sided, freedoms: Freedoms): ClassFigure | NotDefined {
  const [above, below] = [more.figure, less.figure];
  if (above === null || below === null) return notDefined('summary.pair-too-few');
  if (below.value <= 0) return notDefined('summary.pair-of-nothing');
  const ratio = propagate((at) => at(above) / at(below), [above, below]);
  return ratio === null ? notDefined('summary.pair-of-nothing') : classFigure(ratio, freedoms);
}

/** The pull at the hook, or the count; nothing where the key has no figure. */
function expectedOf({ at: { prediction } }: Sided): number | undefined {
  if (prediction.watched === 'pull') return prediction.pull?.value;
  return isNotDefined(prediction.outcome) || prediction.outcome.kind !== 'reading'
    ? undefined
    : prediction.outcome.expected;
}

/**
 * What each group found at both, the first number it wrote: pulls at the hook where scales are read, so that
 * scales that hang differently can be compared. Closer together than half a graduation is the same.
 */
function pairedIn(less: Sided, more: Sided): readonly (readonly [number, number])[] {
  const first = (side: Sided, group: string): number | null =>
    side.counted.find(({ reading }) => reading.group === group)?.value ?? null;
  const groups = [...new Set(less.counted.map(({ reading }) => reading.group))].filter((each) => each !== '');
  const step = Math.min(...[less, more].map(({ at }) => at.prediction.graduations?.step ?? 0));
  return groups.flatMap((group): readonly (readonly [number, number])[] => {
    const [a, b] = [first(less, group), first(more, group)];
    if (a === null || b === null) return [];
    const apart = b + shiftAt(more) - a - shiftAt(less);
    return [Math.abs(apart) < step / 2 ? [0, 0] : [0, apart]];
  });
}

const shiftAt = ({ at: { setup } }: Sided): number =>
  setup.watched !== 'pull' || setup.scale === null ? 0 : shiftOf(setup, setup.scale, atBest);
