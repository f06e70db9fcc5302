// The best that anybody could say: who knows the true apparatus, the true rates and only this one
// reading. Where even the knower doesn't have the true cause among two, physics can't tell it apart.
import { UNITS } from './instrument.mjs';
import { askedOf, figureOf, halved } from './readings.mjs';
import { slipsFor } from './slips.mjs';

const SLIPS_AMONG_ALL = 0.15;
const SCATTER = 0.023;

/** Names of causes, most probable first, for the number as it was written. */
export function knowerSays(drawn, reading) {
  const table = drawn.tables.find(({ mark }) => mark === reading.table);
  const setup = table.setups.find(({ mark }) => mark === reading.setup);
  const number = Number.parseFloat(reading.text.replace(',', '.'));
  const si = table.isCounted ? setup.unitSi : UNITS[table.scale.unit];
  const step = table.isCounted ? setup.step / si : table.scale.step;
  const slips = slipsFor(table, setup, drawn.kit);
  const total = slips.reduce((sum, { weight }) => sum + weight, 0);
  const weigh = (slip, prior) => {
    if (slip?.pen?.stray && Number.isNaN(number)) return 0;
    if (slip?.pen?.stray) return prior * (0.5 / (table.isCounted ? number + 1 : table.scale.range / step));
    const figure = figureOf(table, drawn.kit, askedOf(table, setup, slip), table.truth, table.scale?.truth);
    const times = slip?.pen?.times ?? 1;
    const at = (value) => ({ low: (value.low / si) * times, high: (value.high / si) * times });
    if (slip?.pen?.swap && !Number.isNaN(number)) {
      const back = unswapped(reading.text, number);
      return back === null ? 0 : prior * near(at(figure), back, step);
    }
    if (Number.isNaN(number)) return prior * outside(at(figure), table.scale, reading.text);
    if (slip?.pen?.halfMarks) return prior * near(halvedEnds(at(figure), step), number, step / 2);
    const marks = step * times;
    return prior * near(at(figure), number, marks);
  };
  return [
    { name: 'good', weight: weigh(null, 1 - SLIPS_AMONG_ALL) },
    ...slips.map((slip) => ({
      name: slip.name,
      weight: weigh(slip, (SLIPS_AMONG_ALL * slip.weight) / total),
    })),
  ]
    .sort((a, b) => b.weight - a.weight)
    .map(({ name }) => name);
}

/** Written down as past the last mark, or on the stop. */
const outside = ({ low, high }, scale, text) =>
  Number(text === 'off the scale' ? high * (1 + SCATTER) > scale.range : low < scale.step);

const halvedEnds = ({ low, high }, step) => ({ low: halved(low, step), high: halved(high, step) });

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
