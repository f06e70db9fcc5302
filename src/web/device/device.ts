import type { Happening, Seat } from '../../store/entry.ts';
import { emptyOutbox, type Outbox, unanswered, written } from '../../store/outbox.ts';
import type { EntriesAnswer, JoinRequest, Parts, PassView } from '../../store/wire.ts';
import { type Answer, ask } from './ask.ts';
import { withParts } from './changed-parts.ts';
import { newDeviceName } from './device-name.ts';
import type { DeviceStore, Whose } from './device-store.ts';
import { followParts } from './live-parts.ts';
import { startSender } from './sender.ts';
import { serverClock } from './server-clock.ts';

/** What a page shows is made from this, and from nothing else. */
export interface DeviceState<P> {
  /** `looking`: not known yet. `outside`: has to join. `over`: the visit is. */
  readonly standing: 'looking' | 'outside' | 'inside' | 'over';
  readonly pass: HeldPass | null;
  readonly parts: Partial<P>;
  readonly outbox: Outbox;
  /** Entries that were stored after the parts shown were last told. */
  readonly fresh: ReadonlySet<string>;
  readonly isLive: boolean;
  readonly isKept: boolean;
}

export type HeldPass = PassView & { readonly visit: string; readonly device: string };

export interface Device<P> {
  readonly state: () => DeviceState<P>;
  readonly onChange: (listener: () => void) => () => void;
  readonly join: (code: string, seat: Seat) => Promise<Answer<PassView>>;
  readonly leave: () => Promise<void>;
  /** Kept when it answers, with the ids they have. */
  readonly write: (...what: readonly Happening[]) => Promise<readonly string[]>;
  /** The server's clock, or this device's own while that was never heard. */
  readonly now: () => number;
}

const NOTHING = emptyOutbox('', '');
const passNote = (as: string): string => `pass/${as}`;
/** A laptop may be the teacher's and show a group's page: two who write, each with a name and numbers of its own. */
const nameNote = (as: Seat['kind']): string => (as === 'teacher' ? 'device/teacher' : 'device');

