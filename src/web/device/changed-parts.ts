import type { Parts } from '../../store/wire.ts';

/**
 * What is shown once some parts have changed; a part that is `null` is gone.
 *
 * @example withParts({ a: 1, b: 2 }, { b: null, c: 3 }) // => { a: 1, c: 3 }
 */
export function withParts<P extends object>(shown: Partial<P>, changed: Parts<P>): Partial<P> {
  const all = Object.entries({ ...shown, ...changed });
  return Object.fromEntries(all.filter(([, part]) => part !== null)) as Partial<P>;
}
