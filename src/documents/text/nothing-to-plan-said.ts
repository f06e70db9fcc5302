import { timeForTables } from '../../core/rotation/nothing-to-plan.ts';
import { lengthText } from '../printing/time-text.ts';
import type { PeriodWords } from './period-words.ts';
import { plain, type Saying } from './saying.ts';

/** Why there was nothing to arrange, and what to do; `null` where a timetable was looked for. */
export function nothingToPlanSaid({ say, period }: PeriodWords): readonly Saying[] | null {
  const { outcome, rotation, lasts, introduction, talkAtTheEnd } = period;
  if (outcome.kind !== 'unknown' || outcome.why === 'effort') return null;
  if (outcome.why === 'all-closed') return [plain('clash', [say('rotation.nothing.all-closed')])];
  const facts = {
    period: lengthText(lasts),
    talks: lengthText(introduction + talkAtTheEnd),
    time: lengthText(timeForTables(rotation)),
    quickest: lengthText(Math.min(...rotation.tables.map(({ run }) => run.value))),
  };
  const hasTime = timeForTables(rotation) > 0;
  const key = rotation.bell <= rotation.begins ? 'talks' : hasTime ? 'little' : 'breaks';
  return [plain('clash', [say(`rotation.nothing.${key}`, facts)])];
}
