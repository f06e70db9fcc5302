/**
 * All that a number as people and spreadsheets write it can mean, the likelier meaning first; nothing
 * where it is none. Only marks between threes leave two meanings: "1,234" is 1.234 or 1234.
 *
 * @example numbersWritten('2,4') // => [2.4]
 * @example numbersWritten('1.234,5') // => [1234.5]
 * @example numbersWritten('1,234') // => [1.234, 1234]
 * @example numbersWritten('14 1/2') // => [14.5]
 */
export function numbersWritten(text: string): readonly number[] {
  const [, sign = '', body = ''] = /^([-+]?)(.*)$/s.exec(text) ?? [];
  const numbers = unsigned(body).filter((number) => isHeld(number, body));
  return sign === '-' ? numbers.map((number) => (number === 0 ? 0 : -number)) : numbers;
}

/** Neither too large for a number nor so small that it would become 0. */
const isHeld = (number: number, text: string): boolean =>
  Number.isFinite(number) && (number !== 0 || !/[1-9]/.test(text.replace(/[eE].*$/, '')));

function unsigned(text: string): readonly number[] {
  if (/^\d+[.,]?$/.test(text)) return [Number.parseInt(text, 10)];
  const decimal = /^(\d*)[.,](\d+)$/.exec(text);
  if (decimal !== null) {
    const [, whole = '', part = ''] = decimal;
    const plain = Number(`${whole}.${part}`);
    return isThousands(whole, part) ? [plain, Number(whole + part)] : [plain];
  }
  const power = /^(\d+(?:[.,]\d+)?)[eE]([-+]?\d{1,2})$/.exec(text);
  if (power !== null) return [Number(`${(power[1] ?? '').replace(',', '.')}e${power[2]}`)];
  const grouped = groupedNumber(text);
  return grouped.length > 0 ? grouped : fraction(text);
}

const isThousands = (whole: string, part: string): boolean =>
  /^[1-9]\d{0,2}$/.test(whole) && part.length === 3;

/** Thousands marked by a point, a comma or a space, and a decimal mark that is none of these. */
function groupedNumber(text: string): readonly number[] {
  const found = /^([1-9]\d{0,2})(?:([., ])\d{3})(?:\2\d{3})*([.,]\d+)?$/.exec(text);
  if (found === null) return [];
  const [, , mark = '', tail = ''] = found;
  if (tail.startsWith(mark)) return [];
  const whole = text.slice(0, text.length - tail.length);
  // Three digits in every part are readings side by side, as "225 230".
  if (mark === ' ' && tail === '' && whole.split(' ').every((part) => part.length === 3)) return [];
  return [Number(whole.replaceAll(mark, '') + tail.replace(',', '.'))];
}

/** Halves, thirds, quarters and so on, as inches and ounces have them; "225/230" is two readings. */
function fraction(text: string): readonly number[] {
  const found = /^(?:(\d+)[ -])?(\d+) ?\/ ?(2|3|4|5|6|8|10|16|32|64)$/.exec(text);
  if (found === null) return [];
  const [, whole = '0', over = '', under = ''] = found;
  return [Number(whole) + Number(over) / Number(under)];
}
