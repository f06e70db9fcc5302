import { useEffect, useRef } from 'preact/hooks';
import type { WallPart } from '../../store/wire.ts';
import type { Say } from '../words/words.ts';

export interface WallOnTabletProps {
  readonly say: Say;
  readonly label: string;
  readonly wall: WallPart;
  readonly leave: () => void;
}

/** The question that is on the wall: it changes when the wall does. */
export function WallOnTablet({ say, label, wall, leave }: WallOnTabletProps) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    scrollTo(0, 0);
    heading.current?.focus({ preventScroll: true });
  }, [wall.ask]);
  return (
    <main class="on-wall">
      <p class="over">
        {wall.number} · {say('group.label', { group: label })}
      </p>
      <h1 ref={heading} tabIndex={-1}>
        {wall.ask}
      </h1>
      <Below html={wall.html} />
      <p>
        <button type="button" class="plain" onClick={leave}>
          {say('wall.leave')}
        </button>
      </p>
    </main>
  );
}

// Our own server made the markup, and escapes every text of a file in it.
const Below = ({ html }: Pick<WallPart, 'html'>) => (
  <div class="talk-parts" aria-live="polite" dangerouslySetInnerHTML={{ __html: html }} />
);
