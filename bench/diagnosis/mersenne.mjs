// Chance for the simulated classes: the Mersenne Twister MT19937 of Matsumoto and Nishimura (1998),
// written from memory; the 10,000th number of seed 5489 is 4123659995 (from memory, held by a test).
// On purpose another generator than the one that the program uses.

const N = 624;
const M = 397;

/** A stream of chance from a seed: even, normal, and what else a class is drawn with. */
export function chanceFrom(seed) {
  const next = twister(seed);
  const even = () => (next() >>> 0) / 4294967296;
  const chance = {
    next,
    even,
    between: (low, high) => low + (high - low) * even(),
    /** The sum of two even draws: a triangle between its ends. */
    about: (low, high) => low + ((high - low) * (even() + even())) / 2,
    whole: (low, high) => low + Math.floor((high - low + 1) * even()),
    yes: (share) => even() < share,
    pick: (list) => list[Math.floor(even() * list.length)],
    shuffled: (list) => {
      const left = [...list];
      return list.map(() => left.splice(Math.floor(even() * left.length), 1)[0]);
    },
    /** One of a list by its own `weight`. */
    weighed: (list) => {
      let left = even() * list.reduce((sum, { weight }) => sum + weight, 0);
      for (const each of list) {
        left -= each.weight;
        if (left < 0) return each;
      }
      return list[list.length - 1];
    },
    normal: () => normal(even),
  };
  return chance;
}

function twister(seed) {
  const state = new Uint32Array(N);
  state[0] = seed >>> 0;
  for (let i = 1; i < N; i += 1) {
    const last = state[i - 1] ^ (state[i - 1] >>> 30);
    state[i] = Math.imul(1812433253, last) + i;
  }
  let at = N;
  return () => {
    if (at === N) {
      for (let i = 0; i < N; i += 1) {
        const y = (state[i] & 0x80000000) | (state[(i + 1) % N] & 0x7fffffff);
        state[i] = state[(i + M) % N] ^ (y >>> 1) ^ (y & 1 ? 0x9908b0df : 0);
      }
      at = 0;
    }
    let y = state[at];
    at += 1;
    y ^= y >>> 11;
    y ^= (y << 7) & 0x9d2c5680;
    y ^= (y << 15) & 0xefc60000;
    y ^= y >>> 18;
    return y >>> 0;
  };
}

/** Marsaglia's polar method; one of its two numbers is left unused. */
function normal(even) {
  for (;;) {
    const u = 2 * even() - 1;
    const v = 2 * even() - 1;
    const s = u * u + v * v;
    if (s > 0 && s < 1) return u * Math.sqrt((-2 * Math.log(s)) / s);
  }
}
