import { describe, expect, it } from 'vitest';
import { demoPrepared } from '../../test/documents/demo-prepared.ts';
import { rehearse } from './rehearse.ts';

const prepared = demoPrepared();
const rehearsed = (seed: number, mistakes = 4) => rehearse(prepared, { groups: 6, mistakes, seed });

describe('a rehearsal class', () => {
  const classes = [1, 2, 3, 4, 5, 6].map((seed) => rehearsed(seed));

  it('is the same for the same seed, and another one for another', () => {
    expect(rehearsed(3).csv).toBe(classes[2]?.csv);
    expect(new Set(classes.map(({ csv }) => csv)).size).toBe(classes.length);
  });

  it('has as many mistakes as were asked for, each in at least one reading and none in two', () => {
    for (const { planted, rows } of classes) {
      expect(planted).toHaveLength(4);
      for (const { readings } of planted) expect(readings.length).toBeGreaterThan(0);
      const marked = rows.filter((row) => row.planted !== null).length;
      expect(planted.reduce((sum, { readings }) => sum + readings.length, 0)).toBe(marked);
    }
  });

  it('writes a readings file in which every row is read as it was written', () => {
    for (const { review, rows } of classes) {
      expect(review.refused).toEqual([]);
      expect(review.judged.map(({ judgement }) => judgement.reading.written)).toEqual(
        rows.map(({ written }) => written),
      );
      expect(review.judged.filter(({ judgement }) => judgement.meaning.kind === 'unreadable')).toEqual([]);
    }
  });

  it('leaves what a station was left with to every group that comes after', () => {
    const left = classes
      .flatMap(({ planted, labels }) => planted.map((each) => ({ ...each, labels })))
      .filter(({ mistake }) => mistake.persists === 'station');
    expect(left.length).toBeGreaterThan(0);
    for (const { group, labels, readings } of left)
      expect([...new Set(readings.map((each) => each.group))]).toEqual(labels.slice(labels.indexOf(group)));
  });

  it('has mistakes that can be found: most of their readings are looked at again, or their station is', () => {
    const judged = classes.flatMap(({ planted }) =>
      planted.flatMap(({ readings }) => readings.flatMap(({ judgement }) => judgement ?? [])),
    );
    const seen = judged.filter(({ verdict, station }) => verdict === 'look again' || station !== null);
    expect(seen.length / judged.length).toBeGreaterThan(0.9);
  });

  it('without mistakes is a sound class of which hardly a reading is looked at again', () => {
    const sound = [11, 12, 13, 14].map((seed) => rehearsed(seed, 0));
    const rows = sound.reduce((sum, each) => sum + each.rows.length, 0);
    const queried = sound.reduce((sum, each) => sum + each.queriedThoughSound.length, 0);
    expect(rows).toBeGreaterThan(300);
    expect(queried / rows).toBeLessThanOrEqual(0.02);
  });

  it('has no more mistakes than there is room for', () => {
    const crowded = rehearse(prepared, { groups: 1, mistakes: 20, seed: 1 });
    expect(crowded.planted.length).toBeGreaterThan(4);
    expect(crowded.planted.length).toBeLessThan(20);
  });
});
