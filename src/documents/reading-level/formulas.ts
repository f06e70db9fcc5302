/** What the published formulas ask for. */
export interface Counts {
  readonly sentences: number;
  readonly words: number;
  readonly syllables: number;
}

/**
 * The school grade (United States) whose pupils can read an English text: 0.39 words a sentence + 11.8 syllables
 * a word - 15.59 (Kincaid, Fishburne, Rogers and Chissom, Research Branch Report 8-75, 1975). It looks at nothing
 * but lengths: the sense, the order and the picture beside it are left out. Sentences and words are more than 0.
 *
 * @example fleschKincaidGrade({ sentences: 10, words: 100, syllables: 130 }).toFixed(2) // => '3.65'
 */
export const fleschKincaidGrade = ({ sentences, words, syllables }: Counts): number =>
  0.39 * (words / sentences) + 11.8 * (syllables / words) - 15.59;

/**
 * How easily an English text reads, 100 very easily, 0 hardly: 206.835 - 1.015 words a sentence - 84.6 syllables a
 * word (Flesch, A new readability yardstick, 1948).
 *
 * @example fleschReadingEase({ sentences: 1, words: 13, syllables: 24 }).toFixed(2) // => '37.46'
 */
export const fleschReadingEase = ({ sentences, words, syllables }: Counts): number =>
  206.835 - 1.015 * (words / sentences) - 84.6 * (syllables / words);

/**
 * How easily a Spanish text reads, 100 very easily: 206.84 - 60 syllables a word - 1.02 words a sentence
 * (Fernández Huerta, Medidas sencillas de lecturabilidad, Consigna 214, 1959, in the form that Law corrected in
 * 2011; prints that take 0.60 mean syllables per hundred words).
 *
 * @example fernandezHuerta({ sentences: 10, words: 100, syllables: 170 }).toFixed(2) // => '94.64'
 */
export const fernandezHuerta = ({ sentences, words, syllables }: Counts): number =>
  206.84 - 60 * (syllables / words) - 1.02 * (words / sentences);

/**
 * The perspicuity of a Spanish text: 206.835 - 62.3 syllables a word - words a sentence (Szigriszt-Pazos, Sistemas
 * predictivos de legibilidad del mensaje escrito, 1993).
 *
 * @example szigrisztPazos({ sentences: 10, words: 100, syllables: 170 }).toFixed(3) // => '90.925'
 */
export const szigrisztPazos = ({ sentences, words, syllables }: Counts): number =>
  206.835 - 62.3 * (syllables / words) - words / sentences;

/** The bands of the INFLESZ scale over the perspicuity, easiest first (from memory). */
const INFLESZ: readonly (readonly [from: number, band: string])[] = [
  [80, 'very easy'],
  [65, 'quite easy'],
  [55, 'normal'],
  [40, 'rather hard'],
];

/**
 * The band of the INFLESZ scale in which a perspicuity lies.
 *
 * @example infleszBand(70) // => 'quite easy'
 */
export const infleszBand = (perspicuity: number): string =>
  INFLESZ.find(([from]) => perspicuity > from)?.[1] ?? 'very hard';

/** Grades of the Fernández Huerta score, as its published table has them: from which score on, up to which grade. */
const GRADES: readonly (readonly [grade: number, from: number])[] = [
  [4, 90],
  [5, 80],
  [6, 70],
  [8, 60],
];
const BEFORE_UNIVERSITY = 50;

/**
 * The least Fernández Huerta score that readers of a grade can cope with. The table begins with grade 4, so
 * younger readers are given its first band.
 *
 * @example leastScoreForGrade(4) // => 90
 * @example leastScoreForGrade(7) // => 60
 */
export const leastScoreForGrade = (grade: number): number =>
  GRADES.find(([upTo]) => grade <= upTo)?.[1] ?? BEFORE_UNIVERSITY;
