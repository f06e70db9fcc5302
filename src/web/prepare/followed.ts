import { useEffect, useState } from 'preact/hooks';

/** A value that is followed by those parts of a page that show it: whatever holds it is not drawn anew when it changes. */
export interface Followed<T> {
  readonly now: () => T;
  readonly put: (next: T) => void;
  /** Gives back how to stop following. */
  readonly follow: (hear: () => void) => () => void;
}

export function followed<T>(first: T): Followed<T> {
  const ears = new Set<() => void>();
  let now = first;
  return {
    now: () => now,
    put: (next) => {
      now = next;
      for (const hear of ears) hear();
    },
    follow: (hear) => {
      ears.add(hear);
      return () => void ears.delete(hear);
    },
  };
}

export function useFollowed<T>(of: Followed<T>): T {
  const [shown, show] = useState(of.now);
  useEffect(() => {
    show(of.now);
    return of.follow(() => show(of.now));
  }, [of]);
  return shown;
}
