import { likelyCauses } from '../../documents/text/queried-text.ts';
import type { Telling } from '../../store/entry.ts';
import type { LoggedReading } from '../../store/visit-log.ts';
import type { Judge } from './judged-readings.ts';

/** All that a group may learn of what its readings were held against: to read once more, and how. */
export type ToldAgain =
  | { readonly kind: 'unreadable' }
  /** The code of the likeliest cause: it names a sentence to try, and no figure. */
  | { readonly kind: 'again'; readonly tryThis: string | null };

/**
 * Which of a group's readings are to be read once more, by its own readings alone, so that nobody learns from a
 * page what another group wrote. Only the last of a setup is asked for; what was read again since is past.
 */
export function toldAgain(
  judge: Judge,
  own: readonly LoggedReading[],
  telling: Telling,
): ReadonlyMap<string, ToldAgain> {
  if (telling === 'nothing') return new Map();
  const { byId } = judge(own);
  const last = new Map(own.filter(({ isVoid }) => !isVoid).map(({ id, reading }) => [reading.setup, id]));
  return new Map(
    [...last.values()].flatMap((id): readonly (readonly [string, ToldAgain])[] => {
      const judgement = byId.get(id)?.judgement;
      if (judgement === undefined) return [];
      if (judgement.verdict === 'unreadable') return [[id, { kind: 'unreadable' }]];
      const [first] = likelyCauses(judgement);
      if (first === undefined) return [];
      return [[id, { kind: 'again', tryThis: telling === 'try' ? first.code : null }]];
    }),
  );
}
