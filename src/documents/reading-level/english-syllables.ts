import { englishExceptions } from './english-exceptions.ts';

/**
 * How many syllables an English word has: by rules of spelling, with a short list of words that keep none.
 * A hyphen joins words whose syllables add up.
 *
 * @example englishSyllables('lever') // => 2
 * @example englishSyllables('uncertainty') // => 4
 * @example englishSyllables('half-way') // => 2
 */
export const englishSyllables = (word: string): number =>
  word
    .toLowerCase()
    .split('-')
    .reduce((sum, part) => sum + ofOneWord(part), 0);

function ofOneWord(written: string): number {
  const word = written.replace('’', "'");
  const stem = word.replace(/'s?$/, '');
  const known = exception(stem);
  const possessive = /'s$/.test(word) && HISSES.test(stem) ? 1 : 0;
  const negated = /[^aeiouynr]n't$/.test(word) ? 1 : 0;
  return (known ?? byRules(stem.replace(/[^a-z]/g, '')) + negated) + possessive;
}

/** After these an ending -s or -'s is spoken: "wedges". */
const HISSES = /(?:[sxz]|[cs]h|[cg]e|se|ze)$/;

/** A plural is spoken like its word with an s behind it. */
function exception(word: string): number | undefined {
  const of = (each: string): number | undefined =>
    Object.hasOwn(englishExceptions, each) ? englishExceptions[each] : undefined;
  return (
    of(word) ?? (word.endsWith('s') && !HISSES.test(word.slice(0, -1)) ? of(word.slice(0, -1)) : undefined)
  );
}

/** Every run of vowels is a syllable, less the silent ones, and more where two neighbours are spoken apart. */
function byRules(word: string): number {
  const runs = word.replace(/^y(?=[aeiou])/, '').match(/[aeiouy]+/g)?.length ?? 0;
  const silent = SILENT.filter((rule) => rule.test(word)).length;
  const apart = APART.filter((rule) => rule.test(word)).length;
  return Math.max(1, runs - silent + apart);
}

const SILENT: readonly RegExp[] = [
  // "scale", "scales", but "axle", "metre", "wedges"
  /[^aeiouy](?<![^aeiouy]l)(?<!tr)e$/,
  /[^aeiouyszxcg](?<![cs]h)(?<![^aeiouy]l)(?<!tr)es$/,
  // "pulled", but "added", "handled"
  /[^aeiouytd](?<![^aeiouyl]l)ed$/,
  // "safely", "useful", "movement", "safety"
  /[^aeiouyl]e(?:ly|ful(?:ly)?|less|ness|ments?|ty|where)$/,
  // "sometimes", "something"
  /^(?:some|there|here|where|fore)(?=[^aeiouy])/,
];

const APART: readonly RegExp[] = [
  // "radius", "material", but "special", "motion"
  /[^aeioucstgx]i(?:a|o|u)/,
  // "science", "quiet"
  /i(?:ence|et)/,
  // "create"
  /creat/,
  // "easier", "heaviest"
  /[aeiouy].*[^aeiouy]ie(?:r|st)$/,
  // "being", "trying"
  /[aeiouy]ing/,
  // "layer"
  /[aeo]y(?!ing|ed$|es$)[aeiou]/,
  // "rhythm", "mechanism"
  /(?:th|s)m$/,
  // "actual", "duo"
  /[^qg]u(?:a|o)/,
];
