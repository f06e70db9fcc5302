import {
  delivery,
  type Outbox,
  refused,
  sent,
  stored,
  unanswered,
  untilNextTry,
} from '../../store/outbox.ts';
import type { EntriesAnswer, EntriesRequest } from '../../store/wire.ts';
import type { Answer } from './ask.ts';
import type { Alter } from './device-store.ts';

/** All that a sender needs of the world; a test hands in its own. */
export interface SenderWorld {
  readonly outbox: () => Outbox;
  readonly change: (alter: Alter) => Promise<unknown>;
  readonly post: (request: EntriesRequest) => Promise<Answer<EntriesAnswer>>;
  readonly clock: () => number;
  /** From 0 to 1. */
  readonly chance: () => number;
  /** Calls later; answers how to call it off. */
  readonly later: (wait: number, call: () => void) => () => void;
  /** The server knows this device no longer: it has to join again, and keeps what it has. */
  readonly onPassGone: () => void;
}

export interface Sender {
  /** There is something to send, or a reason to hope: tries at once. */
  readonly now: () => void;
  readonly stop: () => void;
}

/**
 * Sends what the outbox holds until all of it is stored or refused. Nothing hangs on when, how often or
 * in what order a delivery arrives.
 */
export function startSender(world: SenderWorld): Sender {
  let isBusy = false;
  let isStopped = false;
  let isAskedAgain = false;
  let failures = 0;
  let isOneByOne = false;
  let callOff = (): void => undefined;

  const turn = async (): Promise<void> => {
    callOff();
    if (isStopped) return;
    if (isBusy) {
      isAskedAgain = true;
      return;
    }
    const all = delivery(world.outbox());
    const entries = isOneByOne ? all.slice(0, 1) : all;
    if (entries.length === 0) {
      isOneByOne = false;
      return;
    }
    isBusy = true;
    isAskedAgain = false;
    const ids = entries.map(({ id }) => id);
    await world.change((outbox) => sent(outbox, ids));
    const answer = await world.post({ sent: world.clock(), entries });
    const wait = await taken(answer, ids);
    isBusy = false;
    if (isStopped) return;
    if (wait === 0 || isAskedAgain) void turn();
    else if (wait !== null) callOff = world.later(wait, () => void turn());
  };

  /** Notes what came of a delivery; answers how long to wait for the next, `null` for good. */
  const taken = async (answer: Answer<EntriesAnswer>, ids: readonly string[]): Promise<number | null> => {
    if (answer.kind === 'answer') {
      failures = 0;
      const { body } = answer;
      await world.change((outbox) =>
        body.refused.reduce(
          (box, { id, why }) => refused(box, [id], why),
          unanswered(stored(outbox, body.stored), ids),
        ),
      );
      return body.stored.length + body.refused.length > 0 ? 0 : untilNextTry(0, world.chance());
    }
    const isUnreadable = answer.kind === 'refused' && [400, 413, 422].includes(answer.status);
    if (isUnreadable && ids.length === 1) {
      await world.change((outbox) => refused(outbox, ids, 'malformed'));
      return 0;
    }
    await world.change((outbox) => unanswered(outbox, ids));
    if (isUnreadable) {
      // One of them can't be read: it must not hold up the others.
      isOneByOne = true;
      return 0;
    }
    if (answer.kind === 'refused' && answer.status === 401) {
      world.onPassGone();
      return null;
    }
    const wait = untilNextTry(failures, world.chance());
    failures += 1;
    return answer.kind === 'refused' && answer.wait !== null ? Math.max(answer.wait, wait) : wait;
  };

  return {
    now: () => {
      failures = 0;
      void turn();
    },
    stop: () => {
      isStopped = true;
      callOff();
    },
  };
}
