/**
 * How many syllables a Spanish word has, by the rules of spelling.
 *
 * @example spanishSyllables('palanca') // => 3
 * @example spanishSyllables('fricción') // => 2
 */
export const spanishSyllables = (word: string): number =>
  word.split('-').reduce((sum, part) => sum + Math.max(1, dividedSpanish(part).length), 0);

/**
 * A Spanish word divided into its syllables by the rules of spelling (Real Academia Española, Ortografía
 * de la lengua española, 2010; from memory): a, e, o and an accented í or ú each carry a syllable; an
 * unaccented i, u, ü leans on its neighbour; the h parts nothing; of the consonants between two syllables
 * one opens the second, or two where they can't be parted (pr, bl, ch, ll ...).
 *
 * @example dividedSpanish('construcción') // => ['cons', 'truc', 'ción']
 * @example dividedSpanish('guía') // => ['guí', 'a']
 * @example dividedSpanish('polea') // => ['po', 'le', 'a']
 */
export function dividedSpanish(written: string): readonly string[] {
  const word = written
    .toLowerCase()
    .normalize('NFC')
    .replace(/[^a-zñáéíóúü]/g, '');
  const nuclei = nucleiOf(word);
  const starts = nuclei.map(({ from }, n) => {
    const before = nuclei[n - 1];
    return before === undefined ? 0 : from - opening(word.slice(before.to, from));
  });
  return starts.map((start, n) => word.slice(start, starts[n + 1] ?? word.length));
}

interface Nucleus {
  readonly from: number;
  /** Behind its last vowel. */
  readonly to: number;
}

const isStrong = (vowel: string): boolean => 'aeoáéó'.includes(vowel);
const isAccentedWeak = (vowel: string): boolean => 'íú'.includes(vowel);

/** The runs of vowels that are spoken in one breath. */
function nucleiOf(word: string): readonly Nucleus[] {
  const found: Nucleus[] = [];
  for (const { index, text } of vowelsOf(word)) {
    const last = found.at(-1);
    const opensHue = /^h[iuü][aeoáéó]/.test(word.slice(last?.to ?? 0));
    if (
      last !== undefined &&
      !opensHue &&
      isTogether(word.slice(last.from, last.to), word.slice(last.to, index), text)
    )
      found[found.length - 1] = { from: last.from, to: index + 1 };
    else found.push({ from: index, to: index + 1 });
  }
  return found;
}

/** Every vowel; the y is one where no vowel follows it ("ley", "y"); the u of que, qui, gue, gui is silent. */
const vowelsOf = (word: string): readonly { readonly index: number; readonly text: string }[] =>
  [...word.matchAll(/(?<!q|g(?=u[eiéí]))[aeiouáéíóúü]|y(?![aeiouáéíóú])/g)].map((match) => ({
    index: match.index,
    text: match[0] === 'y' ? 'i' : match[0],
  }));

/** Whether a vowel joins the run before it, with nothing or an h between them. */
function isTogether(run: string, between: string, vowel: string): boolean {
  if (between !== '' && between !== 'h') return false;
  const before = run.at(-1) ?? '';
  if (before === vowel || isAccentedWeak(before) || isAccentedWeak(vowel))
    return between === '' && isWeakPair(before, vowel);
  return !(isStrong(before) && isStrong(vowel)) && !(isStrong(vowel) && [...run].some(isStrong));
}

/** Two different weak vowels stay together, wherever the accent stands: "construí", "cuí". */
const isWeakPair = (before: string, vowel: string): boolean =>
  'iuü'.includes(before) && isAccentedWeak(vowel) && before !== plain(vowel);
const plain = (vowel: string): string => (vowel === 'í' ? 'i' : 'u');

const INSEPARABLE = /(?:[pbfcgkt][lr]|dr|ch|ll|rr)$/;

/** How many of the letters between two vowels open the second syllable; a silent u goes with its q or g. */
function opening(between: string): number {
  if (between.endsWith('u')) return opening(between.slice(0, -1)) + 1;
  return between.length < 2 ? between.length : INSEPARABLE.test(between) ? 2 : 1;
}
