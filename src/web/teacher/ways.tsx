import { useEffect, useState } from 'preact/hooks';
import type { TeacherView } from './acts.ts';

export interface WaysProps extends Pick<TeacherView, 'say'> {
  readonly hasBegun: boolean;
  readonly visit: string;
}

const PLACES = ['go', 'groups', 'readings', 'arrival', 'plan', 'carried', 'door'] as const;

/** From here on all of them stand in a row or two, and hide nothing of the class. */
const ROOM = '(min-width: 48rem)';

/** Where to from here: parts of this page, and the pages beside it. On a narrow window they are folded. */
export function Ways({ say, hasBegun, visit }: WaysProps) {
  const [isWide, setWide] = useState(() => matchMedia(ROOM).matches);
  useEffect(() => {
    const room = matchMedia(ROOM);
    const follow = (): void => setWide(room.matches);
    room.addEventListener('change', follow);
    return () => room.removeEventListener('change', follow);
  }, []);
  const list = (
    <ul>
      {PLACES.filter((place) => hasBegun || place !== 'go').map((place) => (
        <li key={place}>
          <a href={`#${place}`}>{say(`nav.${place}`)}</a>
        </li>
      ))}
      <li>
        <a href={`/chart${location.search}`}>{say('nav.chart')}</a>
      </li>
      <li>
        <a href="/visits">{say('visits.page')}</a>
      </li>
      <li>
        <a href={`/discuss#visit=${visit}`}>{say('nav.talk')}</a>
      </li>
    </ul>
  );
  return (
    <nav aria-label={say('nav.label')}>
      {isWide ? (
        list
      ) : (
        <details>
          <summary>{say('nav.label')}</summary>
          {list}
        </details>
      )}
    </nav>
  );
}
