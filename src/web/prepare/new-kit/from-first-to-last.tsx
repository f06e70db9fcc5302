import { useState } from 'preact/hooks';
import { evenShare } from '../../../core/quantities/even-share.ts';
import type { Question } from '../../engine/question-wire.ts';
import type { NewKitSay } from '../../words/new-kit-words.ts';

export interface FromFirstToLastProps {
  readonly say: NewKitSay;
  readonly between: NonNullable<Question['between']>;
  readonly id: string;
  /** Takes the length between each and the next, as it is written in the file. */
  readonly give: (each: string) => void;
}

/** Nobody measures from one hole to the next: the way from the first to the last is measured once, and shared. */
export function FromFirstToLast({ say, between: { count, decimal }, id, give }: FromFirstToLastProps) {
  const [whole, setWhole] = useState('');
  const each = count === null ? null : evenShare(whole, count - 1, decimal);
  const said =
    count === null
      ? say('newkit.between.count')
      : whole.trim() === ''
        ? say('newkit.between.so-many', { count })
        : each === null
          ? say('newkit.between.not-read')
          : say('newkit.between.each', { each });
  return (
    <div class="whole">
      <label for={id}>{say('newkit.between')}</label>
      <input
        id={id}
        value={whole}
        disabled={count === null}
        autocomplete="off"
        spellcheck={false}
        aria-describedby={`${id}-says`}
        onInput={({ currentTarget: { value } }) => {
          setWhole(value);
          const next = count === null ? null : evenShare(value, count - 1, decimal);
          if (next !== null) give(next);
        }}
      />
      <small id={`${id}-says`} aria-live="polite">
        {said}
      </small>
    </div>
  );
}
