import { useEffect, useRef, useState } from 'preact/hooks';
import type { DeviceStore } from '../device/device-store.ts';
import { NO_TALK, type TalkNow } from './talk-now.ts';

/** What windows of this browser say to each other: where the talk is, or that one has just been opened. */
type Told = { readonly say: 'now'; readonly now: TalkNow } | { readonly say: 'opened' };

export interface SharedTalk {
  readonly now: TalkNow;
  readonly change: (alter: (now: TalkNow) => TalkNow) => void;
}

/** One talk in all windows of a browser: each follows whichever moved last, and a new one catches up. */
export function useSharedTalk(store: DeviceStore, first: TalkNow): SharedTalk {
  const [now, setNow] = useState(first);
  const latest = useRef(now);
  const channel = useRef<BroadcastChannel | null>(null);
  const show = (next: TalkNow): void => {
    latest.current = next;
    setNow(next);
  };
  const tell = (told: Told): void => channel.current?.postMessage(told);
  useEffect(() => {
    const own = new BroadcastChannel('handspike-talk');
    channel.current = own;
    own.onmessage = ({ data }: MessageEvent<Told>) => {
      if (data.say === 'now') show(data.now);
      else if (latest.current.talk !== null) tell({ say: 'now', now: latest.current });
    };
    tell({ say: 'opened' });
    return () => own.close();
  }, []);
  return {
    now,
    change: (alter) => {
      const next = alter(latest.current);
      if (next === latest.current) return;
      show(next);
      tell({ say: 'now', now: next });
      void store.keepNote('now', next);
    },
  };
}

/** Where the talk was when this browser was last here. */
export async function keptTalk(store: DeviceStore): Promise<TalkNow> {
  const kept = (await store.note('now')) as Partial<TalkNow> | undefined;
  return Array.isArray(kept?.talk?.questions) && typeof kept.at === 'number' ? (kept as TalkNow) : NO_TALK;
}
