import { describe, expect, it } from 'vitest';
import type { Prepared } from '../../src/core/prepare.ts';
import { type Review, review } from '../../src/core/review.ts';
import { sentence } from '../../src/documents/sentences/sentence.ts';
import { causeName } from '../../src/documents/text/cause-text.ts';
import { habitText, tableFindingText } from '../../src/documents/text/class-findings-text.ts';
import { demoPrepared } from '../documents/demo-prepared.ts';
import { type Plan, writtenClass } from '../stations/written-class.ts';

const demo = demoPrepared();
/** The lever's load marked 250 g, so that the kit's 300 g can hang in its place. */
const quarter = demoPrepared((text, file) =>
  file === 'kit'
    ? text.replace('W500: { part: weight, of: 500 g ± 1 g', 'W250: { part: weight, of: 250 g ± 0.5 g')
    : text.replace('load: weight of 500 g', 'load: weight of 250 g'),
);

/** Eight groups at one table of the demo, each of which may have a plan; and what the program says. */
function reviewed(prepared: Prepared, table: string, seed: number, plan: Plan): Review {
  const tables = prepared.tables.filter(({ mark }) => mark === table);
  const { readings } = writtenClass(tables, 8, seed, plan);
  const rows = readings.map(({ group, setup, written }) => `${group},${setup},${written}`);
  return review(prepared, { name: 'class.csv', text: ['group,setup,reading', ...rows].join('\n') });
}

/** Readings with their verdicts, then what tables and groups have in common, as the review says it. */
function said({ judged, tables, groups }: Review): string {
  const setups = judged.map(({ at }) => at);
  const percent = (share: number): string => `${Math.round(100 * share)} %`;
  return [
    ...judged.map(({ judgement: { reading, verdict, causes, station } }) => {
      const [first] = causes;
      const likely = first === undefined ? '' : `; ${causeName('en', first)} (${percent(first.probability)})`;
      const against = station === null ? '' : ', by the station as it stands';
      return `${reading.group} ${reading.setup} ${reading.written}: ${sentence('en', `verdict.${verdict}`)}${against}${likely}`;
    }),
    '',
    ...tables.flatMap((finding) => tableFindingText('en', finding, setups)),
    ...groups.map((habit) => habitText('en', habit)),
    '',
  ].join('\n');
}

const sixOfEight: Plan = (group) => (group === 2 || group === 5 ? null : 'scale.zero-from-hook-down');
const otherWeight: Plan = () => 'load.other-weight W300';
const swapped: Plan = (_, { setup }) => (setup.mark === 'S1' || setup.mark === 'S2' ? 'setup.swapped' : null);

describe('six of eight groups with the scale upside down and its old zero', () => {
  const found = reviewed(demo, '1', 11, sixOfEight);

  it('are told by both things that may be behind it, with the test that tells', () => {
    expect(found.tables).toHaveLength(1);
    const [finding] = found.tables;
    expect(finding).toMatchObject({ table: '1', kind: 'same mistake', code: 'scale.zero-from-hook-down' });
    expect(finding?.behind.map(({ what }) => what).sort()).toEqual(['card', 'station']);
    expect(finding?.test?.kind).toBe('zero-again');
    expect(finding?.groups).toBe(6);
  });

  it('as a page of text', async () => {
    await expect(said(found)).toMatchFileSnapshot('six-of-eight.golden.txt');
  });
});

describe('a 300 g mass that hangs where 250 g belong', () => {
  const found = reviewed(quarter, '1', 12, otherWeight);

  it('is told of the station, and no group is asked for it', () => {
    const [finding] = found.tables;
    expect(finding).toMatchObject({ table: '1', code: 'load.other-weight', facts: { hung: 'W300' } });
    expect(finding?.behind.map(({ what }) => what)).toEqual(['station', 'card']);
    expect(found.judged.filter(({ judgement }) => judgement.verdict === 'look again')).toEqual([]);
    expect(found.judged.every(({ judgement }) => judgement.station?.code === 'load.other-weight')).toBe(true);
  });

  it('as a page of text', async () => {
    await expect(said(found)).toMatchFileSnapshot('other-weight.golden.txt');
  });
});

describe('partner setups that stand at each other’s sign', () => {
  const found = reviewed(demo, '2', 13, swapped);

  it('are told of the two setups, and their readings are judged as they stand', () => {
    const [finding] = found.tables;
    expect(finding).toMatchObject({ table: '2', code: 'setup.swapped' });
    expect(finding?.figures.map(({ setup }) => setup).sort()).toEqual(['S1', 'S2']);
    expect(finding?.test?.kind).toBe('look-at-signs');
    expect(finding?.behind.map(({ what }) => what)).toEqual(['station', 'card']);
  });

  it('as a page of text', async () => {
    await expect(said(found)).toMatchFileSnapshot('partners-swapped.golden.txt');
  });
});
