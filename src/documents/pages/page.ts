import { escapeText } from '../markup.ts';
import { type Language, languagePack } from '../sentences/language.ts';

/** A whole page in one file: its styles inside, no script, nothing fetched. `body` is markup already. */
export const page = (language: Language, title: string, styles: readonly string[], body: string): string =>
  [
    '<!doctype html>',
    `<html lang="${languagePack(language).tag}">`,
    '<head>',
    '<meta charset="utf-8">',
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<title>${escapeText(title)}</title>`,
    `<style>${styles.join('').trim()}</style>`,
    '</head>',
    `<body>\n${body}\n</body>`,
    '</html>',
    '',
  ].join('\n');

/** The title block of a page: what it is, and beside it what it belongs to. */
export function titleBlock(
  heading: string,
  lines: readonly string[],
  belongs: readonly (readonly [term: string, value: string])[],
): string {
  const about = lines.map((line) => `<p>${escapeText(line)}</p>`).join('');
  const terms = belongs
    .map(([term, value]) => `<dt>${escapeText(term)}</dt><dd>${escapeText(value)}</dd>`)
    .join('');
  return `<header class="block"><div class="mark"><h1>${escapeText(heading)}</h1>${about}</div><dl>${terms}</dl></header>`;
}
