/** Marks that a spreadsheet or a phone puts between digits in threes, and never a person. */
const HARD_THOUSANDS = /(?<![\d.,])\d{1,3}(?:[\u00a0\u2009\u202f'’]\d{3})+(?!\d)/g;
const UNSEEN = /[\u200b-\u200f\u202a-\u202c\u2060\u2066-\u2069\ufeff\u00ad]/g;

/**
 * A cell as a person sees it: one kind of space, minus and fraction, without the marks by which
 * spreadsheets keep a text a text.
 *
 * @example cleanText('="14½\u00a0oz"') // => '14 1/2 oz'
 */
export function cleanText(written: string): string {
  const text = written
    .replace(UNSEEN, '')
    .replace(HARD_THOUSANDS, (number) => number.replace(/\D/g, ''))
    .replace(/[¼½¾⅐-⅞]/g, ' $&')
    .normalize('NFKC')
    .replaceAll('\u2044', '/')
    .replace(/[−‒]/g, '-')
    .replace(/^ ?[–—](?=[\d.,])/, '-')
    .replace(/[“”„″]/g, '"')
    .replace(/\s+/g, ' ')
    .trim();
  return text
    .replace(/^=?"([^"]*)"$/, '$1')
    .replace(/^'(?=\S)/, '')
    .replace(/!+$|(?<=[.,]\d+)[.,]$/, '')
    .trim();
}

const HEDGE_BEFORE =
  /^(?:~|≈|∼|(?:about|approx(?:imately)?|around|roughly|nearly|almost|maybe|perhaps|ca|circa|unos|unas|aprox(?:imadamente)?|casi|alrededor de|más o menos|mas o menos|como|quizás?|etwa|ungefähr|rund|fast|environ|env|presque|we think|i think|creemos|creo)(?![\p{L}])\.?)\s*/iu;
const HEDGE_BEHIND =
  /\s*(?:\(\?\)|\?+|-?ish|or so|or thereabouts|approx(?:imately)?\.?|aprox(?:imadamente)?\.?|about|ca\.?|más o menos|mas o menos|o así|ungefähr|environ)$/iu;

/**
 * "about 2", "2?": what is left when the doubt is taken off, and whether there was any.
 *
 * @example withoutHedge('unos 2,4 N').text // => '2,4 N'
 */
export function withoutHedge(text: string): { readonly text: string; readonly hedged: boolean } {
  const rest = text.replace(HEDGE_BEFORE, '').replace(HEDGE_BEHIND, '').trim();
  return rest === text || rest === '' ? { text, hedged: false } : { text: rest, hedged: true };
}

/** A number with letters among its digits; `l` of "lb" and `o` of "oz" are letters of a unit. */
const DIGITS_AND_LETTERS = /(?<![\p{L}\d])(?:[\d.,I|]|[Oo](?![nz])|l(?![bi]))+/gu;

/**
 * "O.8" for 0.8 and "l.5" for 1.5. Where no real digit stands nothing is made of it: a word is not 0.
 *
 * @example withoutMisspelling('O.8 N') // => '0.8 N'
 * @example withoutMisspelling('Oo') // => 'Oo'
 */
export const withoutMisspelling = (text: string): string =>
  text.replace(DIGITS_AND_LETTERS, (number) =>
    /\d/.test(number) ? number.replace(/[Oo]/g, '0').replace(/[lI|]/g, '1') : number,
  );

/**
 * A remark in brackets behind a reading.
 *
 * @example withoutRemark('2.2 (slipped)').remark // => 'slipped'
 */
export function withoutRemark(text: string): { readonly text: string; readonly remark: string } {
  const found = /^(.*[^\s(].*?) ?\(([^()]*\p{L}[^()]*)\)$/u.exec(text);
  return found === null ? { text, remark: '' } : { text: found[1] ?? '', remark: found[2] ?? '' };
}

/** Months as spreadsheets write them in English, Spanish, German and French, short and long. */
const MONTHS = [
  'jan(?:uary|uar|v|vier)?|ene(?:ro)?|feb(?:ruary|rero|ruar)?|févr?(?:ier)?|mar(?:ch|zo|s)?|mär(?:z)?|mrz',
  'apr(?:il)?|abr(?:il)?|avr(?:il)?|may(?:o)?|mai|june?|junio?|juni|juin|july?|julio?|juli|juil(?:let)?',
  'aug(?:ust)?|ago(?:sto)?|août|sept?(?:ember|iembre|embre)?|oct(?:ober|ubre|obre)?|okt(?:ober)?',
  'nov(?:ember|iembre|embre)?|dec(?:ember)?|dic(?:iembre)?|dez(?:ember)?|déc(?:embre)?',
].join('|');
const DATES = [
  new RegExp(`^\\d{1,2}[-./ ]\\s?(?:${MONTHS})\\.?(?:[-./ ]\\d{2,4})?$`, 'iu'),
  new RegExp(`^(?:${MONTHS})\\.?[-./ ]\\d{1,4}$`, 'iu'),
  /^\d{1,2}([-./])\d{1,2}\1\d{4}(?: \d{1,2}:\d{2}(?::\d{2})?)?$/,
  /^\d{4}-\d{2}-\d{2}(?:[T ]\d{1,2}:\d{2}(?::\d{2})?)?$/,
  /^\d{1,2}:\d{2}(?::\d{2})?$/,
];
const SPREADSHEET_ERROR = /^(?:#{2,}|#[\p{Lu}¡?/0-9_]+[!?]?)$/u;

/**
 * What a spreadsheet put in the place of a reading, as a sentence key: what the group wrote is lost.
 *
 * @example spreadsheetWriting('02-Abr') // => 'reading.date'
 * @example spreadsheetWriting('#VALUE!') // => 'reading.spreadsheet-error'
 */
export function spreadsheetWriting(text: string): string | null {
  if (DATES.some((date) => date.test(text))) return 'reading.date';
  if (SPREADSHEET_ERROR.test(text)) return 'reading.spreadsheet-error';
  return /^=/.test(text) || /^[-+@][A-Za-z]{1,3}\d+/.test(text) ? 'reading.formula' : null;
}
