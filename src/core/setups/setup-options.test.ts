import { describe, expect, it } from 'vitest';
import { demoPrepared } from '../../../test/documents/demo-prepared.ts';
import { resolve } from '../files/resolve.ts';
import { descriptionOf, readerOf } from '../prepare.ts';
import { vocabulary } from '../words.ts';
import { contrastOf, contrastTurns, optionSets } from './contrast.ts';
import { makeSetup, type SetupDescription } from './make-setup.ts';
import { optionsFor } from './setup-options.ts';
import { type Option, textAt, withOption } from './spot.ts';

const { kit, activity, visit } = demoPrepared();
if (kit === null || activity === null) throw new Error('no demo');
const resolved = resolve(kit, activity, visit, vocabulary);

const described = (mark: string): SetupDescription => {
  for (const table of resolved.tables)
    for (const setup of table.setups)
      if (setup.mark === mark) {
        const found = descriptionOf(table, setup, resolved.gravity, readerOf(activity));
        if (found !== null) return found;
      }
  throw new Error(mark);
};

const optionsAt = (mark: string, field: string): readonly string[] =>
  optionsFor(described(mark), kit.parts)
    .flat()
    .filter(({ spot }) => spot.name === field)
    .map(({ text }) => text);

describe('what could stand in a setup instead', () => {
  it('is every other hole that the bar has, and every other pin of the board', () => {
    const holes = (count: number, but: number) =>
      Array.from({ length: count }, (_, n) => `hole ${n + 1}`).filter((hole) => hole !== `hole ${but}`);
    expect(optionsAt('L1', 'pull at')).toEqual(holes(11, 9));
    expect(optionsAt('S1', 'propped at')).toEqual(holes(4, 1));
    expect(optionsAt('D1', 'pull at')).toEqual(holes(15, 14));
  });

  it('is a part of a kind that the slot takes and that the kit keeps for the machine', () => {
    expect(optionsAt('S1', 'rides on')).toEqual(['keel']);
    expect(optionsAt('L1', 'load')).toEqual(['W100', 'W200', 'W300', 'W600', 'W750', 'W1000', 'W1500']);
    expect(optionsAt('L1', 'scale')).toEqual([]);
  });

  it('is a length some factors longer and shorter, in the digits that it is written with', () => {
    expect(optionsAt('D1', 'rise')).toEqual([
      '10.0 cm',
      '13.0 cm',
      '16.0 cm',
      '25.0 cm',
      '30.0 cm',
      '40.0 cm',
    ]);
  });

  it('is a few more or fewer of what is counted', () => {
    expect(optionsAt('T1', 'parts of line')).toEqual(['1', '3', '4', '5']);
  });

  it('is no peak at the start, no way to watch, and no scale that hangs against the pull', () => {
    expect(optionsAt('L1', 'read')).toEqual(['lower', 'held']);
    expect(optionsAt('L1', 'watch')).toEqual([]);
    expect(optionsAt('S1', 'scale hangs')).toEqual([]);
    expect(optionsAt('C1', 'scale hangs')).toEqual([]);
  });

  it('stands where it is put, and nowhere else', () => {
    for (const mark of ['L1', 'S1', 'T1', 'C1', 'D1']) {
      const before = described(mark);
      for (const option of optionsFor(before, kit.parts).flat()) {
        const after = withOption(before, option);
        expect(textAt(after, option.spot)).toBe(option.text);
        expect(contrastOf(before, after).map(({ name }) => name)).toEqual([option.spot.name]);
      }
    }
  });

  it('leaves the setup itself as it was', () => {
    const before = described('D1');
    const [option] = optionsFor(before, kit.parts).flat() as [Option];
    withOption(before, option);
    expect(makeSetup(before).setup).toMatchObject({ mark: 'D1' });
    expect(contrastOf(before, described('D1'))).toEqual([]);
  });
});

describe('what partner setups differ in', () => {
  it('is what they are there to show', () => {
    const names = (a: string, b: string) => contrastOf(described(a), described(b)).map(({ name }) => name);
    expect(names('L1', 'L2')).toEqual(['pull at']);
    expect(names('S3', 'S1')).toEqual(['rides on']);
    expect(names('C1', 'C2')).toEqual(['load']);
    expect(names('D1', 'D2')).toEqual(['pull at']);
  });

  it('keeps its order: the arm that was longer stays longer', () => {
    const [a, b] = [described('L1'), described('L2')];
    const turns = contrastTurns(a, b, contrastOf(a, b), []);
    const hole = (options: readonly Option[], now: number) =>
      Number(options[0]?.text.replace('hole ', '') ?? now);
    // 11 holes taken two at a time.
    expect(turns).toHaveLength(55);
    for (const turn of turns) expect(hole(turn.a, 9)).toBeGreaterThan(hole(turn.b, 7));
  });

  it('is left alone where it has no size', () => {
    const [a, b] = [described('S3'), described('S1')];
    expect(contrastTurns(a, b, contrastOf(a, b), kit.parts)).toEqual([{ a: [], b: [] }]);
  });
});

describe('sets of options', () => {
  it('take no two for one spot: 1 + (2 + 3) + 2 x 3', () => {
    const [spots] = [optionsFor(described('L1'), kit.parts)];
    const two = [spots[0]?.slice(0, 2) ?? [], spots[1]?.slice(0, 3) ?? []];
    const sets = [...optionSets(two, 2)];
    expect(sets).toHaveLength(12);
    for (const set of sets) expect(new Set(set.map(({ spot }) => spot.name)).size).toBe(set.length);
  });
});
