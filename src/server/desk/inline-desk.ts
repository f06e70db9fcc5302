import { sentence } from '../../documents/sentences/sentence.ts';
import type { Stored } from '../../store/entry.ts';
import { type LastShown, lastShown } from './changed-parts.ts';
import { audienceOf, type Desk, type DeskListener, type OpenVisit, type SeatParts } from './desk.ts';
import { type PartsOfVisit, partsOfVisit, type ShownParts } from './parts-of-visit.ts';
import { type VisitAtDesk, visitAtDesk } from './visit-at-desk.ts';

export interface InlineDeskOptions {
  /** The server's clock. */
  readonly clock?: () => number;
  /** Entries are gathered for so many milliseconds before anything is worked out. */
  readonly gather?: number;
  /** Who is late is told without anybody writing: looked at every so many milliseconds. */
  readonly look?: number;
  /** From the files to a visit, and from entries to parts. */
  readonly prepare?: (opened: OpenVisit) => { readonly visit: VisitAtDesk; readonly parts: PartsOfVisit };
}

interface AtDesk {
  readonly visit: VisitAtDesk;
  readonly parts: PartsOfVisit;
  readonly last: LastShown;
  shown: ShownParts;
  timer: ReturnType<typeof setTimeout> | null;
  isNew: boolean;
}

const prepared = (opened: OpenVisit) => {
  const visit = visitAtDesk(opened);
  return { visit, parts: partsOfVisit(visit) };
};

/** A desk that works where it is called: in a thread of its own, or in a test. */
export function inlineDesk(options: InlineDeskOptions = {}): Desk {
  const { clock = Date.now, gather = 200, look = 10_000, prepare = prepared } = options;
  const visits = new Map<string, AtDesk>();
  const entries = new Map<string, Map<string, Stored>>();
  const listeners = new Set<DeskListener>();

  const work = (name: string, at: AtDesk): void => {
    if (at.timer !== null) clearTimeout(at.timer);
    at.timer = null;
    at.isNew = false;
    at.shown = workedOut(at, [...(entries.get(name)?.values() ?? [])], clock());
    for (const [audience, parts] of at.last.changes(at.shown))
      for (const listener of listeners) listener(name, audience, parts);
  };
  const looking = setInterval(() => {
    for (const [name, at] of visits) work(name, at);
  }, look);
  looking.unref();

  const found = (visit: string): AtDesk => {
    const at = visits.get(visit);
    if (at === undefined) throw new RangeError(`no visit "${visit}" is open`);
    return at;
  };

  return {
    open: async (opened) => {
      const before = visits.get(opened.visit);
      const at: AtDesk = {
        ...prepare(opened),
        last: before?.last ?? lastShown(),
        shown: before?.shown ?? new Map(),
        timer: null,
        isNew: true,
      };
      if (before?.timer) clearTimeout(before.timer);
      visits.set(opened.visit, at);
      work(opened.visit, at);
    },
    take: (visit, stored) => {
      const own = entries.get(visit) ?? new Map<string, Stored>();
      entries.set(visit, own);
      for (const each of stored) own.set(each.entry.id, each);
      const at = visits.get(visit);
      if (at === undefined) return;
      at.isNew = true;
      at.timer ??= setTimeout(() => work(visit, at), gather);
    },
    parts: async (visit, seat) => {
      const at = found(visit);
      if (at.isNew) work(visit, at);
      return withClock(at.shown.get(audienceOf(seat)) ?? {}, clock());
    },
    onChange: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    close: async () => {
      clearInterval(looking);
      for (const { timer } of visits.values()) if (timer !== null) clearTimeout(timer);
      visits.clear();
      entries.clear();
      listeners.clear();
    },
  };
}

/** A fault in one visit is told to its teacher; its pages keep what they show, and other visits go on. */
function workedOut(at: AtDesk, entries: readonly Stored[], now: number): ShownParts {
  try {
    return at.parts(entries, now);
  } catch (fault) {
    const what = fault instanceof Error ? fault.message : String(fault);
    const trouble = [...at.visit.trouble, sentence(at.visit.language, 'live.fault', { what })];
    return new Map([...at.shown, ['teacher', { ...at.shown.get('teacher'), trouble }]]);
  }
}

const withClock = (parts: SeatParts, now: number): SeatParts =>
  parts.clock ? { ...parts, clock: { ...parts.clock, now } } : parts;
