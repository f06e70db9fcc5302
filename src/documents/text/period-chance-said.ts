import type { PeriodGain } from '../../core/rotation/class-period.ts';
import { lengthText } from '../printing/time-text.ts';
import type { Say } from '../sheets/say.ts';
import { aboutLength, type PeriodWords, timetableOf } from './period-words.ts';

/** Below this, and above the rest of it, no times of a hundred are counted. */
const RARE = 0.01;

/**
 * A chance as a person counts: of ten where it is in the middle, of twenty or a hundred towards the ends.
 *
 * @example shareText((key, facts) => `${facts?.count}/${facts?.of}`, 0.9) // => '9/10'
 * @example shareText((key, facts) => `${facts?.count}/${facts?.of}`, 0.95) // => '19/20'
 */
export function shareText(say: Say, share: number): string {
  if (share > 1 - RARE) return say('rotation.share.always');
  if (share < RARE) return say('rotation.share.never');
  const of = share > 0.975 || share < 0.025 ? 100 : 20;
  const count = Math.round(share * of);
  const isEven = of === 20 && count % 2 === 0;
  const [times, among] = isEven ? [count / 2, of / 2] : [count, of];
  return times === 1
    ? say('rotation.share.once', { of: among })
    : say('rotation.share.times', { count: times, of: among });
}

/** How sure it is that all are done by the bell, when the last one may be, and how long groups wait. */
export function chanceLines({ say, at, period, language }: PeriodWords): readonly string[] {
  const { chance } = period;
  if (chance === null || timetableOf(period) === null) return [];
  const { byTheBell, ends, waits, byTheClock } = chance;
  const long = waits.filter(({ expected }) => expected >= 60);
  const all = waits.map(({ expected }) => expected);
  const about = (time: number): string => aboutLength(language, time);
  const [least, most] = [about(Math.min(...all)), about(Math.max(...all))];
  const longest = waits.filter(({ expected }) => about(expected) === most).map(({ group }) => group);
  return [
    say('rotation.sure', { times: shareText(say, byTheBell) }),
    say('rotation.sure.ends', {
      middle: at(toMinute(ends.middle)),
      from: at(toMinute(ends.from)),
      to: at(toMinute(ends.to)),
    }),
    ...(waits.length === 0
      ? []
      : long.length === 0
        ? [say('rotation.waiting.none')]
        : least === most
          ? [say('rotation.waiting.all', { time: most })]
          : [say('rotation.waiting', { from: least, to: most, groups: longest })]),
    ...(byTheClock === null ? [] : [cutOffText(say, byTheClock)]),
  ];
}

/** What a signal by the clock would do to groups that are slower than the plan. */
function cutOffText(
  say: Say,
  { unfinished, stays }: { readonly unfinished: number; readonly stays: number },
): string {
  const count = Math.round(unfinished);
  return count < 1
    ? say('rotation.clock.few', { stays })
    : say('rotation.clock', { unfinished: count, stays });
}

/** What is drawn by chance is told to the minute: its seconds mean nothing. */
const toMinute = (time: number): number => Math.round(time / 60) * 60;

/** Each change with what it would bring. */
export const gainLines = ({ say, at, period, language }: PeriodWords): readonly string[] => {
  const ends = timetableOf(period)?.ends ?? null;
  return ends === null ? [] : period.gains.map((gain) => gainText(gain, ends, { say, at, language }));
};

function gainText(
  gain: PeriodGain,
  ends: number,
  { say, at, language }: Pick<PeriodWords, 'say' | 'at' | 'language'>,
): string {
  const { change } = gain;
  const what =
    change.kind === 'another copy'
      ? say('rotation.gains.copy', { table: change.table })
      : say('rotation.gains.shorter', { table: change.table, by: lengthText(change.by) });
  const more = say('rotation.gains.more', {
    times: shareText(say, gain.byTheBell),
    waiting: aboutLength(language, gain.waiting),
  });
  const sooner = ends - gain.ends;
  const key = sooner > 0 ? 'sooner' : sooner < 0 ? 'later' : 'same';
  return say(`rotation.gains.${key}`, {
    change: what,
    time: lengthText(Math.abs(sooner)),
    ends: at(gain.ends),
    more,
  });
}
