/** Chance that can be repeated: the same seed gives the same draws on every machine. */
export interface Random {
  /** Evenly from 0 to under 1, on a grid of 2^-53. */
  readonly even: () => number;
  /** Normal, mean 0, standard deviation 1. */
  readonly normal: () => number;
}

/** A stream that can also fill a whole block at once, which is several times faster than one by one. */
export interface RandomStream extends Random {
  readonly fillEven: (block: Float64Array) => void;
  readonly fillNormal: (block: Float64Array) => void;
}

const TO_UNIT = 2 ** -53;
/** Steps on either side of the middle of a layer: what is left of a word when its layer is taken out. */
const STEPS = 2 ** 23;

/**
 * A stream of chance from a whole number. xoshiro128** (Blackman and Vigna, 2018), its state filled by a
 * 32-bit splitmix from both halves of the seed; normal draws by the ziggurat of Marsaglia and Tsang (2000)
 * with 256 layers, where the layer and the place in it come from different bits of a word (the fault that
 * Doornik, 2005, found in the first version); the place has 2^24 steps. Constants of the papers are written
 * from memory and held by tests of their own defining equations.
 *
 * Not for secrets.
 *
 * @example randomFrom(1).even() === randomFrom(1).even() // => true
 */
export function randomFrom(seed: number): RandomStream {
  return streamOf(stateFrom(seed));
}

/** Words of the generator as they come, from a state of four words: what the published values are of. */
export function wordsFrom(
  state: readonly [number, number, number, number],
  count: number,
): readonly number[] {
  const s = Int32Array.from(state);
  return Array.from({ length: count }, () => nextWord(s) >>> 0);
}

function streamOf(s: Int32Array): RandomStream {
  const even = (): number => {
    const high = nextWord(s) >>> 5;
    return (high * 2 ** 26 + (nextWord(s) >>> 6)) * TO_UNIT;
  };
  const normal = (): number => normalFrom(s, even);
  return {
    even,
    normal,
    fillEven: (block) => fillEven(s, block),
    fillNormal: (block) => fillNormal(s, block, even),
  };
}

/** One step of xoshiro128**; the state is changed in place. */
function nextWord(s: Int32Array): number {
  const a = s[0] as number;
  const b = s[1] as number;
  const c = (s[2] as number) ^ a;
  const d = (s[3] as number) ^ b;
  const five = Math.imul(b, 5);
  s[0] = a ^ d;
  s[1] = b ^ c;
  s[2] = c ^ (b << 9);
  s[3] = (d << 11) | (d >>> 21);
  return Math.imul((five << 7) | (five >>> 25), 9);
}

/** The same as one by one, with the state held in variables: half the time. */
function fillEven(s: Int32Array, block: Float64Array): void {
  let a = s[0] as number;
  let b = s[1] as number;
  let c = s[2] as number;
  let d = s[3] as number;
  for (let n = 0; n < block.length; n += 1) {
    let five = Math.imul(b, 5);
    const high = Math.imul((five << 7) | (five >>> 25), 9) >>> 5;
    let shifted = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= shifted;
    d = (d << 11) | (d >>> 21);
    five = Math.imul(b, 5);
    const low = Math.imul((five << 7) | (five >>> 25), 9) >>> 6;
    shifted = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= shifted;
    d = (d << 11) | (d >>> 21);
    block[n] = (high * 2 ** 26 + low) * TO_UNIT;
  }
  s[0] = a;
  s[1] = b;
  s[2] = c;
  s[3] = d;
}

/** The same as one by one: what falls inside its layer (99 of 100) is done here, the rest one by one. */
function fillNormal(s: Int32Array, block: Float64Array, even: () => number): void {
  let a = s[0] as number;
  let b = s[1] as number;
  let c = s[2] as number;
  let d = s[3] as number;
  for (let n = 0; n < block.length; n += 1) {
    const five = Math.imul(b, 5);
    const word = Math.imul((five << 7) | (five >>> 25), 9);
    const shifted = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= shifted;
    d = (d << 11) | (d >>> 21);
    const step = word >> 8;
    if ((step ^ (step >> 31)) < (inside[word & 255] as number)) {
      block[n] = (step + 0.5) * (steps[word & 255] as number);
      continue;
    }
    s[0] = a;
    s[1] = b;
    s[2] = c;
    s[3] = d;
    block[n] = outside(word, s, even);
    a = s[0];
    b = s[1];
    c = s[2];
    d = s[3];
  }
  s[0] = a;
  s[1] = b;
  s[2] = c;
  s[3] = d;
}

