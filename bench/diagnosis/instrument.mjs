// A spring scale as it is, and a person who reads it and writes something down.
import { G0 } from './laws.mjs';

const SCALES = [
  { range: 2.5, step: 0.05, unit: 'N' },
  { range: 5, step: 0.1, unit: 'N' },
  { range: 10, step: 0.2, unit: 'N' },
  { range: 250, step: 5, unit: 'gf' },
  { range: 500, step: 10, unit: 'gf' },
  { range: 1000, step: 20, unit: 'gf' },
];

export const UNITS = { N: 1, gf: G0 / 1000, ozf: 0.028349523125 * G0, lbf: 0.45359237 * G0, kgf: G0 };

/** A scale out of the drawer: what the teacher writes into the kit file, and what it truly is. */
export function drawScale(chance, gravity) {
  const kind = chance.pick(SCALES);
  const si = UNITS[kind.unit];
  const mass = chance.whole(36, 70) / 1000;
  const isDual = chance.yes(0.4);
  const isTurnedOver = chance.yes(0.65);
  const isChecked = chance.yes(0.6);
  const bound = chance.pick([0.01, 0.02]) * kind.range;
  const share = chance.about(0.17, 0.33);
  const shift = 2 * share * mass * gravity;
  const tube = chance.yes(0.5) ? [0.01, 0.03] : [0.02, 0.05];
  const said = {
    part: 'spring scale',
    range: `${kind.range} ${kind.unit}`,
    graduation: `${kind.step} ${kind.unit}`,
    mass: `${grams(mass)} g ± 0.5 g`,
    ...(isDual ? { 'other graduation': kind.unit === 'N' ? `${other(kind)} gf` : `${other(kind)} N` } : {}),
    ...(isTurnedOver
      ? { 'turn-over shift': `${(shift + 0.007 * chance.normal()).toFixed(2)} N ± 0.02 N` }
      : {}),
    ...(isChecked ? { accuracy: `${round(bound)} ${kind.unit}` } : {}),
    ...(tube[0] === 0.01 ? { 'tube friction': '0.01 N..0.03 N' } : {}),
  };
  return {
    said,
    unit: kind.unit,
    step: kind.step,
    range: kind.range,
    isDual,
    nominal: { mass, shift: 2 * 0.25 * mass * gravity },
    truth: {
      mass: mass + 0.0003 * chance.normal(),
      shift,
      // Mostly the slope of the spring, a little the place of the zero.
      gain: 1 + clipped(0.006 * chance.normal(), 0.015),
      offset: clipped(0.25 * bound * si * chance.normal(), 0.6 * bound * si),
      tube: chance.about(tube[0], tube[1]),
    },
  };
}

/** Part of the shift that the scale has at an angle from hook-down. */
const sag = (shift, angle) => (shift / 2) * (1 - Math.cos(angle));

/** What the pointer stands at, in newtons, for a force at the hook. `lag` is a share of the tube's friction. */
export function pointer(scale, force, angle, zeroedAt, lag) {
  const { shift, gain, offset, tube } = scale;
  return (force - sag(shift, angle) + sag(shift, zeroedAt)) * gain + offset - lag * tube;
}

/** Who reads: how steady, how fine, and how they like to write. */
export function drawReader(chance) {
  return {
    scatter: Math.min(0.045, 0.02 * Math.exp(0.35 * chance.normal())),
    halves: chance.yes(0.25),
    writesUnit: chance.yes(0.4),
    comma: chance.yes(0.15),
    taps: chance.yes(0.3),
  };
}

/** The eye goes to the nearest mark, or to the middle between two. */
export const onMarks = (value, step, halves) => {
  const fine = halves ? step / 2 : step;
  return Math.round(value / fine) * fine;
};

export function written(number, step, { unit, comma }) {
  const text = number.toFixed(decimalsOf(step));
  const said = comma ? text.replace('.', ',') : text;
  return unit === null ? said : `${said} ${unit}`;
}

export const decimalsOf = (step) => Math.max(0, (`${round(step)}`.split('.')[1] ?? '').length);
export const round = (value) => Number(value.toPrecision(6));
export const clipped = (value, most) => Math.max(-most, Math.min(most, value));
const grams = (mass) => round(mass * 1000);
const other = ({ step, unit }) => (unit === 'N' ? round(step * 100) : round(step / 100));
