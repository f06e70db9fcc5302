// The best that anybody could say: who knows the true apparatus, the true rates and only this one
// reading. Where even the knower doesn't have the true cause among two, physics can't tell it apart.
import { UNITS } from './instrument.mjs';
import { askedOf, figureOf, halved } from './readings.mjs';
import { slipsFor } from './slips.mjs';

const SLIPS_AMONG_ALL = 0.15;
const SCATTER = 0.023;

/** A cause in words; which weight was hung belongs to it. */
export const nameOf = (slip) =>
  slip === null ? 'good' : slip.key === undefined ? slip.name : `${slip.name} ${slip.key}`;

/** Names of causes, most probable first, for the number as it was written. */
export function knowerSays(drawn, reading) {
  const number = Number.parseFloat(reading.text.replace(',', '.'));
  return weighed(drawn, reading, number)
    .sort((a, b) => b.weight - a.weight)
    .map(({ name }) => name);
}

/** A cause whose chance of the same number is at least this share of the true one's can't be told from it. */
const AS_LIKELY = 1 / 3;

/** Causes that a single reading can't tell from the true one, whatever their rates: the figures coincide. */
export function rivalsOf(drawn, reading) {
  const number = Number.parseFloat(reading.text.replace(',', '.'));
  const all = weighed(drawn, reading, number);
  const own = all.find(({ name }) => name === nameOf(reading.slip));
  if (own === undefined || own.chance === 0 || reading.slip.pen?.stray) return [];
  return all.filter(
    ({ name, isStray, chance }) => name !== own.name && !isStray && chance >= AS_LIKELY * own.chance,
  );
}

function weighed(drawn, reading, number) {
  const table = drawn.tables.find(({ mark }) => mark === reading.table);
  const setup = table.setups.find(({ mark }) => mark === reading.setup);
  const slips = slipsFor(table, setup, drawn.kit);
  const total = slips.reduce((sum, { weight }) => sum + weight, 0);
  return [null, ...slips].map((slip) => {
    const chance = chanceOf({ table, setup, kit: drawn.kit, text: reading.text, number }, slip);
    const prior = slip === null ? 1 - SLIPS_AMONG_ALL : (SLIPS_AMONG_ALL * slip.weight) / total;
    return { name: nameOf(slip), isStray: slip?.pen?.stray === true, chance, weight: prior * chance };
  });
}

/** Chance of this very number where this is what happened. */
function chanceOf({ table, setup, kit, text, number }, slip) {
  const si = table.isCounted ? setup.unitSi : UNITS[table.scale.unit];
  const step = table.isCounted ? setup.step / si : table.scale.step;
  const isNumber = !Number.isNaN(number);
  if (slip?.pen?.stray) return isNumber ? 0.5 / (table.isCounted ? number + 1 : table.scale.range / step) : 0;
  const figure = figureOf(table, kit, askedOf(table, setup, slip), table.truth, table.scale?.truth);
  const times = slip?.pen?.times ?? 1;
  const at = { low: (figure.low / si) * times, high: (figure.high / si) * times };
  if (!isNumber) return outside(at, table.scale, text);
  if (slip?.pen?.swap) {
    const back = unswapped(text, number);
    return back === null ? 0 : near(at, back, step);
  }
  if (slip?.pen?.halfMarks)
    return near({ low: halved(at.low, step), high: halved(at.high, step) }, number, step / 2);
  return near(at, number, step * times);
}

/** Written down as past the last mark, or on the stop. */
const outside = ({ low, high }, scale, text) =>
  Number(text === 'off the scale' ? high * (1 + SCATTER) > scale.range : low < scale.step);

/** Chance of this very number: a mark's width of the normal law, spread evenly over a band. */
function near({ low, high }, number, step) {
  const u = Math.hypot((SCATTER * (low + high)) / 2, step / 3);
  const width = high - low;
  const gap = number < low ? low - number : number > high ? number - high : 0;
  const inside = Math.exp(-0.5 * (gap / u) ** 2);
  return (step * inside) / (width + u * Math.sqrt(2 * Math.PI));
}

function unswapped(text, number) {
  const digits = text.match(/[\d.,]+/)?.[0].replace(',', '.') ?? '';
  const places = [...digits].flatMap((sign, n) => (sign === '.' ? [] : [n]));
  const [a, b] = places;
  if (b === undefined || digits[a] === digits[b]) return null;
  const signs = [...digits];
  [signs[a], signs[b]] = [signs[b], signs[a]];
  const back = Number(signs.join(''));
  return back === number ? null : back;
}
