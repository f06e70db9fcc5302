import { writtenUnder } from '../../core/files/written-under.ts';
import type { Texts } from './prepare-wire.ts';

/**
 * The texts with the bench book that their kit names. This browser keeps one book a kit, by its serial: with
 * another kit in hand its own book comes along, and that of the first one stays.
 */
export function withBench(texts: Texts): Texts {
  const name = writtenUnder(texts.kit, 'bench book') ?? '';
  return { ...texts, bench: name === '' ? null : { name, text: keptBook(texts) } };
}

/** The book that this browser keeps of the kit in hand, named in it or not. */
export const keptBook = (texts: Texts): string => texts.books?.[serialIn(texts)] ?? '';

/** By which a kit's book is kept. */
export const serialIn = ({ kit }: Texts): string => writtenUnder(kit, 'serial') ?? '';

/** How many lines of the book that is kept are not at the same place in another text: they would be lost. */
export function linesLost(kept: string, other: string): number {
  const [old, fresh] = [linesOf(kept), linesOf(other)];
  return old.filter((line, n) => fresh[n] !== line).length;
}

const linesOf = (text: string): readonly string[] =>
  text
    .replace(/^\uFEFF/, '')
    .trimEnd()
    .split(/\r\n?|\n/)
    .filter((line, n) => n > 0 || line !== '');
