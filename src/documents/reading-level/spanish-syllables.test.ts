import fc from 'fast-check';
import { expect, test } from 'vitest';
import { dividedSpanish, spanishSyllables } from './spanish-syllables.ts';

// Divided by hand after the rules of Ortografía de la lengua española (2010); from memory.
test.each(
  `pa-lan-ca pun-to car-ga po-le-a ru-ti-na trac-ción cons-truc-ción ins-tan-te obs-tá-cu-lo
  abs-trac-to e-jer-ci-cio pe-rro ca-lle no-che li-bro re-gla a-gua pin-güi-no gui-ta-rra bus-que quie-to
  a-quí guí-a dí-a pa-ís re-ú-ne le-í-do ca-í-a des-pués tam-bién ac-ción a-ve-ri-guáis buey muy hay ma-yor
  y ya rey ba-úl ca-os te-a-tro a-é-re-o co-o-pe-rar a-ho-ra a-hí bú-ho ve-hí-cu-lo ca-ca-hue-te ahu-mar
  cons-truí je-sui-ta ciu-dad rui-do cui-da-do pla-no in-cli-na-do di-na-mó-me-tro ro-za-mien-to
  tor-ni-llo cu-ña ca-bres-tan-te a-pa-re-jo gra-dua-ción lec-tu-ra es-fuer-zo suel-ta le-van-ta`.split(
    /\s+/,
  ),
)('%s is divided as the rules of spelling say', (divided) => {
  expect(dividedSpanish(divided.replaceAll('-', '')).join('-')).toBe(divided);
});

test('a word is its syllables in order: dividing loses no letter', () => {
  const letter = fc.constantFrom(...'abcdefghijlmnopqrstuvxyzñáéíóúü');
  fc.assert(
    fc.property(fc.string({ unit: letter, maxLength: 14 }), (letters) => {
      expect(dividedSpanish(`a${letters}`).join('')).toBe(`a${letters}`);
    }),
  );
});

test('a plural in -es has one syllable more, a hyphen adds up, and no word has none', () => {
  expect(spanishSyllables('papel')).toBe(2);
  expect(spanishSyllables('papeles')).toBe(3);
  expect(spanishSyllables('arriba-abajo')).toBe(6);
  expect(spanishSyllables('N')).toBe(1);
});
