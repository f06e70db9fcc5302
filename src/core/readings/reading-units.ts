import type { Dimension } from '../quantities/dimension.ts';
import { toSi } from '../quantities/unit.ts';

/** A unit as pupils write it: on a scale "g" is a graduation, so a force. */
export interface ReadingUnit {
  readonly name: string;
  readonly dimension: Dimension;
  readonly si: number;
}

const readingUnit = (name: string, symbol: string, dimension: Dimension): ReadingUnit => ({
  name,
  dimension,
  si: toSi(1, symbol),
});

/** Units that are written for a pull, in the order they are tried; names as the sentences know them. */
export const pullUnits: readonly ReadingUnit[] = [
  readingUnit('newtons', 'N', 'force'),
  readingUnit('grams', 'gf', 'force'),
  readingUnit('kilograms', 'kgf', 'force'),
  readingUnit('ounces', 'ozf', 'force'),
  readingUnit('pounds', 'lbf', 'force'),
];

export const travelUnits: readonly ReadingUnit[] = [
  readingUnit('millimetres', 'mm', 'length'),
  readingUnit('centimetres', 'cm', 'length'),
  readingUnit('inches', 'in', 'length'),
  readingUnit('metres', 'm', 'length'),
];

export const turnUnits: readonly ReadingUnit[] = [{ name: 'turns', dimension: 'ratio', si: 1 }];

/** What groups write, in English, Spanish, German and French: without spaces, points and accents. */
const WORDS: Readonly<Record<string, string>> = {
  newtons: 'n newton newtons newtones newtonios nt nw',
  grams:
    'g gf gr grs gm gms gram grams gramme grammes gramsforce gramforce gramo gramos gramofuerza gramosfuerza gramm',
  kilograms:
    'kg kgs kgf kp kilo kilos kilogram kilograms kilogramme kilogrammes kilogramsforce kilogramo kilogramos kilogramm',
  ounces: 'oz ozs ozf ounce ounces onza onzas unze unzen once onces',
  pounds: 'lb lbs lbf pound pounds libra libras pfund livre livres',
  millimetres: 'mm millimetre millimetres millimeter millimeters milimetro milimetros',
  centimetres: 'cm cms centimetre centimetres centimeter centimeters centimetro centimetros zentimeter',
  inches: "in ins inch inches pulg pulgada pulgadas zoll pouce pouces \" ''",
  metres: 'm mts metre metres meter meters metro metros',
  turns: 'turn turns rev revs vuelta vueltas umdrehung umdrehungen tour tours',
};

const UNITS: ReadonlyMap<string, ReadingUnit> = new Map(
  [...pullUnits, ...travelUnits, ...turnUnits].flatMap((unit) =>
    (WORDS[unit.name] ?? '').split(' ').map((word) => [word, unit] as const),
  ),
);

/**
 * The unit that a word stands for, or `null`.
 *
 * @example unitWritten('Gramos fuerza')?.name // => 'grams'
 */
export const unitWritten = (word: string): ReadingUnit | null =>
  UNITS.get(
    word
      .normalize('NFD')
      .replace(/\p{M}|[\s.-]/gu, '')
      .toLowerCase(),
  ) ?? null;
