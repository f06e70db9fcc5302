import { wideOrder } from '../core/files/wide-order.ts';

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

/** Windows-1252 from 80 to 9F (WHATWG Encoding, index windows-1252); some Node decode these as Latin-1. */
const OWN_MARKS = '€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008dŽ\u008f\u0090‘’“”•–—˜™š›œ\u009džŸ';

const windows1252 = (bytes: Uint8Array): string =>
  Array.from(bytes, (byte) =>
    byte >= 0x80 && byte < 0xa0 ? (OWN_MARKS[byte - 0x80] ?? '') : String.fromCharCode(byte),
  ).join('');
