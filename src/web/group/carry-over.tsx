import { useEffect, useId, useState } from 'preact/hooks';
import { carriedLine, carriedText } from '../../store/carried.ts';
import type { Entry } from '../../store/entry.ts';
import type { Outbox } from '../../store/outbox.ts';
import type { Say } from '../words/words.ts';

/** What of an outbox can be carried by hand: readings, and what became of them, that are not stored. */
export const notStored = ({ items }: Outbox): readonly Entry[] =>
  items.flatMap(({ entry, whereabouts }) =>
    whereabouts !== 'stored' && carriedLine(entry) !== null ? [entry] : [],
  );

/** So many to a picture, that a plain camera still reads it. */
const OF_A_PICTURE = 12;

/** Loaded while there is a network, for when there is none. */
const drawer = () => import('qrcode');
export const bringDrawer = (): void => void drawer().catch(() => undefined);

export interface CarryOverProps {
  readonly say: Say;
  readonly entries: readonly Entry[];
  /** Where it is known already that nothing is being stored. */
  readonly isAtOnce: boolean;
}

/** Longer than a delivery takes where there is a network. */
const WHILE_SENDING = 8000;

/** Readings that nobody has but this device: as pictures for a camera, and as lines to read out. */
export function CarryOver({ say, entries, isAtOnce }: CarryOverProps) {
  const [n, turn] = useState(0);
  const id = useId();
  const [isLong, setLong] = useState(false);
  const isAny = entries.length > 0;
  useEffect(() => {
    setLong(false);
    if (!isAny) return;
    const timer = setTimeout(() => setLong(true), WHILE_SENDING);
    return () => clearTimeout(timer);
  }, [isAny]);
  const pages = Math.ceil(entries.length / OF_A_PICTURE);
  const page = Math.min(n, Math.max(0, pages - 1));
  if (pages === 0 || !(isAtOnce || isLong)) return null;
  const shown = entries.slice(page * OF_A_PICTURE, (page + 1) * OF_A_PICTURE);
  return (
    <details class="carry">
      <summary>{say('carry.heading', { many: entries.length })}</summary>
      <p>{say('carry.say')}</p>
      <Picture text={carriedText(shown) ?? ''} label={say('carry.picture')} none={say('carry.no-picture')} />
      {pages > 1 && (
        <p class="acts">
          <span aria-live="polite">{say('carry.page', { page: page + 1, pages })}</span>
          <button type="button" onClick={() => turn((page + 1) % pages)}>
            {say('carry.turn')}
          </button>
        </p>
      )}
      <p id={`${id}-lines`}>{say('carry.lines')}</p>
      <ol aria-labelledby={`${id}-lines`}>
        {shown.map((entry) => (
          <li key={entry.id}>
            <code>{carriedLine(entry)}</code>
          </li>
        ))}
      </ol>
    </details>
  );
}

interface PictureProps {
  readonly text: string;
  readonly label: string;
  /** Where the drawer was never loaded. */
  readonly none: string;
}

/** Dark squares on white whatever the page's colours are: a camera wants it so. */
function Picture({ text, label, none }: PictureProps) {
  const [drawn, setDrawn] = useState<{ readonly size: number; readonly path: string } | null | 'none'>(null);
  useEffect(() => {
    let isGone = false;
    drawer().then(
      ({ create }) => {
        const { size, data } = create(text, { errorCorrectionLevel: 'M' }).modules;
        const squares = [...data].map((dark, at) =>
          dark ? `M${at % size} ${Math.floor(at / size)}h1v1h-1z` : '',
        );
        if (!isGone) setDrawn({ size, path: squares.join('') });
      },
      () => isGone || setDrawn('none'),
    );
    return () => {
      isGone = true;
    };
  }, [text]);
  if (drawn === null) return null;
  if (drawn === 'none') return <p>{none}</p>;
  const side = drawn.size + 8;
  return (
    <svg
      class="carried"
      role="img"
      aria-label={label}
      viewBox={`-4 -4 ${side} ${side}`}
      shape-rendering="crispEdges"
    >
      <path fill="#fff" d={`M-4 -4h${side}v${side}h-${side}z`} />
      <path fill="#000" d={drawn.path} />
    </svg>
  );
}
