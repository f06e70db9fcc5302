import { useEffect, useState } from 'preact/hooks';
import type { ClockPart, HelperParts } from '../../store/wire.ts';
import { spanText, toTheEnd, wallTime } from '../teacher/clock-time.ts';
import type { TeacherSay } from '../words/teacher-words.ts';

export interface WhoIsHereProps {
  readonly say: TeacherSay;
  readonly language: string;
  readonly clock: ClockPart;
  readonly coming: HelperParts['coming'];
  readonly now: () => number;
}

/** Which group is here and until when, and who comes next. */
export function WhoIsHere({ say, language, clock, coming, now }: WhoIsHereProps) {
  const [, tick] = useState(0);
  useEffect(() => {
    const timer = setInterval(() => tick((n) => n + 1), 1000);
    return () => clearInterval(timer);
  }, []);
  const here = coming.filter(({ isHere }) => isHere);
  const [next] = coming.filter(({ isHere }) => !isHere);
  const end = toTheEnd(clock, now());
  const { begun, paused } = clock;
  const at = (since: number): string => (begun === null ? '' : wallTime(language, begun + paused + since));
  return (
    <div class="time">
      <p>
        <strong>
          {here.length === 0
            ? say('helper.nobody')
            : say('helper.here', { groups: here.map(({ group }) => group).join(', ') })}
        </strong>{' '}
        {here[0] !== undefined && begun !== null && say('helper.until', { time: at(here[0].to) })}
        {clock.pausedSince !== null &&
          ` ▮▮ ${say('time.still', { time: wallTime(language, clock.pausedSince) })}`}
      </p>
      {end !== null && clock.pausedSince === null && (
        <p class="num">{say(end.left < 0 ? 'time.past' : 'time.left', { time: spanText(end.left) })}</p>
      )}
      <p>
        {begun === null
          ? say('time.not-begun')
          : next === undefined
            ? say('helper.last')
            : say('helper.next', { group: next.group, time: at(next.from) })}
      </p>
    </div>
  );
}
