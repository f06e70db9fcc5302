import { describe, expect, it } from 'vitest';
import { bareLever, everyStation } from '../../../test/stations/every-machine.ts';
import { scaleOf, setupOf, weightOf } from '../../../test/stations/setup.ts';
import { isNotDefined } from '../../core/description/not-defined.ts';
import { lever } from '../../core/machines/lever/index.ts';
import { machineNamed, machines } from '../../core/machines/list.ts';
import { metres } from '../../core/quantities/brands.ts';
import { BASE_RATES } from '../../core/readings/base-rates.ts';
import { causesOf, unitsFor } from '../../core/readings/causes.ts';
import { advantageWays, workInWays, workOutWays } from '../../core/readings/reckoning-ways.ts';
import type { Watched } from '../../core/setups/prediction.ts';
import type { Setup } from '../../core/setups/setup.ts';
import { exactly } from '../../core/uncertainty/measured.ts';
import { languageTags } from '../sentences/language.ts';
import { causeName, causeToSee, causeToTry } from './cause-text.ts';

const WATCHED: readonly Watched[] = ['pull', 'turns', 'travel'];
const HANGS: readonly Setup['hang'][] = ['hook down', 'level', 'upside down'];
const WAYS: readonly Setup['way'][] = ['raise', 'lower', 'start', 'held'];

/** Every code that any station gives in any way of hanging, reading and zeroing a scale of many marks. */
function codesFound(): ReadonlySet<string> {
  const found = new Set<string>();
  for (const station of everyStation)
    for (const watched of WATCHED)
      for (const hang of watched === 'pull' ? HANGS : HANGS.slice(0, 1))
        for (const way of watched === 'pull' ? WAYS : WAYS.slice(0, 1))
          for (const zeroed of ['hook down', 'in place'] as const) {
            const machine = machineNamed(station.machine);
            if (machine === undefined) throw new Error(station.machine);
            const partner = setupOf(machine, station, { mark: 'other', watched, hang, load: weightOf(4) });
            const setup = setupOf(machine, station, {
              scale: scaleOf({ range: 50, graduation: 0.02, movingGrams: 20 }),
              marks: watched === 'pull' ? null : { step: 0.25, unit: 'turns', unitSi: 1 },
              watched,
              hang,
              way,
              zeroed,
              around: { hung: 'W200', weights: [{ mark: 'W300', load: partner.load }], partners: [partner] },
            });
            for (const unit of unitsFor(setup))
              for (const { code } of causesOf(setup, unit, undefined, { number: 2.43 })) found.add(code);
          }
  return found;
}

const ofMachines = machines.flatMap(({ mistakes, reckonings = [] }) =>
  [...mistakes, ...reckonings].map(({ code }) => code),
);
/** Slips in what a group reckons, from a number that any of them may give. */
const reckonedWrong = [advantageWays, workInWays, workOutWays].flatMap((ways) => {
  const found = ways(setupOf(lever, bareLever, { lift: exactly(metres(0.1)) }), 1.3);
  if (isNotDefined(found)) throw new Error(found.because);
  return found.filter(({ is }) => is === 'slip').map(({ code }) => code);
});
const generally = [...reckonedWrong, ...codesFound()].filter((code) => code !== 'good');

describe.each(languageTags)('a cause in %s', (language) => {
  it.each([...new Set([...ofMachines, ...generally])])(
    'is named, has one thing to try and one to see: %s',
    (code) => {
      for (const said of [causeName, causeToTry, causeToSee]) {
        const words = said(language, { code });
        expect(words).not.toBe('');
        expect(words).not.toMatch(/[{}]/);
      }
    },
  );

  it('asks a group without a word of blame', () => {
    for (const code of new Set([...ofMachines, ...generally]))
      expect(causeToTry(language, { code }), code).not.toMatch(
        /\b(wrong|mistake|error|fault|careless|forgot|mal|culpa|equivocad\w+|olvid\w+)\b/i,
      );
  });

  it('asks a group for one thing in one or two short sentences', () => {
    for (const code of new Set([...ofMachines, ...generally]))
      for (const part of causeToTry(language, { code }).split(/[.?:,] /))
        expect(part.split(' ').length, `${code}: ${part}`).toBeLessThanOrEqual(14);
  });

  it('says which weight and which partner, where that is known', () => {
    const weight = { code: 'load.other-weight', facts: { hung: 'W300', belongs: 'W200' } };
    expect(causeToSee(language, weight)).toMatch(/W300.*W200/);
    expect(causeToSee(language, { code: 'setup.swapped', facts: { setup: 'L1', partner: 'L2' } })).toMatch(
      /L2/,
    );
  });
});

describe('the sample of codes', () => {
  it('holds every rate that is written for the general mistakes', () => {
    const named = generally.map((code) => code.split('.')[1]);
    const missing = Object.keys(BASE_RATES).filter((name) => !named.includes(name));
    // A unit that the scale has a column for is told by its own code.
    expect(missing).toEqual(['other-column']);
  });
});
