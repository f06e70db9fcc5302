import type { Whereabouts } from '../../store/outbox.ts';
import type { Say, WordKey } from '../words/words.ts';
import type { ListedReading } from './listed-reading.ts';

export interface ReadingActs {
  readonly correct: (reading: ListedReading) => void;
  readonly again: (reading: ListedReading) => void;
  readonly strike: (reading: ListedReading) => void;
  readonly restore: (reading: ListedReading) => void;
}

export interface ReadingListProps {
  readonly say: Say;
  readonly readings: readonly ListedReading[];
  /** `null`: only to look at. */
  readonly acts: ReadingActs | null;
}

const REFUSALS: Readonly<Record<string, WordKey>> = { handed: 'refused.handed', over: 'refused.over' };

/** A group's own readings, the last one first, each with where it is. */
export function ReadingList({ say, readings, acts }: ReadingListProps) {
  return (
    <section class="readings" aria-labelledby="readings">
      <h2 id="readings">{say('list.heading')}</h2>
      {readings.length === 0 && <p class="hint">{say('list.empty')}</p>}
      <ol reversed>
        {[...readings].reverse().map((reading) => (
          <li key={reading.id} class={reading.again !== null && !reading.isVoid ? 'again' : ''}>
            <p class="what">
              <strong>{reading.setup}</strong>{' '}
              {reading.isVoid ? <s>{reading.written}</s> : <span class="num">{reading.written}</span>}
              {reading.isVoid && <span class="hint"> {say('list.void')}</span>}
              {reading.before.length > 0 && (
                <span class="hint">
                  {' '}
                  {say('list.before')}{' '}
                  {reading.before.map((old, n) => (
                    <s key={`${n} ${old}`}>{old} </s>
                  ))}
                </span>
              )}
            </p>
            <Where say={say} whereabouts={reading.whereabouts} />
            {reading.whereabouts === 'refused' && (
              <p class="refusal">{say(REFUSALS[reading.refusal ?? ''] ?? 'refused.other')}</p>
            )}
            {reading.again !== null && !reading.isVoid && (
              <div class="tell">
                <p>
                  <strong>{reading.again.say}</strong>
                </p>
                {reading.again.tryThis !== null && (
                  <p>
                    {say('list.try')} {reading.again.tryThis}
                  </p>
                )}
                {acts !== null && (
                  <button type="button" onClick={() => acts.again(reading)}>
                    {say('list.again')}
                  </button>
                )}
              </div>
            )}
            {acts !== null && <Acts say={say} reading={reading} acts={acts} />}
          </li>
        ))}
      </ol>
    </section>
  );
}

interface ActsProps {
  readonly say: Say;
  readonly reading: ListedReading;
  readonly acts: ReadingActs;
}

function Acts({ say, reading, acts }: ActsProps) {
  const of = say('list.of', { setup: reading.setup, written: reading.written });
  const named = (key: WordKey): string => `${say(key)}, ${of}`;
  return (
    <p class="acts">
      {reading.isVoid ? (
        <button
          type="button"
          class="plain"
          aria-label={named('list.restore')}
          onClick={() => acts.restore(reading)}
        >
          {say('list.restore')}
        </button>
      ) : (
        <>
          <button
            type="button"
            class="plain"
            aria-label={named('list.correct')}
            onClick={() => acts.correct(reading)}
          >
            {say('list.correct')}
          </button>
          <button
            type="button"
            class="plain"
            aria-label={named('list.strike')}
            onClick={() => acts.strike(reading)}
          >
            {say('list.strike')}
          </button>
        </>
      )}
    </p>
  );
}

/** On this device, sent, stored: a word, and a shape that fills up. */
const Where = ({ say, whereabouts }: { readonly say: Say; readonly whereabouts: Whereabouts }) => (
  <p class={`where ${whereabouts}`}>
    <svg viewBox="0 0 16 16" aria-hidden="true" fill="none" stroke="currentColor" stroke-width="1.8">
      {whereabouts === 'here' && <rect x="2" y="2" width="12" height="12" stroke-dasharray="3 2" />}
      {whereabouts === 'sent' && <path d="M2 2h12v12H2ZM5 8h6M8.5 5.5 11 8l-2.5 2.5" />}
      {whereabouts === 'stored' && <rect x="2" y="2" width="12" height="12" fill="currentColor" />}
      {whereabouts === 'stored' && <path d="m4.8 8.2 2.3 2.3 4.2-4.7" stroke="var(--sheet)" />}
      {whereabouts === 'refused' && <path d="M2 2h12v12H2ZM4 4l8 8M12 4l-8 8" />}
    </svg>
    {say(`where.${whereabouts}`)}
  </p>
);
