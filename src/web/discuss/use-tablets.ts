import { useEffect, useRef, useState } from 'preact/hooks';
import type { WallNow } from '../../store/entry.ts';
import type { EntriesAnswer, EntriesRequest } from '../../store/wire.ts';
import { ask } from '../device/ask.ts';
import { newDeviceName } from '../device/device-name.ts';
import type { TalkNow } from './talk-now.ts';

/** Whether the groups' tablets were told where the talk is. */
export type Tablets = 'off' | 'told' | 'away';

/**
 * Tells the server what the wall of a visit shows, so that the groups' tablets follow it; `null` for the visit lets them
 * go back to their tables. What could not be told is told with the next move.
 */
export function useTablets(visit: string | null, { talk, at, isOpen }: TalkNow, names: boolean): Tablets {
  const [stands, setStands] = useState<Tablets>('off');
  const writer = useRef({ device: newDeviceName(), sequence: 0 });
  const question = talk?.questions[at]?.kind;
  const tell = async (of: string, shows: WallNow | null): Promise<boolean> => {
    writer.current.sequence += 1;
    const { device, sequence } = writer.current;
    const made = Date.now();
    const answer = await ask<EntriesAnswer>('/api/entries?as=teacher', {
      sent: made,
      entries: [
        {
          id: `${device}.${sequence}`,
          visit: of,
          device,
          sequence,
          made,
          seat: { kind: 'teacher' },
          what: { kind: 'wall', shows },
        },
      ],
    } satisfies EntriesRequest);
    return answer.kind === 'answer' && answer.body.refused.length === 0;
  };
  useEffect(() => {
    if (visit === null || question === undefined) return;
    void tell(visit, { question, isOpen, names }).then((isTold) => setStands(isTold ? 'told' : 'away'));
  }, [visit, question, isOpen, names]);
  useEffect(() => {
    if (visit === null) return undefined;
    return () => {
      setStands('off');
      void tell(visit, null);
    };
  }, [visit]);
  return stands;
}
