import { describe, expect, it, test } from 'vitest';
import { decodeText } from './decode-text.ts';

const text = 'grupo;montaje;lectura\r\nÑandú;L1;2,4 N\r\nÄ;L2;14½ oz\r\n';
const mark = '\uFEFF';
const littleEnd = (of: string): Uint8Array => new Uint8Array(Buffer.from(of, 'utf16le'));
const bigEnd = (of: string): Uint8Array => new Uint8Array(Buffer.from(of, 'utf16le').swap16());

describe('a readings file is the same text however a spreadsheet saved it:', () => {
  test.each<[string, Uint8Array]>([
    ['UTF-8', new Uint8Array(Buffer.from(text))],
    ['UTF-8 with a mark', new Uint8Array(Buffer.from(mark + text))],
    ['UTF-16 with a mark, little end first', littleEnd(mark + text)],
    ['UTF-16 with a mark, big end first', bigEnd(mark + text)],
    ['UTF-16 without a mark, little end first', littleEnd(text)],
    ['UTF-16 without a mark, big end first', bigEnd(text)],
    ['Windows-1252', new Uint8Array(Buffer.from(text, 'latin1'))],
  ])('%s', (_, bytes) => expect(decodeText(bytes)).toBe(text));

  it('Windows-1252 has marks of its own where Latin-1 has none', () => {
    expect(decodeText(Uint8Array.of(0x80, 0x93, 0x96, 0x94, 0x9f))).toBe('€“–”Ÿ');
  });

  it('whatever the bytes are, there is a text', () => {
    for (const bytes of [[], [0], [0xff], [0xff, 0xfe], [0xc3, 0x28], [0, 0, 0, 0], [0xfe, 0xff, 0xd8]])
      expect(typeof decodeText(Uint8Array.from(bytes))).toBe('string');
  });
});
