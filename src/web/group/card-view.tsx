import type { GroupCard } from '../../store/wire.ts';
import type { Say } from '../words/words.ts';
import type { ListedReading } from './listed-reading.ts';

export interface CardViewProps {
  readonly say: Say;
  readonly card: GroupCard;
  readonly setup: GroupCard['setups'][number];
  readonly readings: readonly ListedReading[];
  readonly onChoose: (mark: string) => void;
  readonly onToPad: (() => void) | null;
}

/** The table's card, one setup at a time; its pieces are made by the server and come from nowhere else. */
export function CardView({ say, card, setup, readings, onChoose, onToPad }: CardViewProps) {
  const written = (mark: string): number =>
    readings.filter((each) => each.setup === mark && !each.isVoid).length;
  return (
    <section class="card" aria-label={card.title}>
      <Piece html={card.html} />
      <h2 class="small" id="setups">
        {say('setups.heading')}
      </h2>
      <ul class="setups" aria-labelledby="setups">
        {card.setups.map(({ mark, isExtra }) => {
          const many = written(mark);
          return (
            <li key={mark}>
              <button type="button" aria-pressed={mark === setup.mark} onClick={() => onChoose(mark)}>
                <strong>{mark}</strong>
                <span>
                  {many === 0 ? `○ ${say('setups.none')}` : `✓ ${say('setups.some', { many })}`}
                  {isExtra && ` · ${say('setups.extra')}`}
                </span>
              </button>
            </li>
          );
        })}
      </ul>
      <Piece html={setup.html} />
      {onToPad !== null && (
        <button type="button" class="main to-pad" onClick={onToPad}>
          {say('setups.to-pad', { setup: setup.mark })}
        </button>
      )}
    </section>
  );
}

// Our own server made the markup, and escapes every text of a file in it.
const Piece = ({ html }: { readonly html: string }) => <div dangerouslySetInnerHTML={{ __html: html }} />;
