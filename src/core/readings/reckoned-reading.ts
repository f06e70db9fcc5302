import { causeKey, causesOf } from './causes.ts';
import type { JudgedAt } from './judged-at.ts';
import { ownUnit } from './judgement.ts';
import { type Reckoned, reckonedFrom } from './reckoning.ts';

/**
 * What a group made of its own reading, a finding for each computed column that it filled in. Where its number
 * most likely counts something else (grams, ten times too much), it is held against what was meant and
 * against what was written, in favour of the group.
 */
export function reckonedAt({ judgement, at }: JudgedAt): readonly Reckoned[] {
  if (judgement.reading.computed === undefined) return [];
  const [first = [], ...others] = newtonsIn({ judgement, at }).map((newtons) =>
    reckonedFrom(judgement.reading, newtons, at.setup),
  );
  return first.map((reckoned) =>
    others
      .flatMap((each) => each.filter(({ column }) => column === reckoned.column))
      .reduce((best, each) => (rank(each) < rank(best) ? each : best), reckoned),
  );
}

/** What the group read, in newtons, likeliest first; `null` where that is no pull. */
function newtonsIn({ judgement, at: { setup, prediction } }: JudgedAt): readonly (number | null)[] {
  const { meaning, value, causes } = judgement;
  if (meaning.kind !== 'number' || value === null || setup.watched !== 'pull') return [null];
  const [likely] = causes;
  if (judgement.verdict !== 'look again' || likely?.kind !== 'reading') return [value];
  const key = causeKey(likely);
  const { number } = meaning;
  const unit = causesOf(setup, meaning.unit ?? ownUnit(setup), prediction, { number }).find(
    (cause) => causeKey(cause) === key,
  )?.unit;
  return unit === undefined || unit === null ? [value] : [number * unit.si, value];
}

const ORDER: readonly Reckoned['verdict'][] = ['as the key', 'another way', 'slip', 'not found'];
const rank = ({ verdict }: Reckoned): number => ORDER.indexOf(verdict);
