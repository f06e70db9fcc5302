import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { demoPrepared, paperJob, rowsOf, wordsOf } from '../../../../test/documents/demo-prepared.ts';
import { prepare } from '../../../core/prepare.ts';
import { expectedText } from '../../text/prediction-text.ts';
import { scaleTags } from '../scale-tags.ts';
import { teachersGuide } from '../teachers-guide.ts';
import { pencilPull, pencilTimes } from './pencil.ts';

const prepared = demoPrepared();
const inEnglish = paperJob(prepared);
const inSpanish = paperJob(prepared, { languages: { cards: 'es', key: 'es' } });
const guideOf = (job: typeof inEnglish) => {
  const [guide] = teachersGuide.build(job);
  if (guide === undefined) throw new Error('no guide');
  return guide;
};
const number = (text: string | undefined): number => Number((text ?? '').replace(',', '.'));
const setups = inEnglish.sheet.tables.flatMap((table) => table.setups);

const SUMS = {
  en: {
    over: /the load, ([\d.]+) N, over the pull, ([\d.]+) N, is ([\d.]+) times\./g,
    add: /add the own shift of the scale, ([\d.]+) N, to the ([\d.]+) N that it shows: ([\d.]+) N; the load, [\d.]+ N, over the pull, ([\d.]+) N/g,
    arms: /([\d.]+) mm over ([\d.]+) mm is (\d+(?:\.\d+)?)/g,
    push: /([\d.]+) N on the faces come from a push of ([\d.]+) N, ([\d.]+) times/g,
  },
  es: {
    over: /la carga, ([\d,]+) N, entre el esfuerzo, ([\d,]+) N, son ([\d,]+) veces\./g,
    add: /suma la diferencia propia del dinamómetro, ([\d,]+) N, a los ([\d,]+) N que marca: ([\d,]+) N; la carga, [\d,]+ N, entre el esfuerzo, ([\d,]+) N/g,
    arms: /([\d,]+) mm entre ([\d,]+) mm son (\d+(?:,\d+)?)/g,
    push: null,
  },
} as const;

for (const [language, job] of [['en', inEnglish] as const, ['es', inSpanish] as const]) {
  const text = wordsOf(guideOf(job)).join('\n');
  const found = (pattern: RegExp) => [...text.matchAll(pattern)].map((match) => match.slice(1).map(number));

  test(`in ${language} every "times" is what a pencil makes of the figures beside it`, () => {
    const sums = found(SUMS[language].over);
    expect(sums.length).toBeGreaterThanOrEqual(6);
    for (const [load = 0, pull = 0, times] of sums) expect(times).toBe(Number((load / pull).toPrecision(2)));
  });

  test(`in ${language} the pull of a scale upside down is what it shows and its own shift, digit by digit`, () => {
    const sums = found(SUMS[language].add);
    expect(sums.length).toBeGreaterThanOrEqual(3);
    for (const [shift = 0, shown = 0, pull, over] of sums) {
      expect(pull).toBe(Number((shift + shown).toFixed(6)));
      expect(over).toBe(pull);
    }
  });

  test(`in ${language} the windlass differs from the book by its line, and its arms say by how much`, () => {
    const [book, real] = found(SUMS[language].arms);
    expect(book).toEqual([50, 10, 5]);
    expect(real).toEqual([50.9, 10.9, 4.7]);
    for (const [hand = 0, load = 1, times] of [book ?? [], real ?? []])
      expect(times).toBe(Number((hand / load).toPrecision(2)));
  });

  test(`in ${language} every product and every rest of the work can be reckoned again to its last digit`, () => {
    const rows = rowsOf(guideOf(job)).filter((row) => row.length === 6 && /×/.test(row[1] ?? ''));
    expect(rows.map(([mark]) => mark)).toEqual(
      setups
        .filter(({ prediction }) => prediction.watched === 'pull' && prediction.way === 'raise')
        .map(({ mark }) => mark),
    );
    const product = (cell: string | undefined): number => {
      const [, force, way, joules] = /^([\d.,]+) × ([\d.,]+) = ([\d.,]+)$/.exec(cell ?? '') ?? [];
      expect(Math.abs(number(joules) - number(force) * number(way))).toBeLessThan(0.000501);
      return number(joules);
    };
    for (const [, pull, others, load, raised, rest] of rows) {
      const left = product(pull) + number(others) - product(load) - number(raised);
      expect(number(rest?.replace(/[()]/g, ''))).toBeCloseTo(left, 9);
    }
  });
}

