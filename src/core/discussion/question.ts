import type { NotDefined } from '../description/not-defined.ts';
import type { FeltOrder } from '../readings/class-order.ts';
import type { GuessFound } from './guess-against-reading.ts';
import type { LimitFound } from './limits-of-kit.ts';
import type { MachinesFound } from './machines-at-tables.ts';
import type { RestFound } from './rest-of-work.ts';
import type { SavedFound } from './saved-work.ts';
import type { SurprisedFound } from './surprising-numbers.ts';
import type { TradedFound } from './traded.ts';

/** What each question needs from the class's own numbers. */
export interface FoundFor {
  /** Which machine is which, what each does, and where it lives in the world. */
  readonly machines: MachinesFound;
  /** What was guessed before, against what was read. */
  readonly guess: GuessFound;
  /** What got easier, and what got longer. */
  readonly traded: TradedFound;
  /** Does it save work? */
  readonly saved: SavedFound;
  /** Where did the rest go? */
  readonly rest: RestFound;
  /** Which numbers surprised us, and what probably happened. */
  readonly surprised: SurprisedFound;
  /** Which felt easier: an order and no number. */
  readonly ease: readonly FeltOrder[];
  /** What this kit can't show. */
  readonly limits: readonly LimitFound[];
}

export type QuestionKind = keyof FoundFor;

/** One question of the talk at the end: what the class's numbers say to it, or why they say nothing. */
export type Question = { readonly [K in QuestionKind]: QuestionOf<K> }[QuestionKind];

/** A question that the class's numbers say something to. */
export type OpenQuestion = {
  readonly [K in QuestionKind]: QuestionOf<K> & { readonly found: FoundFor[K] };
}[QuestionKind];

export interface QuestionOf<K extends QuestionKind> {
  readonly kind: K;
  readonly found: FoundFor[K] | NotDefined;
  /** Seconds to stay silent after asking it. */
  readonly wait: number;
  /** Minutes that the class wants for it. */
  readonly minutes: number;
  /** Where time is short, those with the lowest numbers are asked. */
  readonly rank: number;
}

/**
 * Three seconds of silence already bring longer answers from more pupils (M. B. Rowe, Wait-time and rewards as
 * instructional variables, Journal of Research in Science Teaching 11, 1974; from memory); where something has to be
 * looked at or reckoned first, longer, and minutes a question: common practice, no source.
 */
export const PACE: Readonly<
  Record<QuestionKind, { readonly wait: number; readonly minutes: number; readonly rank: number }>
> = {
  machines: { wait: 45, minutes: 2, rank: 4 },
  guess: { wait: 5, minutes: 2, rank: 7 },
  traded: { wait: 10, minutes: 2, rank: 2 },
  saved: { wait: 20, minutes: 3, rank: 1 },
  rest: { wait: 10, minutes: 2, rank: 5 },
  surprised: { wait: 10, minutes: 2, rank: 3 },
  ease: { wait: 5, minutes: 2, rank: 6 },
  limits: { wait: 10, minutes: 1, rank: 8 },
};

/**
 * Those of the questions that so many minutes hold, the weightiest first, in their own order.
 *
 * @example
 * const two = [{ minutes: 2, rank: 2 }, { minutes: 3, rank: 1 }];
 * questionsWithin(two, 4) // => [{ minutes: 3, rank: 1 }]
 */
export function questionsWithin<Q extends { readonly minutes: number; readonly rank: number }>(
  questions: readonly Q[],
  minutes: number,
): readonly Q[] {
  let left = minutes;
  const kept = new Set<Q>();
  for (const each of [...questions].sort((a, b) => a.rank - b.rank)) {
    if (each.minutes > left) continue;
    left -= each.minutes;
    kept.add(each);
  }
  return questions.filter((each) => kept.has(each));
}