/** Both halves of the seed, each stretched by itself and then laid over each other. */
function stateFrom(seed: number): Int32Array {
  if (!Number.isSafeInteger(seed)) throw new RangeError(`a seed is a whole number, not ${seed}`);
  const low = stretched(seed | 0);
  const high = stretched(~Math.floor(seed / 2 ** 32));
  return Int32Array.from(low, (word, n) => word ^ (high[3 - n] ?? 0));
}

/** Four words from one (32-bit splitmix). */
function stretched(word: number): readonly number[] {
  let a = word | 0;
  return Array.from({ length: 4 }, () => {
    a = (a + 0x9e3779b9) | 0;
    let t = a ^ (a >>> 16);
    t = Math.imul(t, 0x21f0aaad);
    t ^= t >>> 15;
    t = Math.imul(t, 0x735a2d97);
    return t ^ (t >>> 15);
  });
}

/** Where the last layer ends and the tail begins, and the area of every layer. */
export const ZIGGURAT = { layers: 256, tail: 3.6541528853610088, area: 0.004928673233974655 } as const;

const density = (x: number): number => Math.exp(-0.5 * x * x);

/** Right ends of the layers, widest first, and the density there. */
const ends = new Float64Array(ZIGGURAT.layers + 1);
const heights = new Float64Array(ZIGGURAT.layers + 1);
/** How many steps of a layer lie wholly under the density, and the size of one. */
const inside = new Int32Array(ZIGGURAT.layers);
const steps = new Float64Array(ZIGGURAT.layers);
ends[0] = ZIGGURAT.area / density(ZIGGURAT.tail);
ends[1] = ZIGGURAT.tail;
heights[1] = density(ZIGGURAT.tail);
for (let n = 2; n < ZIGGURAT.layers; n += 1) {
  const before = ends[n - 1] as number;
  ends[n] = Math.sqrt(-2 * Math.log(ZIGGURAT.area / before + density(before)));
  heights[n] = density(ends[n] as number);
}
heights[0] = 0;
heights[ZIGGURAT.layers] = 1;
for (let n = 0; n < ZIGGURAT.layers; n += 1) {
  inside[n] = Math.floor((STEPS * (ends[n + 1] as number)) / (ends[n] as number));
  steps[n] = (ends[n] as number) / STEPS;
}

/** What is left over between the last layer's top and the density's: 0 where the constants are right. */
export const zigguratCloses = (): number => {
  const last = ends[ZIGGURAT.layers - 1] as number;
  return ZIGGURAT.area / last + density(last) - 1;
};

function normalFrom(s: Int32Array, even: () => number): number {
  const word = nextWord(s);
  const step = word >> 8;
  return (step ^ (step >> 31)) < (inside[word & 255] as number)
    ? (step + 0.5) * (steps[word & 255] as number)
    : outside(word, s, even);
}

/** A draw that lies in the tail, or beside the density in its layer: then another one is drawn. */
function outside(word: number, s: Int32Array, even: () => number): number {
  const layer = word & 255;
  if (layer === 0) return word < 0 ? -tailFrom(even) : tailFrom(even);
  const x = ((word >> 8) + 0.5) * (steps[layer] as number);
  const low = heights[layer] as number;
  return low + even() * ((heights[layer + 1] as number) - low) < density(x) ? x : normalFrom(s, even);
}

/** Beyond the last layer (Marsaglia, 1964). */
function tailFrom(even: () => number): number {
  for (;;) {
    const x = -Math.log(1 - even()) / ZIGGURAT.tail;
    const y = -Math.log(1 - even());
    if (y + y > x * x) return ZIGGURAT.tail + x;
  }
}
