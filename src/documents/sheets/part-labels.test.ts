import { expect, test } from 'vitest';
import { demoPrepared, paperJob, wordsOf } from '../../../test/documents/demo-prepared.ts';
import { substitutionsOf } from '../../core/substitute.ts';
import { partLabels } from './part-labels.ts';

const prepared = demoPrepared();
const words = (language: 'en' | 'es') =>
  partLabels
    .build(paperJob(prepared, { languages: { cards: language, key: language } }))
    .flatMap(wordsOf)
    .flatMap((line) => line.split('\n'));

/** The lines between a part's mark and the next one's. */
function labelOf(lines: readonly string[], mark: string): readonly string[] {
  const marks = new Set(prepared.kit?.parts.map((part) => part.mark));
  const at = lines.indexOf(mark);
  const end = lines.findIndex((line, n) => n > at && marks.has(line));
  return lines.slice(at, end < 0 ? undefined : end);
}

test('no part that a slip takes has a label that denies it', () => {
  const taken = new Set(substitutionsOf(prepared).flatMap(({ substitute }) => substitute ?? []));
  expect(taken.size).toBeGreaterThan(4);
  for (const mark of taken) {
    const label = labelOf(words('en'), mark).join('\n');
    expect(label, mark).toMatch(/Is a [a-z ]+ lost\? See its slip\./);
    expect(label, mark).not.toMatch(/fits no table/);
  }
});

test('a part that plays at a table is nobody’s stand-in, in Spanish as in English', () => {
  expect(labelOf(words('en'), 'amber').join('\n')).not.toMatch(/lost\?/);
  expect(labelOf(words('es'), 'amber').join('\n')).not.toMatch(/¿Falta/);
  expect(labelOf(words('es'), 'moss').join('\n')).toMatch(
    /¿Falta otra pieza \(dinamómetro\)\? Mira su hoja\./,
  );
});
