import { useState } from 'preact/hooks';
import type { Edit } from '../../engine/prepare-wire.ts';
import type { NewKitSay } from '../../words/new-kit-words.ts';

export interface TakeOutProps {
  readonly say: NewKitSay;
  readonly what: string;
  readonly place: Pick<Edit, 'file' | 'path'>;
  readonly edit: (edit: Edit) => void;
}

/** Takes a part, a table or a setup out of its file: asked once, and undone like any other step. */
export function TakeOut({ say, what, place, edit }: TakeOutProps) {
  const [isAsked, setAsked] = useState(false);
  return (
    <button
      type="button"
      class="plain"
      onBlur={() => setAsked(false)}
      onClick={() => {
        if (isAsked) edit({ ...place, value: '' });
        setAsked(!isAsked);
      }}
    >
      {say(isAsked ? 'newkit.take-out.sure' : 'newkit.take-out', { what })}
    </button>
  );
}
