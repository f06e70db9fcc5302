import type { AskedPeriod } from './files/class-rotation.ts';
import type { PeriodChanges } from './files/period-changes.ts';
import { askedPeriods } from './period.ts';
import type { Prepared } from './prepare.ts';
import { type Seconds, seconds } from './quantities/brands.ts';
import { arrange } from './rotation/arrange.ts';
import type { Rotation } from './rotation/rotation.ts';
import type { Timetable } from './rotation/timetable.ts';
import { type TeachAnswer, whatToTeach } from './rotation/what-to-teach.ts';

/** What a class can be taught in one period or in several, the best way first. */
export interface Teaching {
  readonly asked: AskedPeriod;
  /** How long each period is. */
  readonly periods: readonly Seconds[];
  readonly answer: TeachAnswer;
}

/** So many timetables are looked for at most, each with so many steps. */
const MOST_TIMETABLES = 60;
const STEPS = 3000;

/**
 * Three files -> what each class's period asks -> which tables in which period, and what is left out. Each period has the
 * introduction and the talk at the end of the activity; what a period alone would do is told by the plan of the period.
 */
export function planTeaching(
  prepared: Prepared,
  changes: PeriodChanges,
  periods: readonly Seconds[],
  seed: number,
): readonly Teaching[] | null {
  const arranging = (rotation: Rotation): Timetable | null => {
    const outcome = arrange(rotation, { seed, steps: STEPS });
    return outcome.kind === 'timetable' ? outcome.timetable : null;
  };
  const asked = askedPeriods(prepared, { ...changes, lasts: seconds(Math.max(...periods)) });
  return (
    asked?.map((each) => ({
      asked: each,
      periods,
      answer: whatToTeach(
        {
          rotation: each.rotation,
          periods: periods.map((lasts) => ({
            begins: each.introduction,
            bell: seconds(Math.max(each.introduction, lasts - each.talkAtTheEnd)),
          })),
          together: [],
          atMost: MOST_TIMETABLES,
        },
        arranging,
      ),
    })) ?? null
  );
}
