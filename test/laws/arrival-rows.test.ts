import fc from 'fast-check';
import { expect, it } from 'vitest';
import { arrivalCheckOf } from '../../src/core/calibration/arrival-check.ts';
import { rekeyTable } from '../../src/core/calibration/rekey-table.ts';
import { isError } from '../../src/core/diagnostics/diagnostic.ts';
import type { PreparedTable } from '../../src/core/prepare.ts';
import { demoAsFound } from '../documents/demo-prepared.ts';
import { exampleFiles, preparedFrom } from './example-files.ts';

/** A kit whose scales are known so much better or worse, and whose scales weigh so much more. */
interface OtherKit {
  readonly accuracy: number;
  readonly turnOver: number;
  readonly mass: number;
}
const anyKit: fc.Arbitrary<OtherKit> = fc.record({
  accuracy: fc.double({ min: 0.1, max: 6, noNaN: true }),
  turnOver: fc.double({ min: 0.2, max: 5, noNaN: true }),
  mass: fc.double({ min: 0.5, max: 1.4, noNaN: true }),
});

const times =
  (factor: number, decimals: number) =>
  (_: string, before: string, number: string, unit: string): string =>
    `${before}${(Number(number) * factor).toFixed(decimals)}${unit}`;

function tablesOf({ accuracy, turnOver, mass }: OtherKit): readonly PreparedTable[] {
  const prepared = demoAsFound((text, file) =>
    file !== 'kit'
      ? text
      : text
          .replace(/(accuracy: )([\d.]+)( N)/g, times(accuracy, 4))
          .replace(/(turn-over shift: [\d.]+ N ± )([\d.]+)( N)/g, times(turnOver, 4))
          .replace(/(mass: )([\d.]+)( g ± 0\.5 g\n {4}turn-over)/g, times(mass, 1)),
  );
  expect(prepared.diagnostics.filter(isError)).toEqual([]);
  return prepared.tables;
}

/** Rows whose own setup is not good at the very reading that they are for; and how many were looked at. */
function refusing(tables: readonly PreparedTable[]) {
  let rows = 0;
  const refused: string[] = [];
  for (const { setups } of tables) {
    const arrival = arrivalCheckOf(setups);
    if (arrival === null) continue;
    const { mark } = arrival.setup;
    const slack = 1e-6 * (arrival.prediction.graduations?.step ?? 0);
    for (const { reading, good } of rekeyTable(setups, arrival).rows) {
      const own = good.find(({ setup }) => setup === mark)?.good ?? null;
      rows += 1;
      if (own === null || reading < own.from - slack || reading > own.to + slack)
        refused.push(`${mark} ${reading}: ${JSON.stringify(own)}`);
    }
  }
  return { rows, refused };
}

it.each(['brackwater', 'second-kit', 'smallest'])('every row of %s accepts the reading it is for', (name) => {
  const { rows, refused } = refusing(preparedFrom(exampleFiles(name)).tables);
  expect(refused).toEqual([]);
  expect(rows).toBeGreaterThan(2);
});

it('every row of sixty other kits accepts the reading it is for', () => {
  let looked = 0;
  fc.assert(
    fc.property(anyKit, (kit) => {
      const { rows, refused } = refusing(tablesOf(kit));
      expect(refused).toEqual([]);
      looked += rows;
    }),
    { seed: 61, numRuns: 60 },
  );
  expect(looked).toBeGreaterThan(60 * 20);
});