test('the push at a wedge is told with the force that it makes, and their ratio', () => {
  const sums = [...wordsOf(guideOf(inEnglish)).join('\n').matchAll(SUMS.en.push)].map((match) =>
    match.slice(1).map(number),
  );
  expect(sums.length).toBe(1);
  for (const [side = 0, push = 0, times] of sums) expect(times).toBe(Number((side / push).toPrecision(2)));
});

test('what is shown is the figure of the answer key, and the shift is the one of the scale to the hundredth, as on its tag', () => {
  const read = setups.flatMap((setup) => {
    const times = pencilTimes('en', setup);
    return times === null ? [] : [{ setup, times }];
  });
  expect(read.length).toBeGreaterThan(10);
  for (const { setup, times } of read) {
    expect(times.shown.text).toBe(expectedText('en', setup.prediction));
    const isTurned = setup.scale?.hangs === 'upside down' && setup.scale.zeroed === 'hook down';
    expect([setup.mark, times.shift !== null]).toEqual([setup.mark, isTurned]);
    if (times.shift !== null) expect(times.shift.text).toBe((setup.scale?.showsLess ?? 0).toFixed(2));
  }
});

test('a class with shown figures gets the advantage of the model, as near as the marks of the scale allow', () => {
  for (const setup of setups) {
    const times = pencilTimes('en', setup);
    const { actualAdvantage, outcome } = setup.prediction;
    if (times === null || typeof actualAdvantage !== 'number' || outcome.kind !== 'reading') continue;
    const step = setup.scale?.graduations.step ?? 0;
    // Half a graduation, the lag of the tube, and the last digit of the ratio.
    const doubt = (0.6 * step + 0.02) / times.pull.value + 0.05;
    expect(Math.abs(times.actual.value / actualAdvantage - 1), setup.mark).toBeLessThan(doubt);
  }
});

test('a scale with gram marks is reckoned in grams, and its work in newtons', () => {
  const setup = setups.find(({ mark }) => mark === 'T2');
  if (setup?.scale == null) throw new Error('no T2');
  const grams = { step: 0.0980665, unit: 'gf', unitSi: 0.00980665 };
  const turned = {
    ...setup,
    scale: { ...setup.scale, graduations: grams },
    prediction: { ...setup.prediction, graduations: grams },
  };
  const pull = pencilPull('en', turned);
  const { outcome } = setup.prediction;
  const expected = outcome.kind === 'reading' ? outcome.expected : 0;
  const marks = Math.round(expected / grams.step) * 10;
  // 0.28 N of the kit file over the newtons of a gram, 28.55: whole grams, as the tag of such a scale has it.
  expect(pull).toMatchObject({ unit: 'g', shown: { value: marks }, shift: { value: 29 } });
  expect(pull?.newtons.value).toBeCloseTo((marks + 29) * 0.00980665, 2);
  expect(pencilTimes('en', turned)?.load.text).toBe('1000');
});

test('a reading that was zeroed as it hangs has no shift to add', () => {
  const lever = setups.find(({ mark }) => mark === 'L1');
  expect(lever === undefined ? null : pencilPull('en', lever)).toMatchObject({
    shift: null,
    pull: { text: '2.2' },
  });
});

test('scales in ounces and grams are reckoned in their own unit, and no shift is finer than their marks bear', () => {
  const file = (name: string) => ({
    name,
    text: readFileSync(join('examples', 'second-kit', name), 'utf8'),
  });
  const ferry = prepare({
    kit: file('ferry.kit.yaml'),
    activity: file('ferry-day.activity.yaml'),
    visit: file('ferry-day.visit.yaml'),
  });
  const text = wordsOf(guideOf(paperJob(ferry))).join('\n');
  const sums = [
    ...text.matchAll(/the load, ([\d.]+) (\w+), over the pull, ([\d.]+) (\w+), is ([\d.]+) times\./g),
  ];
  expect(new Set(sums.map(([, , unit]) => unit))).toEqual(new Set(['oz', 'g', 'N']));
  for (const [, load, unit, pull, same, times] of sums) {
    expect(unit).toBe(same);
    expect(number(times)).toBe(Number((number(load) / number(pull)).toPrecision(2)));
  }
  const tags = scaleTags.build(paperJob(ferry)).flatMap(wordsOf).join('\n');
  expect(tags).toMatch(/Shift 1\.3\soz \(/);
  expect(text).toContain('"ounce scale" shows 1.3 oz less than the pull');
  expect(text).toContain('add the own shift of the scale, 7 g, to the 100 g that it shows: 107 g;');
});
