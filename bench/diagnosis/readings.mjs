// From an apparatus as it truly is, over a hand and an eye, to what stands in the cell.
import { onMarks, pointer, UNITS, written } from './instrument.mjs';

/** How a setup is asked when all goes well; a slip changes some of it. */
export const askedOf = (table, setup, slip = null) => ({
  state: slip?.state ?? setup.state,
  way: slip?.way ?? setup.way,
  zeroed: slip?.zeroed ?? table.zeroed,
  rush: slip?.rush ?? false,
});

/**
 * Where the pointer would stand for a perfect reader, from low to high (held still it may be anywhere
 * between). `lag` is the share of tube friction against the motion.
 */
export function figureOf(table, kit, asked, apparatus, scale, lag = 0.5, acceleration = 0.3) {
  if (table.isCounted) {
    const figure = table.figure(apparatus, asked.state);
    return { low: figure, high: figure };
  }
  const angle = table.hang(apparatus, asked.state);
  // Where the bar pulls the scale along, its case hangs in the air and can pull no less than it weighs.
  const weight = angle === Math.PI ? scale.mass * kit.gravity : 0;
  const force = (up, grip) => table.force(apparatus, asked.state, up, grip);
  const stands = (pull, drag) => pointer(scale, pull, angle, asked.zeroed === 'in place' ? angle : 0, drag);
  const one = (pull, drag) => ({ low: stands(pull, drag), high: stands(pull, drag) });
  const lifts = force(1, asked.way === 'raise' ? 'moving' : 'starting');
  if (asked.way !== 'lower' && lifts < weight) return one(weight, 0);
  switch (asked.way) {
    case 'raise':
      return one(lifts + (asked.rush ? inertia(table, kit, asked, apparatus, lifts) * acceleration : 0), lag);
    case 'start':
      return one(lifts, lag);
    case 'lower':
      return one(Math.max(force(-1, 'moving'), weight), -lag);
    default:
      return {
        low: stands(Math.max(force(-1, 'starting'), weight, 0), 0),
        high: stands(lifts, 0),
      };
  }
}

/** Mass that the pull speeds up, seen from the hook. */
const inertia = (table, kit, { state }, apparatus, pull) =>
  table.mass === undefined ? pull / kit.gravity : table.mass(apparatus, state);

/** One reading as one group writes it, with what it ought to have been. */
export function readOne(chance, { table, setup, kit, reader, slip }) {
  const lag = chance.about(0, 1) * (reader.taps ? 0.4 : 1);
  const speed = chance.between(0.15, 0.5);
  const asked = askedOf(table, setup, slip);
  const scale = table.scale?.truth;
  const figure = figureOf(table, kit, asked, table.truth, scale, lag, speed);
  const right = figureOf(table, kit, askedOf(table, setup), table.truth, scale);
  const si = table.isCounted ? setup.unitSi : UNITS[table.scale.unit];
  const step = table.isCounted ? setup.step / si : table.scale.step;
  const at = chance.between(figure.low, figure.high);
  const scattered = table.isCounted
    ? at + (setup.state.watch === 'travel' ? 0.0002 * chance.normal() : 0.04 * chance.normal())
    : at * (1 + reader.scatter * chance.normal());
  const middle = (figure.low + figure.high) / 2;
  const pen = slip?.pen ?? {};
  const meant = pen.halfMarks ? si * halved(middle / si, step) : middle * (pen.times ?? 1);
  const cell = cellOf(chance, { number: scattered / si, step, table, setup, reader, pen });
  return {
    ...cell,
    siOf: si,
    step,
    /** What the reading is taken for, in the setup's own unit (SI), before any hand. */
    meant,
    right: (right.low + right.high) / 2,
  };
}

function cellOf(chance, { number, step, table, setup, reader, pen }) {
  const range = table.isCounted ? Number.POSITIVE_INFINITY : table.scale.range;
  const unit = table.isCounted ? (setup.state.watch === 'travel' ? 'mm' : 'turns') : table.scale.unit;
  if (pen.stray) {
    const top = table.isCounted ? 2 * number : range;
    return {
      text: written(onMarks(chance.between(step, top), step, false), step, { unit: null, comma: false }),
      stray: true,
    };
  }
  if (number < 0) return { text: chance.pick(['stop', 'at the stop', '0']), isOut: true };
  if (number > range) return { text: 'off the scale', isOut: true };
  const halves = reader.halves && !table.isCounted;
  const seen = onMarks(number, step, halves);
  const fine = halves ? step / 2 : step;
  const said = unit === 'gf' ? 'g' : unit;
  const style = { unit: reader.writesUnit ? said : null, comma: reader.comma };
  if (pen.halfMarks) return { text: written(halved(seen, step), fine / 2, style) };
  if (pen.swap) return swapped(seen, fine, style);
  if (pen.times === undefined) return { text: written(seen, fine, style) };
  const other = number * pen.times;
  const mark = pen.to === undefined ? fine * pen.times : markFor(pen.to, step * pen.times);
  // A slip of the unit is only one where the unit isn't said.
  const bare = { unit: pen.to === undefined ? style.unit : null, comma: reader.comma };
  return { text: written(pen.to === undefined ? seen * pen.times : onMarks(other, mark, false), mark, bare) };
}

/** Marks of a column that nobody drew for these newtons: a round step near the scale's own. */
function markFor(_unit, step) {
  const decade = 10 ** Math.floor(Math.log10(step));
  return decade * ([1, 2, 5].find((each) => each * decade >= step * 0.99) ?? 10);
}

/** Numbers stand at every fifth mark; what is read above them counts half. */
export function halved(number, step) {
  const below = Math.floor(number / (5 * step) + 1e-9) * 5 * step;
  return below + (number - below) / 2;
}

/** The first two digits change places; where they are alike nothing has happened. */
function swapped(seen, fine, style) {
  const text = written(seen, fine, { unit: null, comma: false });
  const places = [...text].flatMap((sign, n) => (sign === '.' ? [] : [n]));
  const [a, b] = places.slice(0, 2);
  if (b === undefined || text[a] === text[b]) return { text: written(seen, fine, style), isVoid: true };
  const signs = [...text];
  [signs[a], signs[b]] = [signs[b], signs[a]];
  const number = Number(signs.join(''));
  return { text: written(number, fine, style), swappedTo: number };
}
