import { useEffect, useState } from 'preact/hooks';
import type { ClockPart } from '../../store/wire.ts';
import { recalled, type TeacherView } from './acts.ts';
import { spanText, toTheEnd, wallTime } from './clock-time.ts';

export interface ClassClockProps extends TeacherView {
  readonly clock: ClockPart;
  readonly way: 'signal' | 'free' | null;
  readonly now: () => number;
}

/** A signal sooner than this before it is due is asked about first. */
const EARLY = 60_000;

/** The clock, and what a teacher does with it. */
export function ClassClock({ say, language, act, clock, way, now }: ClassClockProps) {
  const [, tick] = useState(0);
  const [isAsking, setAsking] = useState<number | null>(null);
  useEffect(() => {
    const timer = setInterval(() => tick((n) => n + 1), 1000);
    return () => clearInterval(timer);
  }, []);
  const { begun, pausedSince, round } = clock;
  if (begun === null)
    return (
      <div class="time">
        <p>
          <strong>{say('time.not-begun')}</strong> <span>{say('time.begin.say')}</span>
        </p>
        <p class="acts">
          <button
            type="button"
            class="main"
            onClick={() => act({ kind: 'begun' }, { key: 'did.begun' }, recalled('did.begun.not'))}
          >
            {say('time.begin')}
          </button>
        </p>
      </div>
    );
  const end = toTheEnd(clock, now());
  const isPaused = pausedSince !== null;
  const signal = (): void => {
    if (round === null) return;
    const { number } = round;
    setAsking(null);
    act(
      { kind: 'signal', round: number },
      { key: 'did.signal', facts: { number } },
      recalled('did.signal.not', { number }),
    );
  };
  const pause = { what: { kind: 'paused' }, said: { key: 'did.paused' } } as const;
  const resume = { what: { kind: 'resumed' }, said: { key: 'did.resumed' } } as const;
  const [does, undoes] = isPaused ? [resume, pause] : [pause, resume];
  const past = round === null ? 'time.past-end' : 'time.past';
  const isEarly = end !== null && end.left > EARLY;
  return (
    <div class="time">
      <p>
        {end !== null && (
          <strong>{say(end.left < 0 ? past : 'time.left', { time: spanText(end.left) })}</strong>
        )}{' '}
        <span>
          {round !== null && end !== null
            ? say('time.round', { number: round.number, of: round.of, time: wallTime(language, end.at) })
            : way === 'signal'
              ? say('time.no-rounds')
              : end !== null && say('time.over', { time: wallTime(language, end.at) })}
        </span>{' '}
        {isPaused && <b class="still">‖ {say('time.still', { time: wallTime(language, pausedSince) })}</b>}
      </p>
      {isAsking !== null && isAsking === round?.number && end !== null ? (
        <p class="acts">
          <span>{say('time.signal.early', { number: round.number, time: spanText(end.left) })}</span>
          <button type="button" class="main" onClick={signal}>
            {say('time.signal.yes')}
          </button>
          <button type="button" onClick={() => setAsking(null)}>
            {say('time.signal.no')}
          </button>
        </p>
      ) : (
        <p class="acts">
          {round !== null && (
            <button type="button" class="main" onClick={() => (isEarly ? setAsking(round.number) : signal())}>
              {say('time.signal')}
            </button>
          )}
          <button type="button" onClick={() => act(does.what, does.said, undoes)}>
            {say(isPaused ? 'time.resume' : 'time.pause')}
          </button>
        </p>
      )}
    </div>
  );
}
