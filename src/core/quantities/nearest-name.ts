/**
 * The known name that a misspelt word most likely stands for, or nothing when none is close: fewer
 * than half of its letters may be wrong, and at most a third of a long word. Case doesn't count, a
 * swap of two neighbours counts once (optimal string alignment distance). Of equals the first wins.
 *
 * @example nearestName('fulcum', ['load', 'fulcrum', 'effort']) // => 'fulcrum'
 * @example nearestName('colour', ['load', 'fulcrum', 'effort']) // => undefined
 */
export function nearestName(word: string, candidates: readonly string[]): string | undefined {
  const wanted = word.toLowerCase();
  let best: string | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const candidate of candidates) {
    const most = Math.max(1, Math.floor(Math.max(word.length, candidate.length) / 3));
    if (Math.abs(word.length - candidate.length) > most) continue;
    const steps = editDistance(wanted, candidate.toLowerCase());
    if (steps > most || steps * 2 > Math.max(word.length, candidate.length)) continue;
    if (steps < least) {
      least = steps;
      best = candidate;
    }
  }
  return best;
}

/** Letters to change, add, leave out or swap with their neighbour. */
function editDistance(a: string, b: string): number {
  let beforeLast: readonly number[] = [];
  let last: readonly number[] = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i += 1) {
    const row = [i];
    for (let j = 1; j <= b.length; j += 1) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      let steps = Math.min(at(last, j) + 1, at(row, j - 1) + 1, at(last, j - 1) + same);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        steps = Math.min(steps, at(beforeLast, j - 2) + 1);
      row.push(steps);
    }
    beforeLast = last;
    last = row;
  }
  return at(last, b.length);
}

const at = (row: readonly number[], index: number): number => row[index] ?? Number.POSITIVE_INFINITY;
