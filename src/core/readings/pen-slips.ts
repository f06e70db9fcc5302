import type { Persists } from '../machines/machine.ts';
import type { Setup } from '../setups/setup.ts';
import { BASE_RATES, rateNamed } from './base-rates.ts';
import { pullUnits, type ReadingUnit, travelUnits, turnUnits } from './written-reading.ts';

/** A mistake of reading or of writing down: the instrument stands right, the number counts something else. */
export interface PenSlip {
  readonly code: string;
  readonly rate: number;
  readonly persists: Persists;
  /** What the number counts, whatever unit it says. */
  readonly unit: ReadingUnit;
}

export const unitsFor = (setup: Setup): readonly ReadingUnit[] =>
  setup.watched === 'pull' ? pullUnits : setup.watched === 'turns' ? turnUnits : travelUnits;

/** The slips that any number in a unit can come from. */
export const plainSlips = (setup: Setup, own: ReadingUnit): readonly PenSlip[] => [
  ...unitSlips(setup, own),
  ...pointSlips(setup, own),
];

/**
 * The slips that hang on the digits of a number: their unit is that in which the number, as written, is the
 * one that was meant.
 */
export const numberSlips = (setup: Setup, own: ReadingUnit, number: number): readonly PenSlip[] => [
  ...digitSlips(own, number),
  ...markSlips(setup, own, number),
];

/** Another unit: one that the scale has a column for, or one that was in the head. */
function unitSlips(setup: Setup, own: ReadingUnit): readonly PenSlip[] {
  const { graduations, other } = setup.scale ?? { graduations: null, other: null };
  const isColumn = (unit: ReadingUnit): boolean =>
    other !== null &&
    [graduations, other].some((marks) => marks !== null && Math.abs(marks.unitSi / unit.si - 1) < 1e-9);
  return unitsFor(setup)
    .filter(({ name }) => name !== own.name)
    .map((unit) => ({
      code: `reading.in-${unit.name}`,
      rate:
        setup.watched === 'pull' && isColumn(unit)
          ? BASE_RATES['other-column']
          : rateNamed(`in-${unit.name}`),
      persists: 'group',
      unit,
    }));
}

/**
 * The decimal point, or comma, lost or moved, where the marks of a scale ask for decimals. A count of turns
 * has none, and a length ten times too much is one in the next smaller unit.
 */
function pointSlips(setup: Setup, own: ReadingUnit): readonly PenSlip[] {
  const step = stepIn(setup, own);
  if (step === null || step >= 1 || setup.watched !== 'pull') return [];
  const slip = (code: 'ten-times' | 'a-tenth' | 'a-hundred-times', times: number): PenSlip => ({
    code: `reading.${code}`,
    rate: BASE_RATES[code],
    persists: 'reading',
    unit: { ...own, si: own.si / times },
  });
  // Two decimals, as on marks of 0.05 N: a point lost from 2.45 makes 245.
  const twoDecimals = Math.abs(step * 10 - Math.round(step * 10)) > 1e-6;
  return [
    slip('ten-times', 10),
    slip('a-tenth', 0.1),
    ...(twoDecimals ? [slip('a-hundred-times', 100)] : []),
  ];
}

/** Two digits side by side that changed places: 42 for 24. A nought at the end is not kept by a number. */
function digitSlips(own: ReadingUnit, number: number): readonly PenSlip[] {
  const meant = digitsSwapped(number);
  return meant.map((each) => ({
    code: 'reading.digits-swapped',
    rate: BASE_RATES['digits-swapped'] / meant.length,
    persists: 'reading',
    unit: countedAs(own, number, each),
  }));
}

/**
 * Numbers of which this one has two neighbouring digits in each other's place.
 *
 * @example digitsSwapped(4.2) // => [2.4]
 * @example digitsSwapped(0.4) // => []
 */
export function digitsSwapped(number: number): readonly number[] {
  const text = String(number);
  if (!/^[1-9]\d*(\.\d+)?$|^0\.\d{2,}$/.test(text)) return [];
  const places = [...text].flatMap((character, n) => (character === '.' ? [] : [n]));
  // The nought before a point is no digit that anybody would move.
  const movable = text.startsWith('0.') ? places.slice(1) : places;
  const found = movable.slice(1).flatMap((place, n) => {
    const before = movable[n];
    if (before === undefined || text[place] === text[before]) return [];
    const characters = [...text];
    [characters[before], characters[place]] = [text[place] ?? '', text[before] ?? ''];
    const swapped = characters.join('');
    return /^0\d/.test(swapped) || /^0\.0*$/.test(swapped) ? [] : [Number(swapped)];
  });
  return [...new Set(found)].filter((each) => each !== 0);
}

/** Marks between two numbered ones where a mark is worth two: common practice, no source. */
const MARKS_A_NUMBER = 5;

/**
 * A mark that is worth 0.2 taken for 0.1: the numbers on the scale are right, what lies above them is
 * halved. Marks of 1 and 5 are not mistaken so, since ten of them fit between two numbers.
 */
function markSlips(setup: Setup, own: ReadingUnit, number: number): readonly PenSlip[] {
  const step = stepIn(setup, own);
  if (step === null || number <= 0 || !isTwo(step)) return [];
  const numbered = step * MARKS_A_NUMBER;
  const below = Math.floor(number / numbered + 1e-9) * numbered;
  const above = number - below;
  if (above < step / 4 || above > numbered / 2 - step / 4) return [];
  return [
    {
      code: 'reading.marks-of-half',
      rate: BASE_RATES['marks-of-half'],
      persists: 'group',
      unit: countedAs(own, number, below + 2 * above),
    },
  ];
}

/** 0.02, 0.2, 2, 20: a two and noughts. */
const isTwo = (step: number): boolean => {
  const digits = step / 10 ** Math.floor(Math.log10(step) + 1e-9);
  return Math.abs(digits - 2) < 1e-6;
};

/** The unit in which `number` stands for what `meant` is in this one. */
const countedAs = (own: ReadingUnit, number: number, meant: number): ReadingUnit => ({
  ...own,
  si: (own.si * meant) / number,
});

/** One step of the instrument's marks in a unit that is on it; `null` where that unit isn't. */
function stepIn(setup: Setup, own: ReadingUnit): number | null {
  const marks = [setup.marks, setup.scale?.graduations, setup.scale?.other].find(
    (each) => each !== null && each !== undefined && Math.abs(each.unitSi / own.si - 1) < 1e-9,
  );
  return marks === null || marks === undefined ? null : marks.step / marks.unitSi;
}
