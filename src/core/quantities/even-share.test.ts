import fc from 'fast-check';
import { expect, test } from 'vitest';
import { evenShare } from './even-share.ts';
import { isReadFault } from './read-fault.ts';
import { readQuantity } from './read-quantity.ts';

const read = (text: string) => {
  const found = readQuantity(text, { dimensions: ['length'], decimal: 'point' });
  if (isReadFault(found)) throw new Error(text);
  return found;
};

test('as many shares as there are make up the whole again, with its doubt', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 100, max: 9999 }),
      fc.integer({ min: 1, max: 9 }),
      fc.integer({ min: 1, max: 60 }),
      fc.constantFrom('cm', 'mm', 'in'),
      (tenths, doubt, shares, unit) => {
        const whole = read(`${tenths / 10} ${unit} ± ${doubt / 10} ${unit}`);
        const one = read(evenShare(`${tenths / 10} ${unit} ± ${doubt / 10} ${unit}`, shares) ?? '');
        // Printed to the first digit of its doubt, or the second after a 1.
        expect(Math.abs(one.value * shares - whole.value)).toBeLessThanOrEqual(whole.u * 0.6);
        expect(one.u * shares).toBeGreaterThan(whole.u * 0.6);
        expect(one.u * shares).toBeLessThan(whole.u * 1.4);
      },
    ),
    { seed: 20261127 },
  );
});

test('what is no length, or has no shares, makes none', () => {
  for (const text of ['', '60', '60 g', 'about 60 cm', '-5 cm', '0 cm'])
    expect([text, evenShare(text, 12)]).toEqual([text, null]);
  expect(evenShare('60 cm', 0)).toBeNull();
  expect(evenShare('60 cm', Number.NaN)).toBeNull();
});
