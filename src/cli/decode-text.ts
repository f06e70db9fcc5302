/**
 * A text file as spreadsheets save it: UTF-8, UTF-16 with or without its mark (what some call "Unicode
 * text"), or Windows-1252, which is what an older "CSV" is in the west of Europe and America.
 */
export function decodeText(bytes: Uint8Array): string {
  const wide = wideOrder(bytes);
  if (wide !== null) return new TextDecoder(wide).decode(bytes);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return windows1252(bytes);
  }
}

/** UTF-16 by its mark; without one by its zero bytes, every second one where letters are Latin. */
function wideOrder(bytes: Uint8Array): 'utf-16le' | 'utf-16be' | null {
  const [first, second] = bytes;
  if (first === 0xff && second === 0xfe) return 'utf-16le';
  if (first === 0xfe && second === 0xff) return 'utf-16be';
  const start = bytes.subarray(0, 400);
  const zeros = (from: number): number => start.filter((byte, n) => n % 2 === from && byte === 0).length;
  const many = start.length * 0.3;
  if (start.length < 4) return null;
  if (zeros(1) > many && zeros(0) === 0) return 'utf-16le';
  return zeros(0) > many && zeros(1) === 0 ? 'utf-16be' : null;
}

/** Windows-1252 from 80 to 9F (WHATWG Encoding, index windows-1252); some Node decode these as Latin-1. */
const OWN_MARKS = '€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008dŽ\u008f\u0090‘’“”•–—˜™š›œ\u009džŸ';

const windows1252 = (bytes: Uint8Array): string =>
  Array.from(bytes, (byte) =>
    byte >= 0x80 && byte < 0xa0 ? (OWN_MARKS[byte - 0x80] ?? '') : String.fromCharCode(byte),
  ).join('');
