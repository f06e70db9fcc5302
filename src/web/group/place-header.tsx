import { useEffect, useState } from 'preact/hooks';
import type { ClockPart, RouteStop } from '../../store/wire.ts';
import type { Say } from '../words/words.ts';
import { type GroupPlace, timeLeft } from './whereabouts-of-group.ts';

export interface PlaceHeaderProps {
  readonly say: Say;
  readonly language: string;
  readonly label: string;
  readonly title: string;
  readonly clock: ClockPart | undefined;
  readonly place: GroupPlace;
  /** The table whose card is shown. */
  readonly table: string | null;
  readonly isLive: boolean;
  readonly now: () => number;
  readonly onLook: (table: string) => void;
}

const SHAPES: Readonly<Record<RouteStop['state'], string>> = { done: '✓', here: '▶', next: '○' };

/** Who we are, where on our way, and until when. */
export function PlaceHeader(props: PlaceHeaderProps) {
  const { say, label, title, place, table, isLive, onLook } = props;
  return (
    <header class="place">
      <div class="who">
        <h1>{say('group.label', { group: label })}</h1>
        <p class="over">{title}</p>
        <p class={isLive ? 'line live' : 'line away'}>
          <span aria-hidden="true">{isLive ? '●' : '○'}</span> {say(isLive ? 'line.live' : 'line.away')}
        </p>
      </div>
      <Clock {...props} />
      {place.stops.length > 0 && (
        <nav aria-label={say('route.heading')}>
          <ol class="route">
            {place.stops.map((stop) => (
              <li key={stop.table}>
                <button
                  type="button"
                  class={stop.state}
                  aria-current={stop.table === table ? 'page' : undefined}
                  onClick={() => onLook(stop.table)}
                >
                  <span class="shape" aria-hidden="true">
                    {SHAPES[stop.state]}
                  </span>
                  <span class="mark">
                    <span class="unseen">{say('route.table', { table: '' })}</span>
                    {stop.table}
                  </span>
                  <span class="state">{say(`route.${stop.state}`)}</span>
                </button>
              </li>
            ))}
          </ol>
        </nav>
      )}
    </header>
  );
}

function Clock({ say, language, clock, place, now }: PlaceHeaderProps) {
  const [, tick] = useState(0);
  useEffect(() => {
    const timer = setInterval(() => tick((n) => n + 1), 1000);
    return () => clearInterval(timer);
  }, []);
  if (clock === undefined) return null;
  if (clock.begun === null) return <p class="clock">{say('clock.not-begun')}</p>;
  if (clock.pausedSince !== null) return <p class="clock">{say('clock.paused')}</p>;
  const found = timeLeft(clock, place.here, now());
  if (found === null) return null;
  const minutes = Math.floor(found.left / 60_000);
  const time = new Date(found.until).toLocaleTimeString(language, { hour: 'numeric', minute: '2-digit' });
  const left =
    found.left <= 0 ? say('clock.now') : minutes < 1 ? say('clock.last') : say('clock.left', { minutes });
  return (
    <p class="clock">
      <strong>{left}</strong>
      <span>
        {say('clock.until', { time })}
        {clock.round !== null &&
          ` · ${say('clock.round', { number: clock.round.number, of: clock.round.of })}`}
      </span>
    </p>
  );
}
