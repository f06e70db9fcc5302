import { useState } from 'preact/hooks';
import type { Device } from '../device/device.ts';
import type { TeacherSay } from '../words/teacher-words.ts';
import type { Act, Said, Undo } from './acts.ts';

export interface WhatWasDone {
  readonly act: Act;
  readonly last: LastOfThem | null;
  readonly takeBack: () => void;
}

interface LastOfThem {
  readonly said: Said;
  readonly undo: Undo | null;
  /** The ids of what was written, once they are known. */
  readonly entries: Promise<readonly string[]> | null;
}

/** Writes the opposite of what was done, or takes the entry itself back. */
async function taken<P>(device: Device<P>, what: Undo['what'], entries: LastOfThem['entries'] = null) {
  if (what !== 'recall') return device.write(what);
  const ids = (await entries) ?? [];
  return device.write(...ids.map((of) => ({ kind: 'recalled', of }) as const));
}

/** Writes what is done on a page, and keeps the last of it so that it can be said and undone. */
export function useWhatWasDone<P>(device: Device<P>): WhatWasDone {
  const [last, setLast] = useState<WhatWasDone['last']>(null);
  return {
    last,
    act: (what, said, undo) => {
      const entries = device.write(what);
      setLast({ said, undo: undo ?? null, entries });
    },
    takeBack: () => {
      const undo = last?.undo ?? null;
      if (undo === null) return;
      void taken(device, undo.what, last?.entries);
      setLast({ said: undo.said, undo: null, entries: null });
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
