import { useState } from 'preact/hooks';
import type { Device } from '../device/device.ts';
import type { TeacherSay } from '../words/teacher-words.ts';
import type { Act, Said, Undo } from './acts.ts';

export interface WhatWasDone {
  readonly act: Act;
  readonly last: { readonly said: Said; readonly undo: Undo | null } | null;
  readonly takeBack: () => void;
}

/** Writes what is done on a page, and keeps the last of it so that it can be said and undone. */
export function useWhatWasDone<P>(device: Device<P>): WhatWasDone {
  const [last, setLast] = useState<WhatWasDone['last']>(null);
  return {
    last,
    act: (what, said, undo) => {
      void device.write(what);
      setLast({ said, undo: undo ?? null });
    },
    takeBack: () => {
      const undo = last?.undo ?? null;
      if (undo === null) return;
      void device.write(undo.what);
      setLast({ said: undo.said, undo: null });
    },
  };
}

/** What was done last, and the way back. */
export const LastDone = ({
  say,
  last,
  takeBack,
}: Pick<WhatWasDone, 'last' | 'takeBack'> & { readonly say: TeacherSay }) => (
  <>
    <p role="status">{last === null ? '' : say(last.said.key, last.said.facts)}</p>
    {last !== null && last.undo !== null && (
      <button type="button" onClick={takeBack}>
        {say('said.undo')}
      </button>
    )}
  </>
);
