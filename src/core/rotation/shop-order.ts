/** Claims by how often they had a part in a contradiction of late, the most first: a binary heap. */
export interface ClaimOrder {
  readonly heap: Int32Array;
  readonly placeOf: Int32Array;
  readonly activity: Float64Array;
  count: number;
  /** What one more part is worth now; it grows, so that old parts fade. */
  step: number;
}

/** Slowly: in shops with much to rule out, what failed long ago still tells (found by trying balanced ones). */
const FADE = 1 / 0.999;
const MOST = 1e100;

export function claimOrder(claims: number): ClaimOrder {
  return {
    heap: new Int32Array(claims),
    placeOf: new Int32Array(claims).fill(-1),
    activity: new Float64Array(claims),
    count: 0,
    step: 1,
  };
}

export function pushClaim(order: ClaimOrder, claim: number): void {
  if ((order.placeOf[claim] as number) >= 0) return;
  order.heap[order.count] = claim;
  order.placeOf[claim] = order.count;
  order.count += 1;
  rise(order, order.count - 1);
}

/** The claim with the most parts; it is taken out. */
export function popClaim(order: ClaimOrder): number {
  const { heap, placeOf } = order;
  const claim = heap[0] as number;
  placeOf[claim] = -1;
  order.count -= 1;
  if (order.count > 0) {
    const last = heap[order.count] as number;
    heap[0] = last;
    placeOf[last] = 0;
    sink(order);
  }
  return claim;
}

/** One more part in a contradiction. */
export function bumpClaim(order: ClaimOrder, claim: number): void {
  const { activity, placeOf } = order;
  activity[claim] = (activity[claim] as number) + order.step;
  if ((activity[claim] as number) > MOST) {
    for (let n = 0; n < activity.length; n += 1) activity[n] = (activity[n] as number) / MOST;
    order.step /= MOST;
  }
  if ((placeOf[claim] as number) >= 0) rise(order, placeOf[claim] as number);
}

export function fadeClaims(order: ClaimOrder): void {
  order.step *= FADE;
}

function rise(order: ClaimOrder, from: number): void {
  const { heap, placeOf, activity } = order;
  const claim = heap[from] as number;
  const own = activity[claim] as number;
  let place = from;
  while (place > 0) {
    const above = (place - 1) >> 1;
    const other = heap[above] as number;
    if ((activity[other] as number) >= own) break;
    heap[place] = other;
    placeOf[other] = place;
    place = above;
  }
  heap[place] = claim;
  placeOf[claim] = place;
}

function sink(order: ClaimOrder): void {
  const { heap, placeOf, activity, count } = order;
  const claim = heap[0] as number;
  const own = activity[claim] as number;
  let place = 0;
  for (;;) {
    let below = 2 * place + 1;
    if (below >= count) break;
    if (
      below + 1 < count &&
      (activity[heap[below + 1] as number] as number) > (activity[heap[below] as number] as number)
    )
      below += 1;
    const other = heap[below] as number;
    if ((activity[other] as number) <= own) break;
    heap[place] = other;
    placeOf[other] = place;
    place = below;
  }
  heap[place] = claim;
  placeOf[claim] = place;
}
