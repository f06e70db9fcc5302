import { expect, test } from 'vitest';
import { demoPrepared, paperJob, wordsOf } from '../../../test/documents/demo-prepared.ts';
import { arrivalCheckOf } from '../../core/calibration/arrival-check.ts';
import { outcomeShort } from '../text/prediction-text.ts';
import { arrivalSheet } from './arrival-sheet.ts';

const prepared = demoPrepared();
const [sheet] = arrivalSheet.build(paperJob(prepared));
if (sheet === undefined) throw new Error('no sheet');
const words = wordsOf(sheet);
const text = words.join('\n');

test('every table has one trial reading with its from - to, and a line to write it on', () => {
  let tried = 0;
  for (const table of prepared.tables) {
    const arrival = arrivalCheckOf(table.setups);
    if (arrival === null) continue;
    const { mark } = arrival.setup;
    expect(words).toContain(`Table ${table.mark}: ${table.title} · setup ${mark}`);
    expect(words).toContain(`Good: ${outcomeShort('en', arrival.prediction)}`);
    expect(words).toContain(`We read at ${mark}:`);
    tried += 1;
  }
  expect(tried).toBe(6);
});

test('a table with nothing to read says what to do instead', () => {
  const at = words.indexOf('Table 6: The thole and the chock');
  expect(words[at + 1]).toBe('Nothing is read here on arrival. Try every setup once by hand.');
});

test('the steps name the load and the scale, and end with how it is read', () => {
  const at = words.indexOf('Table 1: The oar that lifts · setup L2');
  const steps = words.slice(at + 1, words.indexOf('Good: 4.0 to 4.7 N'));
  expect(steps[0]).toBe('Take W500 and amber.');
  expect(steps).toContain('Hook the scale into hole 7.');
  expect(steps.at(-1)).toMatch(/^Read as the bar slowly passes level/);
});

test('what to do outside the range goes from the zero of the scale to closing the table', () => {
  const outside = text.split('If it lies outside').slice(1);
  expect(outside).toHaveLength(6);
  expect(outside[0]?.trim().split('\n').slice(0, 5)).toEqual([
    'Set the pointer of amber to 0 as it hangs.',
    'Check holes, load and parts against the card.',
    'Take the reading once more.',
    'Ring the row of the new reading instead.',
    'Close the table below 4.0 N or above 4.7 N.',
  ]);
});

test('the row is ringed right under the reading, inside the good range or not', () => {
  for (const mark of ['L2', 'S2', 'T1', 'C1', 'D2']) {
    const at = words.indexOf(`We read at ${mark}:`);
    expect(words[at + 1], mark).toBe('Ring the row of this reading on the key that re-keys itself.');
    expect(words[at + 2], mark).toBe('If it lies outside');
  }
});

test('where no row says anything new nothing is ringed: the printed key stays', () => {
  const at = words.indexOf('We read at P1:');
  expect(words[at + 1]).toBe('No row to ring here: the printed key stays as it is.');
  const rest = words.slice(at + 2, words.indexOf('Table 6: The thole and the chock'));
  expect(rest.join(' ')).not.toMatch(/\b[Rr]ing\b/);
  expect(rest.at(-1)).toBe('Close the table below 3.75 turns or above 4.25 turns.');
});

test('an end of the plausible readings is printed in the unit that stands on the scale', () => {
  const grams = paperJob(
    demoPrepared((text, file) =>
      file === 'kit'
        ? text.replace(
            'range: 5 N\n    graduation: 0.1 N\n    other graduation: 10 gf\n    mass: 46',
            'range: 500 gf\n    graduation: 10 gf\n    mass: 46',
          )
        : text,
    ),
  );
  const [inGrams] = arrivalSheet.build(grams);
  const lines = inGrams === undefined ? [] : wordsOf(inGrams);
  expect(lines.join('\n')).not.toContain(' gf');
  expect(lines.find((line) => line.startsWith('Close the table'))).toMatch(
    /^Close the table below \d+ g or above \d+ g\.$/,
  );
});
