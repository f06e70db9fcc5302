import { isNotDefined } from '../description/not-defined.ts';
import { easeOrder, FEEL } from '../instruments/ease-score.ts';
import { type DecimalMark, decimalText } from '../quantities/print-quantity.ts';
import { balanceFor, inputsOf } from '../setups/pull.ts';
import { readingChance } from '../setups/reading-by-chance.ts';
import type { Setup } from '../setups/setup.ts';
import type { Unknown } from '../uncertainty/measured.ts';
import { type At, unknownsOf } from '../uncertainty/propagate.ts';
import type { Random } from '../uncertainty/random.ts';
import { ownUnit } from './judgement.ts';
import { digitsSwapped } from './pen-slips.ts';
import type { HowItGoes } from './plantable-mistake.ts';
import type { ReadingUnit } from './reading-units.ts';

/** One true copy of a kit: every unknown drawn once and the same for all groups, wherever it stands. */
export interface DrawnKit {
  readonly valueOf: (unknown: Unknown) => number;
}

/** Normal, or anywhere within √3 standard uncertainties, as it was written; what belongs to one reading is drawn anew. */
export function drawnKit(random: Random): DrawnKit {
  const drawn = new Map<string, number>();
  const draw = ({ u, shape }: Unknown): number =>
    shape === 'even' ? (2 * random.even() - 1) * Math.sqrt(3) * u : random.normal() * u;
  return {
    valueOf: (unknown) => {
      if (unknown.id.startsWith('reading/')) return draw(unknown);
      const value = drawn.get(unknown.id) ?? draw(unknown);
      drawn.set(unknown.id, value);
      return value;
    },
  };
}

/** What a group finds on the instrument, SI; `null` where there is nothing to write. */
export function foundBy(setup: Setup, kit: DrawnKit, random: Random): number | null {
  const { read } = readingChance(setup, 'anywhere');
  const unknowns = unknownsOf(inputsOf(setup));
  return read([random.even(), random.even(), random.normal(), ...unknowns.map(kit.valueOf)]).written;
}

/**
 * Places that a group gives to setups that are felt: the pulls of this copy of the kit, each felt with an
 * error of the size that a hand can just tell apart; what it can't tell apart shares a place.
 */
export function placesFelt(setups: readonly Setup[], kit: DrawnKit, random: Random): readonly number[] {
  const felt = setups.map((setup) => {
    const balance = balanceFor(setup, atDrawn(kit), setup.way);
    const pull = isNotDefined(balance) ? 0 : Math.max(0, balance.effort);
    return pull * (1 + FEEL * random.normal());
  });
  return easeOrder(felt, FEEL / 2);
}

const atDrawn =
  (kit: DrawnKit): At =>
  (value) =>
    value.parts.reduce(
      (sum: number, { unknown, slope }) => sum + slope * kit.valueOf(unknown),
      value.value,
    ) as typeof value.value;

/** How a group writes: with the unit or without, with a point or a comma. */
export interface Hand {
  readonly writesUnit: boolean;
  readonly decimal: DecimalMark;
}

/** Units as they stand on instruments. */
const LABELS: Readonly<Record<string, string>> = {
  newtons: 'N',
  grams: 'g',
  kilograms: 'kg',
  ounces: 'oz',
  pounds: 'lb',
  millimetres: 'mm',
  centimetres: 'cm',
  inches: 'in',
  metres: 'm',
  turns: '',
};

/** A figure as a group writes it down, with or without a slip of the pen. */
export function writtenBy(
  setup: Setup,
  si: number,
  hand: Hand,
  slip: HowItGoes | null,
  random: Random,
): string {
  const own = ownUnit(setup);
  const step = (setup.marks ?? setup.scale?.graduations)?.step ?? own.si;
  const text = (number: number, decimals: number): string => decimalText(number, decimals, hand.decimal);
  // A count is written as it is, a reading to its marks.
  const decimals = decimalsOf(setup.watched === 'turns' ? si : step / own.si);
  switch (slip?.of) {
    case 'unit':
      // In its own unit with a slipped point the digits stay; in another unit they are as fine as the marks.
      return text(si / slip.unit.si, decimalsFor(slip.unit, own, step));
    case 'digits': {
      const meant = digitsSwapped(Number(decimalText(si / own.si, decimals)));
      const written = meant[Math.floor(random.even() * meant.length)];
      return text(written ?? si / own.si, decimals);
    }
    case 'figure':
      return text(slip.value / own.si, decimals);
    default: {
      const label = LABELS[own.name] ?? '';
      return `${text(si / own.si, decimals)}${hand.writesUnit && label !== '' ? ` ${label}` : ''}`;
    }
  }
}

/** Decimals of whole marks: 0.1 needs one, 0.25 two, 10 none. */
function decimalsOf(step: number): number {
  for (let decimals = 0; decimals < 4; decimals += 1)
    if (Math.abs(step * 10 ** decimals - Math.round(step * 10 ** decimals)) < 1e-6) return decimals;
  return 4;
}

const decimalsFor = (unit: ReadingUnit, own: ReadingUnit, step: number): number =>
  unit.name === own.name ? decimalsOf(step / unit.si) : Math.max(0, -Math.floor(Math.log10(step / unit.si)));