/** One seat of this device: follows what it is shown, keeps what it writes, and sends it. */
export async function openDevice<P extends object>(as: Seat['kind'], store: DeviceStore): Promise<Device<P>> {
  const listeners = new Set<() => void>();
  const clock = serverClock();
  let state: DeviceState<P> = {
    standing: 'looking',
    pass: null,
    parts: {},
    outbox: NOTHING,
    fresh: new Set(),
    isLive: false,
    isKept: store.isKept(),
  };
  let whose: Whose = NOTHING;
  let stopFollowing = (): void => undefined;
  const tell = (change: Partial<DeviceState<P>>): void => {
    state = { ...state, ...change, isKept: store.isKept() };
    for (const listener of listeners) listener();
  };
  /** The last parts are kept a little later, so that a burst of them is written once. */
  let isKeeping = false;
  const keepParts = (): void => {
    if (isKeeping) return;
    isKeeping = true;
    setTimeout(() => {
      isKeeping = false;
      if (state.pass !== null) void store.keepNote(`parts/${as}/${state.pass.visit}`, state.parts);
    }, 500);
  };
  const otherTabs = typeof BroadcastChannel === 'undefined' ? null : new BroadcastChannel('handspike');
  const change = async (alter: (outbox: Outbox) => Outbox): Promise<void> => {
    if (state.pass === null) return;
    const before = new Set(storedIn(state.outbox));
    const outbox = await store.change(whose, alter);
    const fresh = [...state.fresh, ...storedIn(outbox).filter((id) => !before.has(id))];
    tell({ outbox, fresh: new Set(fresh) });
    otherTabs?.postMessage(null);
  };
  const sender = startSender({
    outbox: () => state.outbox,
    change,
    post: (request) => ask<EntriesAnswer>(`/api/entries?as=${as}`, request),
    clock: () => Date.now(),
    chance: () => Math.random(),
    later,
    onPassGone: () => tell({ standing: 'outside' }),
  });
  otherTabs?.addEventListener('message', async () => {
    if (state.pass !== null) tell({ outbox: await store.change(whose, (box) => box) });
  });

  const follow = (): void => {
    stopFollowing();
    stopFollowing = followParts(
      as,
      { listen: listenOf(), ask, later },
      {
        onParts: (changed) => {
          const parts = withParts<P>(state.parts, changed as Parts<P>);
          if ('clock' in changed) hearClock(changed.clock);
          const fresh = isOfReadings(changed) ? new Set<string>() : state.fresh;
          tell({ parts, fresh, standing: 'inside' });
          keepParts();
        },
        onClock: (now) => clock.heard(now, performance.now()),
        onLive: (isLive) => {
          if (isLive && !state.isLive) sender.now();
          if (isLive !== state.isLive) tell({ isLive });
        },
        onOver: () => tell({ standing: 'over', isLive: false }),
        onPassGone: () => tell({ standing: 'outside', isLive: false }),
      },
      as === 'teacher' ? (state.pass?.visit ?? null) : null,
    );
  };
  const hearClock = (part: unknown): void => {
    if (typeof part === 'object' && part !== null && 'now' in part && typeof part.now === 'number')
      clock.heard(part.now, performance.now());
  };

  /** Takes a seat, with what is kept of it from before. */
  const sit = async (pass: HeldPass, isNew: boolean): Promise<void> => {
    const kept = await store.note(`parts/${as}/${pass.visit}`);
    const isSameSeat = JSON.stringify(state.pass?.seat) === JSON.stringify(pass.seat);
    const last = (await store.note(passNote(as))) as HeldPass | undefined;
    const ofThisSeat = last?.visit === pass.visit && JSON.stringify(last.seat) === JSON.stringify(pass.seat);
    await store.keepNote(nameNote(as), pass.device);
    await store.keepNote(passNote(as), pass);
    const { visit, device } = pass;
    // Where the server knows this device and nothing is kept of it, numbers go on where none can have been.
    whose = { visit, device, from: isNew ? 0 : sinceSome(pass.now) };
    const outbox = await store.change(whose, (box) =>
      unanswered(
        box,
        box.items.map(({ entry }) => entry.id),
      ),
    );
    tell({
      pass,
      outbox,
      standing: 'inside',
      parts: isSameSeat ? state.parts : ofThisSeat ? ((kept ?? {}) as Partial<P>) : {},
    });
    follow();
    sender.now();
  };

  /** A teacher's pass has no name in it: the page makes one and keeps it. */
  const named = async (pass: PassView): Promise<PassView> =>
    as === 'teacher' ? { ...pass, visit: visitChosen() ?? pass.visit, device: await ownName() } : pass;
  const ownName = async (): Promise<string> => {
    const kept = await store.note(nameNote(as));
    return typeof kept === 'string' ? kept : newDeviceName();
  };

  const begin = async (): Promise<void> => {
    const answer = await ask<PassView>(`/api/pass?as=${as}`);
    if (answer.kind === 'answer') {
      const pass = await named(answer.body);
      if (!isHeld(pass)) return tell({ standing: 'outside' });
      clock.heard(pass.now, performance.now());
      return sit(pass, false);
    }
    if (answer.kind === 'refused' && answer.why === 'visit-over') return tell({ standing: 'over' });
    if (answer.kind === 'refused' && answer.status === 401) return tell({ standing: 'outside' });
    const last = (await store.note(passNote(as))) as HeldPass | undefined;
    if (last !== undefined) return sit(last, true);
    tell({ standing: 'outside' });
  };

  if (typeof addEventListener !== 'undefined') {
    addEventListener('online', () => sender.now());
    addEventListener('pageshow', () => sender.now());
  }
  void begin();

  return {
    state: () => state,
    onChange: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    join: async (code, seat) => {
      const device = await ownName();
      const request: JoinRequest = { code, device, seat };
      const answer = await ask<PassView>('/api/join', request);
      if (answer.kind === 'answer' && isHeld(answer.body)) {
        clock.heard(answer.body.now, performance.now());
        await sit(answer.body, true);
      }
      return answer;
    },
    leave: async () => {
      stopFollowing();
      await ask(`/api/leave?as=${as}`, {});
      await store.keepNote(passNote(as), undefined);
      tell({ standing: 'outside', parts: {}, isLive: false });
    },
    write: async (...what) => {
      const { pass } = state;
      if (pass === null) return [];
      const made = Date.now();
      let ids: readonly string[] = [];
      await change((box) => {
        const after = what.reduce((each, one) => written(each, pass.seat, one, made), box);
        ids = after.items.slice(box.items.length).map(({ entry }) => entry.id);
        return after;
      });
      sender.now();
      return ids;
    },
    now: () => clock.now(performance.now()) ?? Date.now(),
  };
}

/** Where several visits are open a teacher says in the address which one she means. */
const visitChosen = (): string | null =>
  typeof location === 'undefined' ? null : new URLSearchParams(location.search).get('visit');

const storedIn = ({ items }: Outbox): readonly string[] =>
  items.filter(({ whereabouts }) => whereabouts === 'stored').map(({ entry }) => entry.id);

/** Parts in which a reading stands, of whatever seat. */
const isOfReadings = (changed: object): boolean =>
  Object.keys(changed).some((part) => part === 'readings' || part.startsWith('table'));

const isHeld = (pass: PassView): pass is HeldPass => pass.visit !== null && pass.device !== null;

/** Seconds since 2020 by the server's clock: more than a device ever wrote, and more each time. */
const sinceSome = (now: number): number => Math.max(0, Math.floor((now - 1_577_836_800_000) / 1000));

const later = (wait: number, call: () => void): (() => void) => {
  const timer = setTimeout(call, wait);
  return () => clearTimeout(timer);
};

const listenOf = () =>
  typeof EventSource === 'undefined' ? null : (address: string) => new EventSource(address);
