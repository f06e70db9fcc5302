import { isNotDefined, type NotDefined, notDefined } from '../description/not-defined.ts';
import type { ClassSummary } from '../readings/class-summary.ts';
import type { JudgedAt } from '../readings/judged-at.ts';
import { opened } from '../readings/judgement.ts';
import { medianOf } from '../uncertainty/robust.ts';

/** What was guessed before anybody pulled, against what was read then. */
export interface GuessFound {
  readonly setups: readonly GuessedSetup[];
  /** Partner setups of which a group guessed both: how many had the order that the class then found. */
  readonly orders: readonly {
    readonly more: string;
    readonly less: string;
    readonly right: number;
    readonly of: number;
  }[];
}

/** SI. */
export interface GuessedSetup {
  readonly setup: string;
  readonly count: number;
  readonly middle: number;
  readonly from: number;
  readonly to: number;
  /** Middle of the readings; not defined where none counts. */
  readonly read: number | NotDefined;
}

interface Guess {
  readonly group: string;
  readonly setup: string;
  readonly si: number;
}

/** Guesses that hold a number; where no group wrote one down there is nothing to lay beside the readings. */
export function guessAgainstReading(
  judged: readonly JudgedAt[],
  summary: ClassSummary,
): GuessFound | NotDefined {
  const guesses = judged.flatMap((each): readonly Guess[] => {
    const si = guessed(each);
    const { group, setup } = each.judgement.reading;
    return si === null ? [] : [{ group, setup, si }];
  });
  if (guesses.length === 0) return notDefined('discuss.no-guesses');
  const setups = summary.setups.flatMap(({ setup, centre }): readonly GuessedSetup[] => {
    const own = guesses.filter((each) => each.setup === setup).map(({ si }) => si);
    const middle = medianOf(own);
    return middle === null
      ? []
      : [
          {
            setup,
            count: own.length,
            middle,
            from: Math.min(...own),
            to: Math.max(...own),
            read: isNotDefined(centre) ? centre : centre.median,
          },
        ];
  });
  return { setups, orders: ordersGuessed(guesses, summary) };
}

/** A guess is a number in the instrument's own unit, or in the unit that stands with it. */
function guessed({ judgement: { reading }, at }: JudgedAt): number | null {
  if (reading.guess === undefined) return null;
  const guess = opened({ ...reading, written: reading.guess }, at);
  return guess.settled === null ? guess.base.value : guess.settled.value;
}

function ordersGuessed(guesses: readonly Guess[], summary: ClassSummary): GuessFound['orders'] {
  return summary.pairs.flatMap(({ more, less, ratio }) => {
    if (isNotDefined(ratio)) return [];
    const at = (group: string, setup: string) =>
      guesses.find((each) => each.group === group && each.setup === setup)?.si;
    const both = [...new Set(guesses.map(({ group }) => group))].flatMap((group) => {
      const [high, low] = [at(group, more), at(group, less)];
      return high === undefined || low === undefined ? [] : [high > low];
    });
    return both.length === 0
      ? []
      : [{ more, less, right: both.filter((isRight) => isRight).length, of: both.length }];
  });
}
