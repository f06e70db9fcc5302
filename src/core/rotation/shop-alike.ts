import type { Arc, Held, ShopModel } from './shop-model.ts';

/**
 * Resources for one whose tasks could change places as a whole, such as groups that do the same tables: of all
 * schedules that differ in nothing but who is who, one is enough.
 */
export interface AlikeRows {
  /** By row its tasks, those that answer to each other at the same place. */
  readonly rows: readonly (readonly number[])[];
  /** The rows may be taken in the order in which they do the task at this place, `gap` apart at least. */
  readonly place: number;
  readonly gap: number;
}

/** All sets of two rows or more that are alike in everything: resources, times, order and breaks. */
export function alikeRows(model: ShopModel): readonly AlikeRows[] {
  const uses = usesByTask(model);
  const found = new Map<string, (readonly number[])[]>();
  model.resources.forEach((held, resource) => {
    const row = signedRow(model, uses, held, resource);
    if (row !== null) found.set(row.signature, [...(found.get(row.signature) ?? []), row.tasks]);
  });
  // Rows that cross others: only one of both may be put in order.
  const taken = new Set<number>();
  return [...found.values()].flatMap((rows) => {
    if (rows.length === 1 || rows.flat().some((task) => taken.has(task))) return [];
    for (const task of rows.flat()) taken.add(task);
    return [{ rows, ...tightestPlace(model, uses, rows) }];
  });
}

/** The orders that leave one of the schedules that differ only in who is who. */
export const alikeArcs = (sets: readonly AlikeRows[]): readonly Arc[] =>
  sets.flatMap(({ rows, place, gap }) =>
    rows.slice(1).map((row, n): Arc => {
      const then = row[place] as number;
      return { first: rows[n]?.[place] as number, then, gap };
    }),
  );

/** The same schedule with alike rows in that order. */
export function inAlikeOrder(sets: readonly AlikeRows[], starts: ArrayLike<number>): Float64Array {
  const ordered = Float64Array.from(starts);
  for (const { rows, place } of sets) {
    const sooner = (row: readonly number[]): number => starts[row[place] as number] as number;
    const sorted = [...rows].sort((a, b) => sooner(a) - sooner(b));
    rows.forEach((row, n) => {
      row.forEach((task, k) => {
        ordered[task] = starts[sorted[n]?.[k] as number] as number;
      });
    });
  }
  return ordered;
}

type Uses = readonly (readonly { readonly resource: number; readonly hold: number }[])[];

function usesByTask({ count, resources }: ShopModel): Uses {
  const uses: { resource: number; hold: number }[][] = Array.from({ length: count }, () => []);
  resources.forEach(({ tasks, holds }, resource) => {
    tasks.forEach((task, place) => {
      uses[task]?.push({ resource, hold: holds[place] as number });
    });
  });
  return uses;
}

/** A row with what it has to have in common with others; `null` where tasks of it can't be told apart, or wait for others. */
function signedRow(
  model: ShopModel,
  uses: Uses,
  { capacity, tasks }: Held,
  resource: number,
): { readonly tasks: readonly number[]; readonly signature: string } | null {
  if (capacity !== 1) return null;
  const signed = Array.from(tasks, (task) => ({
    task,
    signature: signatureOf(model, uses, task, resource),
  })).sort((a, b) => (a.signature < b.signature ? -1 : 1));
  if (new Set(signed.map(({ signature }) => signature)).size < signed.length) return null;
  const placeOf = new Map(signed.map(({ task }, place) => [task, place] as const));
  const orders: string[] = [];
  for (const { first, then, gap } of model.arcs) {
    const [one, other] = [placeOf.get(first), placeOf.get(then)];
    if (one === undefined && other === undefined) continue;
    if (one === undefined || other === undefined) return null;
    orders.push(`${one} ${other} ${gap}`);
  }
  return {
    tasks: signed.map(({ task }) => task),
    signature: [...signed.map(({ signature }) => signature), ...orders.sort()].join('; '),
  };
}

/** All of a task but the row that it stands in. */
function signatureOf(model: ShopModel, uses: Uses, task: number, row: number): string {
  const own = (uses[task] ?? []).map(({ resource, hold }) =>
    resource === row ? `row ${hold}` : `${resource} ${hold}`,
  );
  const times = [model.lengths[task], model.earliest[task], model.latest[task]];
  return [...times, ...own.sort(), ...(model.forbidden[task] as Int32Array)].join(',');
}

/** Where the tasks of the rows take the most of a resource, those for one first. */
function tightestPlace(
  model: ShopModel,
  uses: Uses,
  rows: readonly (readonly number[])[],
): { readonly place: number; readonly gap: number } {
  let best = { place: 0, gap: 0, load: -1 };
  const [row, next] = rows as [readonly number[], readonly number[]];
  row.forEach((task, place) => {
    const other = new Set((uses[next[place] as number] ?? []).map(({ resource }) => resource));
    for (const { resource, hold } of uses[task] ?? []) {
      const { capacity, holds } = model.resources[resource] as Held;
      if (capacity > 1 || !other.has(resource)) continue;
      const load = holds.reduce((sum, each) => sum + each, 0);
      if (load > best.load) best = { place, gap: hold, load };
    }
  });
  return { place: best.place, gap: best.gap };
}
