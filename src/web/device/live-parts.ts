import type { Seat } from '../../store/entry.ts';
import type { Answer } from './ask.ts';

/** What of a stream of events is used here. */
export interface EventSourceLike {
  addEventListener(name: string, listener: (event: { readonly data?: unknown }) => void): void;
  close(): void;
}

export interface LiveWorld {
  /** `null` where the browser has no event streams. */
  readonly listen: ((address: string) => EventSourceLike) | null;
  readonly ask: (address: string) => Promise<Answer<object>>;
  readonly later: (wait: number, call: () => void) => () => void;
}

export interface LiveListener {
  readonly onParts: (changed: object) => void;
  readonly onClock: (now: number) => void;
  /** Whether the server was heard of lately. */
  readonly onLive: (isLive: boolean) => void;
  readonly onOver: () => void;
  readonly onPassGone: () => void;
}

/** The server lets itself be heard every three seconds: two beats missed are asked about. */
const SILENCE = 6500;
/** So long an answer may take before a page says that nobody is there: in all below ten seconds. */
const GRACE = 3000;
const BETWEEN_ASKING = 4000;

/**
 * Follows what the server shows a seat: by its stream, and by asking again and again while that does
 * not come through.
 */
export function followParts(
  as: Seat['kind'],
  world: LiveWorld,
  listener: LiveListener,
  visit: string | null = null,
): () => void {
  /** A teacher stays with her visit when another is opened. */
  const query = `as=${as}${visit === null ? '' : `&visit=${encodeURIComponent(visit)}`}`;
  let isStopped = false;
  let source: EventSourceLike | null = null;
  let callOff = (): void => undefined;

  const heard = (): void => {
    callOff();
    callOff = world.later(SILENCE, lost);
    listener.onLive(true);
  };
  const lost = (): void => {
    source?.close();
    source = null;
    // A beat that was late is no reason to say anything: whoever answers is there.
    const callOffSaying = world.later(GRACE, () => listener.onLive(false));
    void askOnce().finally(callOffSaying);
  };
  /** Asks once; where that works the stream is tried again, else it asks again later. */
  const askOnce = async (): Promise<void> => {
    if (isStopped) return;
    const answer = await world.ask(`/api/parts?${query}`);
    if (isStopped) return;
    if (answer.kind === 'answer') {
      listener.onLive(true);
      listener.onParts(answer.body);
      if (world.listen !== null) return open();
    } else if (answer.kind === 'refused' && answer.status === 401) return listener.onPassGone();
    else if (answer.kind === 'refused' && answer.why === 'visit-over') return listener.onOver();
    else listener.onLive(false);
    callOff = world.later(BETWEEN_ASKING, () => void askOnce());
  };
  const open = (): void => {
    if (isStopped || world.listen === null) return;
    const opened = world.listen(`/api/stream?${query}`);
    source = opened;
    const on = (name: string, use: (data: object) => void): void =>
      opened.addEventListener(name, ({ data }) => {
        if (source !== opened) return;
        heard();
        use(read(data));
      });
    on('parts', listener.onParts);
    on('beat', (data) => {
      if ('now' in data && typeof data.now === 'number') listener.onClock(data.now);
    });
    on('over', () => {
      stop();
      listener.onOver();
    });
    opened.addEventListener('error', () => {
      if (source !== opened) return;
      opened.close();
      source = null;
      callOff();
      callOff = world.later(1000, () => void askOnce());
      listener.onLive(false);
    });
    callOff();
    callOff = world.later(SILENCE, lost);
  };
  const stop = (): void => {
    isStopped = true;
    callOff();
    source?.close();
    source = null;
  };
  void askOnce();
  return stop;
}

function read(data: unknown): object {
  try {
    const found: unknown = JSON.parse(String(data));
    return typeof found === 'object' && found !== null ? found : {};
  } catch {
    return {};
  }
}
