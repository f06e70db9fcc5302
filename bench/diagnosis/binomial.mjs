// How far chance alone may carry a count: the goal stays the goal, a small sample is allowed its scatter.

/** Logarithm of n!, summed once. */
const logFactorials = [0];
function logFactorial(n) {
  for (let k = logFactorials.length; k <= n; k += 1) logFactorials.push(logFactorials[k - 1] + Math.log(k));
  return logFactorials[n];
}

/** Chance of at most `k` of `n` where each comes with chance `p`. */
export function atMost(k, n, p) {
  if (k >= n) return 1;
  let sum = 0;
  for (let i = 0; i <= k; i += 1)
    sum += Math.exp(
      logFactorial(n) - logFactorial(i) - logFactorial(n - i) + i * Math.log(p) + (n - i) * Math.log(1 - p),
    );
  return Math.min(1, sum);
}

/** Fewest of `n` that still go with a share of `p`: fewer would happen once in 1/`rare`. */
export function fewest(n, p, rare) {
  let k = Math.floor(n * p);
  while (k > 0 && atMost(k - 1, n, p) > rare) k -= 1;
  return k;
}

/** Most of `n` that still go with a share of `p`. */
export const most = (n, p, rare) => n - fewest(n, 1 - p, rare);
