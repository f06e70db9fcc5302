import { Worker } from 'node:worker_threads';
import type { Stored } from '../../store/entry.ts';
import type { Desk, DeskListener, OpenVisit, SeatParts } from './desk.ts';
import type { FromThread, ToThread } from './thread-messages.ts';

export interface ThreadDeskOptions {
  /** The program of the thread: `dist/desk.js`. */
  readonly script: string | URL;
  /** Told when a thread has ended by a fault; the next one has begun by then. */
  readonly onFault?: (fault: Error) => void;
}

interface Waiting {
  readonly resolve: (parts: SeatParts | null) => void;
  readonly reject: (fault: Error) => void;
}

/** Oftener than this in a minute a thread is not begun anew: something is wrong that another one would meet too. */
const MOST_THREADS = 5;
const MINUTE = 60_000;

/** A desk in a thread of its own. A thread that ends by a fault is begun anew with all visits and their entries. */
export function threadDesk({ script, onFault = () => undefined }: ThreadDeskOptions): Desk {
  const opened = new Map<string, OpenVisit>();
  const taken = new Map<string, Map<string, Stored>>();
  const listeners = new Set<DeskListener>();
  const waiting = new Map<number, Waiting>();
  const begun: number[] = [];
  let last = 0;
  let isClosed = false;
  let worker: Worker | null = begin();

  function begin(): Worker {
    begun.push(performance.now());
    const next = new Worker(script);
    next.on('message', heard);
    next.on('error', (fault) => {
      if (worker === next) ended(fault instanceof Error ? fault : new Error(String(fault)));
    });
    next.on('exit', (code) => {
      if (worker === next && !isClosed) ended(new Error(`the desk's thread ended with ${code}`));
    });
    return next;
  }

  function heard(message: FromThread): void {
    if (message.tell === 'change') {
      for (const listener of listeners) listener(message.visit, message.audience, message.parts);
      return;
    }
    const asked = waiting.get(message.number);
    waiting.delete(message.number);
    if (message.tell === 'answer') asked?.resolve(message.parts);
    else asked?.reject(new Error(message.what));
  }

  function ended(fault: Error): void {
    for (const { reject } of waiting.values()) reject(fault);
    waiting.clear();
    const since = performance.now() - MINUTE;
    worker = begun.filter((when) => when > since).length < MOST_THREADS ? begin() : null;
    for (const [visit, each] of opened) {
      send({ ask: 'open', number: 0, opened: each });
      send({ ask: 'take', visit, stored: [...(taken.get(visit)?.values() ?? [])] });
    }
    onFault(fault);
  }

  const send = (message: ToThread): void => worker?.postMessage(message);
  const ask = (message: (number: number) => ToThread): Promise<SeatParts | null> =>
    new Promise((resolve, reject) => {
      if (worker === null || isClosed) {
        reject(new Error('the desk is closed'));
        return;
      }
      last += 1;
      waiting.set(last, { resolve, reject });
      send(message(last));
    });

  return {
    open: async (visit) => {
      opened.set(visit.visit, visit);
      await ask((number) => ({ ask: 'open', number, opened: visit }));
    },
    take: (visit, stored) => {
      const own = taken.get(visit) ?? new Map<string, Stored>();
      taken.set(visit, own);
      for (const each of stored) own.set(each.entry.id, each);
      send({ ask: 'take', visit, stored });
    },
    parts: async (visit, seat) => (await ask((number) => ({ ask: 'parts', number, visit, seat }))) ?? {},
    onChange: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    close: async () => {
      isClosed = true;
      for (const { reject } of waiting.values()) reject(new Error('the desk is closed'));
      waiting.clear();
      listeners.clear();
      await worker?.terminate();
    },
  };
}
