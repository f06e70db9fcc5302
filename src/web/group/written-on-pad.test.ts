import { describe, expect, it } from 'vitest';
import { type CardSetup, writtenOnPad } from './written-on-pad.ts';

const setup = (more: Partial<CardSetup> = {}): CardSetup => ({
  mark: 'L1',
  html: '',
  unit: 'N',
  asks: { ease: false, turns: false },
  isExtra: false,
  ...more,
});
const pad = (number: string, unit = '', ease: number | null = null) => ({ number, unit, ease });
const open = setup({ unit: null });
const felt = setup({ unit: null, asks: { ease: true, turns: false } });

describe('what is written on the pad', () => {
  it('takes the unit that the card gives, unless another one is typed with the number', () => {
    expect(writtenOnPad(setup(), 'A', pad(' 4,5 '))).toMatchObject({ written: '4,5 N' });
    expect(writtenOnPad(setup(), 'A', pad('450 g'))).toMatchObject({ written: '450 g' });
  });

  it('asks the group for the unit where the card leaves it open', () => {
    expect(writtenOnPad(open, 'A', pad('4.5'))).toEqual({ missing: 'pad.no-unit', field: 'unit' });
    expect(writtenOnPad(open, 'A', pad('4.5', 'N'))).toMatchObject({ written: '4.5 N' });
    expect(writtenOnPad(open, 'A', pad('7 ozf'))).toMatchObject({ written: '7 ozf' });
  });

  it('wants a feeling and no number where only a feeling is asked', () => {
    expect(writtenOnPad(felt, 'A', pad(''))).toEqual({ missing: 'pad.no-ease', field: 'ease' });
    expect(writtenOnPad(felt, 'A', pad('', '', 2))).toMatchObject({ written: '2', ease: 2 });
  });

  it('counts turns as a number with their word', () => {
    const turns = setup({ unit: 'turns', asks: { ease: false, turns: true } });
    expect(writtenOnPad(turns, 'A', pad('12'))).toMatchObject({ written: '12 turns', turns: '12' });
  });

  it('writes nothing where there is no figure', () => {
    for (const number of ['', ' ', ',', 'N'])
      expect(writtenOnPad(setup(), 'A', pad(number))).toEqual({ missing: 'pad.empty', field: 'number' });
  });
});
