import type { Dimension } from './dimension.ts';

/**
 * A unit that may be written in a file or on a page. Its size in SI is a ratio of two whole numbers
 * wherever it is defined exactly, so that `14.2 cm` becomes 14.2 / 100 with one rounding only.
 *
 * Source: SI Brochure (9th edition) for the SI units and the standard acceleration of free fall
 * 9.80665 m/s²; the international yard and pound (1959) for 1 in = 0.0254 m and
 * 1 lb = 0.45359237 kg, as in NIST Special Publication 811, appendix B (from memory). A gram-force is
 * the standard weight of a gram, so 1 gf = 0.00980665 N whatever the local gravity.
 */
export interface Unit {
  /** As printed; case counts, since mN is not MN. */
  readonly symbol: string;
  /** Other ways to write it; words in any case, `²` and `°` where a keyboard has them. */
  readonly also: readonly string[];
  readonly dimension: Dimension;
  /** One of it in SI is `times / per`. */
  readonly times: number;
  readonly per: number;
}

const unit = (
  symbol: string,
  dimension: Dimension,
  times: number,
  per: number,
  also: readonly string[] = [],
): Unit => ({ symbol, also, dimension, times, per });

/** Every unit that may be written, those of one dimension together, the usual one first. */
export const units: readonly Unit[] = [
  unit('kg', 'mass', 1, 1, ['kilogram', 'kilograms', 'kilo', 'kilos']),
  unit('g', 'mass', 1, 1000, ['gram', 'grams', 'gramme', 'grammes']),
  unit('mg', 'mass', 1, 1_000_000, ['milligram', 'milligrams']),
  unit('t', 'mass', 1000, 1, ['tonne', 'tonnes']),
  unit('lb', 'mass', 45_359_237, 100_000_000, ['lbs', 'pound', 'pounds']),
  unit('oz', 'mass', 45_359_237, 1_600_000_000, ['ounce', 'ounces']),
  unit('N', 'force', 1, 1, ['newton', 'newtons']),
  unit('mN', 'force', 1, 1000, ['millinewton', 'millinewtons']),
  unit('cN', 'force', 1, 100, ['centinewton', 'centinewtons']),
  unit('kN', 'force', 1000, 1, ['kilonewton', 'kilonewtons']),
  unit('gf', 'force', 980_665, 100_000_000, ['gram-force', 'grams-force', 'gram force', 'grams force']),
  unit('kgf', 'force', 980_665, 100_000, [
    'kilogram-force',
    'kilograms-force',
    'kilogram force',
    'kilograms force',
  ]),
  unit('ozf', 'force', 45_359_237 * 980_665, 160_000_000_000_000, [
    'ounce-force',
    'ounces-force',
    'ounce force',
    'ounces force',
  ]),
  unit('lbf', 'force', 45_359_237 * 980_665, 10_000_000_000_000, [
    'pound-force',
    'pounds-force',
    'pound force',
    'pounds force',
  ]),
  unit('m', 'length', 1, 1, ['metre', 'metres', 'meter', 'meters']),
  unit('cm', 'length', 1, 100, ['centimetre', 'centimetres', 'centimeter', 'centimeters']),
  unit('mm', 'length', 1, 1000, ['millimetre', 'millimetres', 'millimeter', 'millimeters']),
  unit('km', 'length', 1000, 1, ['kilometre', 'kilometres', 'kilometer', 'kilometers']),
  unit('in', 'length', 254, 10_000, ['"', '″', 'inch', 'inches']),
  unit('ft', 'length', 3048, 10_000, ["'", '′', 'foot', 'feet']),
  unit('yd', 'length', 9144, 10_000, ['yard', 'yards']),
  unit('deg', 'angle', Math.PI, 180, ['°', 'degree', 'degrees']),
  unit('rad', 'angle', 1, 1, ['radian', 'radians']),
  unit('s', 'time', 1, 1, ['sec', 'second', 'seconds']),
  unit('min', 'time', 60, 1, ['minute', 'minutes']),
  unit('h', 'time', 3600, 1, ['hr', 'hour', 'hours']),
  unit('%', 'ratio', 1, 100, ['percent', 'per cent']),
  unit('N/m', 'stiffness', 1, 1, ['newtons per metre', 'newtons per meter']),
  unit('N/cm', 'stiffness', 100, 1, ['newtons per centimetre', 'newtons per centimeter']),
  unit('N/mm', 'stiffness', 1000, 1, ['newtons per millimetre', 'newtons per millimeter']),
  unit('lbf/in', 'stiffness', 45_359_237 * 980_665, 254_000_000_000, ['pounds-force per inch']),
  unit('m/s²', 'acceleration', 1, 1, ['m/s2', 'm/s^2']),
];

const bySymbol = new Map<string, Unit>();
const byWord = new Map<string, Unit>();
for (const each of units) {
  bySymbol.set(each.symbol, each);
  for (const also of each.also) {
    bySymbol.set(also, each);
    if (/^[a-z]{3}/.test(also)) byWord.set(also, each);
  }
}

/**
 * The unit that a text names, or nothing. Symbols keep their case, words may have any.
 *
 * @example unitNamed('Inches')?.symbol // => 'in'
 * @example unitNamed('Kg') // => undefined
 */
export const unitNamed = (text: string): Unit | undefined =>
  bySymbol.get(text) ?? byWord.get(text.toLowerCase().replace(/\s+/g, ' '));

/**
 * The symbols in which a dimension may be written; a ratio needs none.
 *
 * @example symbolsOf('time') // => ['s', 'min', 'h']
 */
export const symbolsOf = (dimension: Dimension): readonly string[] =>
  units.filter((each) => each.dimension === dimension).map((each) => each.symbol);

/**
 * A number of some unit in SI.
 *
 * @example toSi(14.2, 'cm') // => 0.142
 * @example toSi(1, 'lbf') // => 4.4482216152605
 */
export const toSi = (value: number, symbol: string): number => {
  const { times, per } = known(symbol);
  return (value * times) / per;
};

/**
 * An SI number in some unit.
 *
 * @example inUnit(0.3, 'g') // => 300
 * @example inUnit(0.25, '') // => 0.25
 */
export const inUnit = (si: number, symbol: string): number => {
  const { times, per } = known(symbol);
  return (si * per) / times;
};

/** The program's own units come through here; what a person wrote is asked of `unitNamed` first. */
function known(symbol: string): Pick<Unit, 'times' | 'per'> {
  if (symbol === '') return { times: 1, per: 1 };
  const found = unitNamed(symbol);
  if (found === undefined) throw new RangeError(`no unit is called "${symbol}"`);
  return found;
}
