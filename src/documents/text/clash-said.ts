import type { Wish } from '../../core/rotation/wish.ts';
import type { PeriodWords } from './period-words.ts';
import { listed, plain, type Saying } from './saying.ts';
import { type Wished, wishWithPlace } from './wish-text.ts';

/** Why there is no timetable: which wishes clash, and how sure that is; nothing where there is one. */
export function clashSayings(words: PeriodWords, files: Wished): readonly Saying[] {
  const { say, period } = words;
  const { outcome } = period;
  if (outcome.kind === 'timetable') return [];
  if (outcome.kind === 'unknown') return [plain('clash', [say('rotation.unknown')])];
  if (outcome.wishes.length === 0) return [plain('clash', [say('rotation.clash.no-wish')])];
  const told = (wishes: readonly Wish[]): readonly string[] =>
    wishes.map((wish) => wishWithPlace(words, files, wish));
  const [first, ...others] = [outcome.wishes, ...outcome.alsoClashing].map(told);
  const any = others.length === 0 ? 'rotation.clash.any' : 'rotation.clash.any.also';
  const isOne = first?.length === 1;
  const sure = {
    smallest: isOne ? null : say('rotation.clash.smallest'),
    minimal: null,
    none: say('rotation.clash.not-proved'),
  }[outcome.proof];
  return [
    listed(
      'clash',
      say(isOne ? 'rotation.clash.one' : 'rotation.clash'),
      first ?? [],
      [...(isOne || outcome.proof === 'none' ? [] : [say(any)]), ...(sure === null ? [] : [sure])].join(
        ' ',
      ) || null,
    ),
    ...others.map((wishes) =>
      listed('clash', say(wishes.length === 1 ? 'rotation.clash.also.one' : 'rotation.clash.also'), wishes),
    ),
    plain(
      'clash',
      needsSignal(words, [outcome.wishes, ...outcome.alsoClashing])
        ? [say('rotation.clash.side-by-side')]
        : [],
    ),
  ];
}

/** Where each moves on as a table frees up nobody can promise who is beside whom, so "together" clashes by itself. */
const needsSignal = ({ period }: PeriodWords, sets: readonly (readonly Wish[])[]): boolean =>
  period.rotation.way === 'free' &&
  sets.some((wishes) => wishes.length === 1 && wishes[0]?.kind === 'together');
