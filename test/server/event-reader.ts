/** One event of a stream. */
export interface StreamEvent {
  readonly event: string;
  readonly id: string | null;
  // biome-ignore lint/suspicious/noExplicitAny: an event is looked into, key by key
  readonly data: any;
  /** When it was read, by this process. */
  readonly at: number;
}

export interface EventReader {
  readonly status: number;
  readonly headers: Headers;
  readonly events: StreamEvent[];
  /** All that was sent, letter for letter. */
  readonly text: () => string;
  /** The first event that is as wanted, now or when it comes. */
  readonly first: (wanted: (event: StreamEvent) => boolean) => Promise<StreamEvent>;
  /** When the other end ended it. */
  readonly ended: Promise<void>;
  readonly close: () => void;
}

/** Listens to an event stream as a page does. */
export async function readEvents(
  url: string,
  headers: Readonly<Record<string, string>>,
): Promise<EventReader> {
  const abort = new AbortController();
  const answer = await fetch(url, { headers, signal: abort.signal });
  const events: StreamEvent[] = [];
  const waiting = new Set<() => void>();
  let text = '';
  const read = async (): Promise<void> => {
    let rest = '';
    const decoder = new TextDecoder();
    try {
      for await (const chunk of answer.body ?? []) {
        const piece = decoder.decode(chunk as Uint8Array, { stream: true });
        text += piece;
        rest += piece;
        const blocks = rest.split('\n\n');
        rest = blocks.pop() ?? '';
        events.push(...blocks.map(eventOf));
        for (const look of waiting) look();
      }
    } catch {
      // Closed from here, or cut off: it has ended either way.
    }
  };
  const ended = read();
  return {
    status: answer.status,
    headers: answer.headers,
    events,
    text: () => text,
    ended,
    close: () => abort.abort(),
    first: (wanted) =>
      new Promise((resolve) => {
        const look = (): void => {
          const found = events.find(wanted);
          if (found === undefined) return;
          waiting.delete(look);
          resolve(found);
        };
        waiting.add(look);
        look();
      }),
  };
}

function eventOf(block: string): StreamEvent {
  const field = (name: string): string | null =>
    block
      .split('\n')
      .find((line) => line.startsWith(`${name}: `))
      ?.slice(name.length + 2) ?? null;
  return {
    event: field('event') ?? 'message',
    id: field('id'),
    data: JSON.parse(field('data') ?? 'null'),
    at: performance.now(),
  };
}
