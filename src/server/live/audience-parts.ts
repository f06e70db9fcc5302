import type { SeatParts } from '../desk/desk.ts';

/** What an audience is shown, part by part, each with the number of the change that made it. */
export interface AudienceParts {
  /** Takes parts over; answers whether anything is new. */
  readonly change: (parts: SeatParts) => boolean;
  /** All that there is; whatever isn't in it is gone. */
  readonly replace: (parts: SeatParts) => boolean;
  /** The number of the last change. */
  readonly version: () => number;
  /** What changed after a number, as JSON; the clock in it says what time it is now. */
  readonly after: (version: number, now: number) => string;
}

interface Kept {
  readonly version: number;
  readonly json: string;
}

const CLOCK = 'clock';
const GONE = 'null';

/** Parts as text, so that sixty pages share one copy. */
export function audienceParts(): AudienceParts {
  const parts = new Map<string, Kept>();
  let clock: Readonly<Record<string, unknown>> | null = null;
  let version = 0;
  const set = (name: string, value: unknown, next: number): boolean => {
    // When a clock was sent is no change of it.
    const json = name === CLOCK ? JSON.stringify({ ...(value as object), now: 0 }) : JSON.stringify(value);
    if (name === CLOCK) clock = value as Readonly<Record<string, unknown>>;
    if (parts.get(name)?.json === json) return false;
    parts.set(name, { version: next, json });
    return true;
  };
  const change = (changed: SeatParts): boolean => {
    const next = version + 1;
    const isNew = Object.entries(changed)
      .filter(([, value]) => value !== undefined)
      .map(([name, value]) => set(name, value, next))
      .includes(true);
    if (isNew) version = next;
    return isNew;
  };
  return {
    change,
    replace: (all) => {
      const gone = [...parts.keys()].filter((name) => !(name in all) && parts.get(name)?.json !== GONE);
      return change({ ...Object.fromEntries(gone.map((name) => [name, null])), ...all } as SeatParts);
    },
    version: () => version,
    after: (since, now) => {
      const changed = [...parts].filter(([, kept]) => kept.version > since);
      // A page that starts has nothing to take away.
      const shown = since === 0 ? changed.filter(([, { json }]) => json !== GONE) : changed;
      const text = ([name, { json }]: readonly [string, Kept]): string =>
        `${JSON.stringify(name)}:${name === CLOCK && clock !== null ? JSON.stringify({ ...clock, now }) : json}`;
      return `{${shown.map(text).join(',')}}`;
    },
  };
}
