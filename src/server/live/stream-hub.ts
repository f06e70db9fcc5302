import type { Seat } from '../../store/entry.ts';
import { type Audience, audienceOf, type Desk } from '../desk/desk.ts';
import { type AudienceParts, audienceParts } from './audience-parts.ts';

/** Where a page's events go: an answer that stays open. */
export interface Sink {
  readonly write: (text: string) => void;
  /** It has not yet taken what it was given. */
  readonly isBehind: () => boolean;
  readonly end: () => void;
}

export interface StreamHub {
  /** All that a seat is shown now, as JSON. */
  readonly parts: (visit: string, seat: Seat) => Promise<string>;
  /** Begins to send; answers what to do when the page is gone, and when it takes more again. */
  readonly listen: (visit: string, seat: Seat, sink: Sink, lastId: string | null) => Promise<Listening>;
  readonly listening: (visit: string) => number;
  readonly count: () => number;
  /** Tells the pages of a visit that it is over, and ends their streams. */
  readonly end: (visit: string) => void;
  readonly close: () => void;
}

export interface Listening {
  readonly stop: () => void;
  readonly drained: () => void;
}

export interface HubOptions {
  readonly desk: Desk;
  readonly clock: () => number;
  /** Tells this run of the server from another: what a page had of another is sent anew. */
  readonly run: string;
  readonly onEvent?: () => void;
}

/** At most five times a second; the first change after a pause goes at once. */
const BETWEEN = 200;
/** Often enough that a page knows within ten seconds that nobody is there. */
const BEAT_EVERY = 3000;
/** A page that takes nothing for so many beats is gone. */
const MOST_BEATS_BEHIND = 20;

interface Page {
  readonly sink: Sink;
  version: number;
  beatsBehind: number;
}

interface Room {
  readonly visit: string;
  readonly run: string;
  readonly parts: AudienceParts;
  readonly pages: Set<Page>;
  readonly ready: Promise<void>;
  sentAt: number;
  timer: NodeJS.Timeout | null;
}

/** Sends each page what changed of its parts, and only that; what a slow page misses it gets at once later. */
export function streamHub({ desk, clock, run, onEvent = () => undefined }: HubOptions): StreamHub {
  const rooms = new Map<string, Room>();
  const keyOf = (visit: string, audience: Audience): string => `${visit}\n${audience}`;
  let made = 0;

  const write = (page: Page, text: string): void => {
    page.sink.write(text);
    onEvent();
  };

  const send = (room: Room): void => {
    room.timer = null;
    room.sentAt = clock();
    const version = room.parts.version();
    const texts = new Map<number, string>();
    for (const page of room.pages) {
      if (page.version === version || page.sink.isBehind()) continue;
      const text = texts.get(page.version) ?? partsEvent(room, page.version);
      texts.set(page.version, text);
      page.version = version;
      write(page, text);
    }
  };
  const partsEvent = (room: Room, since: number): string =>
    `event: parts\nid: ${room.run}.${room.parts.version()}\ndata: ${room.parts.after(since, clock())}\n\n`;
  const soon = (room: Room): void => {
    if (room.pages.size === 0 || room.timer !== null) return;
    const wait = room.sentAt + BETWEEN - clock();
    if (wait <= 0 || wait > BETWEEN) send(room);
    else room.timer = setTimeout(() => send(room), wait);
  };

  const room = (visit: string, seat: Seat): Room => {
    const key = keyOf(visit, audienceOf(seat));
    const found = rooms.get(key);
    if (found !== undefined) return found;
    const parts = audienceParts();
    const ready = desk.parts(visit, seat).then((all) => {
      parts.replace(all);
    });
    made += 1;
    const next: Room = {
      visit,
      run: `${run}-${made}`,
      parts,
      pages: new Set(),
      ready,
      sentAt: 0,
      timer: null,
    };
    ready.catch(() => rooms.delete(key));
    rooms.set(key, next);
    return next;
  };

  const stopTelling = desk.onChange((visit, audience, changed) => {
    const found = rooms.get(keyOf(visit, audience));
    if (found?.parts.change(changed)) soon(found);
  });

  const beat = setInterval(() => {
    const text = `event: beat\ndata: {"now":${clock()}}\n\n`;
    for (const { pages } of rooms.values())
      for (const page of pages) {
        page.beatsBehind = page.sink.isBehind() ? page.beatsBehind + 1 : 0;
        if (page.beatsBehind > MOST_BEATS_BEHIND) page.sink.end();
        else if (page.beatsBehind === 0) write(page, text);
      }
  }, BEAT_EVERY);
  beat.unref();

  const drop = (key: string, found: Room, last: string): void => {
    if (found.timer !== null) clearTimeout(found.timer);
    for (const { sink } of found.pages) {
      sink.write(last);
      sink.end();
    }
    rooms.delete(key);
  };

  return {
    parts: async (visit, seat) => {
      const found = room(visit, seat);
      await found.ready;
      return found.parts.after(0, clock());
    },
    listen: async (visit, seat, sink, lastId) => {
      const found = room(visit, seat);
      await found.ready;
      const version = versionIn(lastId, found.run, found.parts.version());
      const page: Page = { sink, version: found.parts.version(), beatsBehind: 0 };
      found.pages.add(page);
      write(page, `retry: 2000\n${partsEvent(found, version)}`);
      return {
        stop: () => found.pages.delete(page),
        drained: () => soon(found),
      };
    },
    listening: (visit) =>
      sum([...rooms.values()].filter((each) => each.visit === visit).map((each) => each.pages.size)),
    count: () => sum([...rooms.values()].map(({ pages }) => pages.size)),
    end: (visit) => {
      for (const [key, found] of rooms)
        if (found.visit === visit) drop(key, found, 'event: over\ndata: {}\n\n');
    },
    close: () => {
      clearInterval(beat);
      stopTelling();
      for (const [key, found] of rooms) drop(key, found, 'event: stopping\ndata: {}\n\n');
    },
  };
}

/** What a page had last; 0, and so everything, where that was of another run or never sent. */
function versionIn(lastId: string | null, run: string, latest: number): number {
  const [of, number = ''] = (lastId ?? '').split('.');
  if (of !== run || !/^\d{1,15}$/.test(number)) return 0;
  return Number(number) <= latest ? Number(number) : 0;
}

const sum = (numbers: readonly number[]): number => numbers.reduce((total, each) => total + each, 0);
