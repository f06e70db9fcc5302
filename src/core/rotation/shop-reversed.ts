import type { Arc, ShopModel } from './shop-model.ts';

/**
 * A shop that is as good backwards: nothing has an order, a window of its own or a break, and every resource stays taken equally
 * long after each of its tasks. Of each schedule and its mirror image one is enough: of the two longest tasks that
 * can't run at once the one that is first in `starts` may be taken to be first.
 */
export function mirrorArcs(model: ShopModel, starts: ArrayLike<number>): readonly Arc[] {
  if (!isReversible(model) || model.pairs.length === 0) return [];
  const weight = ({ first, second }: ShopModel['pairs'][number]): number =>
    (model.lengths[first] as number) + (model.lengths[second] as number);
  const { first, second, there, back } = model.pairs.reduce((longest, pair) =>
    weight(pair) > weight(longest) ? pair : longest,
  );
  const inOrder = (one: number, then: number, gap: number): readonly Arc[] => [{ first: one, then, gap }];
  return (starts[first] as number) < (starts[second] as number)
    ? inOrder(first, second, there)
    : inOrder(second, first, back);
}

function isReversible({ arcs, earliest, latest, lengths, forbidden, resources }: ShopModel): boolean {
  const last = latest.map((time, task) => time + (lengths[task] as number));
  return (
    arcs.length === 0 &&
    earliest.every((time) => time === earliest[0]) &&
    last.every((time) => time === last[0]) &&
    forbidden.every((times) => times.length === 0) &&
    resources.every(({ tasks, holds }) => {
      const rests = tasks.map((task, place) => (holds[place] as number) - (lengths[task] as number));
      return rests.every((rest) => rest === rests[0]);
    })
  );
}
