import type { Audience, SeatParts } from './desk.ts';
import type { ShownParts } from './parts-of-visit.ts';

type Json = Readonly<Record<string, unknown>>;

/** What was last shown to each audience, and what is new against it. */
export interface LastShown {
  /** Parts that differ from what was shown before, by audience; parts that are gone are `null`. */
  changes(shown: ShownParts): readonly (readonly [Audience, SeatParts])[];
}

/** Compares parts by their text; a part that is the same object as before is not written out again. */
export function lastShown(): LastShown {
  let before: ReadonlyMap<Audience, ReadonlyMap<string, string>> = new Map();
  const texts = new WeakMap<object, string>();
  const textOf = (name: string, part: unknown): string => {
    if (typeof part !== 'object' || part === null) return JSON.stringify(part);
    // What time it was when the clock was read is no change of it.
    if (name === 'clock') return JSON.stringify({ ...part, now: 0 });
    const text = texts.get(part) ?? JSON.stringify(part);
    texts.set(part, text);
    return text;
  };
  return {
    changes: (shown) => {
      const now = new Map(
        [...shown].map(
          ([audience, parts]) =>
            [
              audience,
              new Map(Object.entries(parts).map(([name, part]) => [name, textOf(name, part)] as const)),
            ] as const,
        ),
      );
      const changed = [...now].flatMap(([audience, parts]) => {
        const old = before.get(audience);
        const all = shown.get(audience) as Json;
        const own: Record<string, unknown> = {};
        for (const [name, text] of parts) if (old?.get(name) !== text) own[name] = all[name];
        for (const name of old?.keys() ?? []) if (!parts.has(name)) own[name] = null;
        return Object.keys(own).length === 0 ? [] : [[audience, own as SeatParts] as const];
      });
      before = now;
      return changed;
    },
  };
}
