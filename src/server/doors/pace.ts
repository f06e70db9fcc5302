/** How fast one asker may come: so many at once, so many a second after that. */
export interface Pace {
  /** Milliseconds until it may come again; 0: it may, and this counts. */
  readonly take: (asker: string, now: number) => number;
}

const MOST_ASKERS = 5_000;

/** A bucket an asker, which fills steadily. Full buckets are forgotten. */
export function pace({ atOnce, perSecond }: { readonly atOnce: number; readonly perSecond: number }): Pace {
  const buckets = new Map<string, { left: number; at: number }>();
  const filled = (bucket: { left: number; at: number }, now: number): number =>
    Math.min(atOnce, bucket.left + (Math.max(0, now - bucket.at) * perSecond) / 1000);
  const forget = (now: number): void => {
    for (const [asker, bucket] of buckets) if (filled(bucket, now) >= atOnce) buckets.delete(asker);
    for (const asker of buckets.keys()) {
      if (buckets.size < MOST_ASKERS) break;
      buckets.delete(asker);
    }
  };
  return {
    take: (asker, now) => {
      const bucket = buckets.get(asker) ?? { left: atOnce, at: now };
      const left = filled(bucket, now);
      if (!buckets.has(asker) && buckets.size >= MOST_ASKERS) forget(now);
      const isFree = left >= 1;
      buckets.set(asker, { left: isFree ? left - 1 : left, at: now });
      return isFree ? 0 : Math.ceil(((1 - left) * 1000) / perSecond);
    },
  };
}
