/**
 * The input at which a law gives a wanted figure, by halving: for worked examples that ask a law
 * backwards (which friction, which length). The law has to pass through the figure once.
 */
export function solveFor(law: (x: number) => number, wanted: number, low: number, high: number): number {
  let [a, b] = [low, high];
  const rises = law(b) > law(a);
  if ((law(a) - wanted) * (law(b) - wanted) > 0) throw new RangeError(`${wanted} is not between the ends`);
  for (let n = 0; n < 200; n += 1) {
    const middle = (a + b) / 2;
    if (law(middle) < wanted === rises) a = middle;
    else b = middle;
  }
  return (a + b) / 2;
}
