/** Octets that a line of a calendar may have, without its end (RFC 5545, 3.1). */
const LONGEST = 75;

/**
 * One property as a calendar has it: name, colon, value and CRLF, folded so that no line is longer than 75
 * octets (RFC 5545, 3.1). A fold never parts the octets of one letter.
 *
 * @example contentLine('VERSION', '2.0') // => 'VERSION:2.0\r\n'
 */
export function contentLine(name: string, value: string): string {
  let text = '';
  let octets = 0;
  for (const letter of `${name}:${value}`) {
    const more = octetsOf(letter);
    if (octets + more > LONGEST) {
      text += '\r\n ';
      octets = 1;
    }
    text += letter;
    octets += more;
  }
  return `${text}\r\n`;
}

/** How long a letter is in UTF-8. */
function octetsOf(letter: string): number {
  const code = letter.codePointAt(0) ?? 0;
  if (code < 0x80) return 1;
  if (code < 0x800) return 2;
  return code < 0x10000 ? 3 : 4;
}

/**
 * Text as a value: backslash, comma and semicolon with a backslash before them, a line end as \n
 * (RFC 5545, 3.3.11). Other control characters have no place in a calendar and are left out.
 *
 * @example textValue('table 4, the capstan') // => 'table 4\\, the capstan'
 */
export const textValue = (text: string): string =>
  text
    .replace(/[\\;,]/g, '\\$&')
    .replace(/\r\n|\n|\r/g, '\\n')
    // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what has to go
    .replace(/[\u0000-\u0008\u000b-\u001f\u007f]/g, '');
