import type { WrittenReading } from '../../store/entry.ts';
import type { GroupCard } from '../../store/wire.ts';
import type { WordKey } from '../words/words.ts';

export type CardSetup = GroupCard['setups'][number];

/** What stands on the pad when *write it down* is pressed. */
export interface OnPad {
  readonly number: string;
  readonly unit: string;
  readonly ease: number | null;
}

/** Where only a feeling is asked there is no number to write. */
export const asksNumber = ({ unit, asks }: CardSetup): boolean => unit !== null || !asks.ease;

/** The unit is said by the group where the card doesn't give it, unless it is typed with the number. */
export const asksUnit = (setup: CardSetup, number: string): boolean =>
  setup.unit === null && asksNumber(setup) && !/\p{L}/u.test(number);

/** The reading as it is sent, or what is missing. */
export function writtenOnPad(
  setup: CardSetup,
  group: string,
  pad: OnPad,
): WrittenReading | { readonly missing: WordKey; readonly field: 'number' | 'unit' | 'ease' } {
  const number = pad.number.trim();
  const { mark, asks } = setup;
  if (asksNumber(setup) && !/\d/.test(number)) return { missing: 'pad.empty', field: 'number' };
  if (asksUnit(setup, number) && pad.unit === '') return { missing: 'pad.no-unit', field: 'unit' };
  if (asks.ease && pad.ease === null) return { missing: 'pad.no-ease', field: 'ease' };
  const unit = /\p{L}/u.test(number) ? '' : (setup.unit ?? pad.unit);
  const written = asksNumber(setup) ? `${number} ${unit}`.trim() : String(pad.ease);
  return {
    kind: 'reading',
    group,
    setup: mark,
    written,
    ease: asks.ease ? pad.ease : null,
    turns: asks.turns ? number : null,
    note: null,
  };
}

/**
 * One more key on the pad.
 *
 * @example withKey('4', ',') // => '4,'
 * @example withKey('4,5', 'delete') // => '4,'
 */
export const withKey = (number: string, key: string): string =>
  key === 'delete' ? number.slice(0, -1) : `${number}${key}`.slice(0, 40);
