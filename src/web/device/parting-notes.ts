/**
 * Notes that were on their way into the browser's database when the page went. There is no time left for that
 * then: what is written in one step stays, and is put where it belongs when a page of the same name opens next.
 */
export interface PartingNotes {
  /** On its way from now on. */
  readonly begin: (key: string, value: unknown) => void;
  /** Arrived, unless a newer one of this key is on its way: what any page left under this key is older. */
  readonly end: (key: string, value: unknown) => void;
  /** What pages before this one left. */
  readonly left: () => readonly PartingNote[];
}

export interface PartingNote {
  readonly key: string;
  readonly value?: unknown;
}

/** A browser may refuse both to give its box and to let anything be put in: the note is then as lost as it would be without. */
const orNothing = <T>(ask: () => T, nothing: T): T => {
  try {
    return ask();
  } catch {
    return nothing;
  }
};

const boxOfBrowser = (): Storage | null =>
  orNothing(() => (typeof localStorage === 'undefined' ? null : localStorage), null);

/** `page`: tells when it goes, which it may do and come back. */
export function partingNotes(
  name: string,
  box: Storage | null = boxOfBrowser(),
  page: Pick<EventTarget, 'addEventListener'> | null = typeof window === 'undefined' ? null : window,
): PartingNotes {
  const underWay = new Map<string, unknown>();
  let isGone = false;
  const head = `${name}/parting/`;
  const leave = (key: string, value: unknown): void =>
    orNothing(() => box?.setItem(head + key, JSON.stringify({ value })), undefined);
  page?.addEventListener('pagehide', () => {
    isGone = true;
    for (const [key, value] of underWay) leave(key, value);
  });
  page?.addEventListener('pageshow', () => {
    isGone = false;
  });
  return {
    begin: (key, value) => {
      underWay.set(key, value);
      if (isGone) leave(key, value);
    },
    end: (key, value) => {
      if (underWay.get(key) !== value) return;
      underWay.delete(key);
      orNothing(() => box?.removeItem(head + key), undefined);
    },
    left: () => orNothing(() => notesIn(box, head), []),
  };
}

function notesIn(box: Storage | null, head: string): readonly PartingNote[] {
  if (box === null) return [];
  const keys = Array.from({ length: box.length }, (_, n) => box.key(n) ?? '');
  return keys
    .filter((each) => each.startsWith(head))
    .map((each) => ({ ...JSON.parse(box.getItem(each) ?? '{}'), key: each.slice(head.length) }));
}
