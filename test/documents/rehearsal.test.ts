import { readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { rehearse } from '../../src/core/rehearse.ts';
import { rehearsalSheet } from '../../src/documents/sheets/rehearsal-sheet.ts';
import { classSummaryText } from '../../src/documents/text/class-summary-text.ts';
import { rehearsalAnswers, rehearsalText } from '../../src/documents/text/rehearsal-text.ts';
import { demoPrepared, paperJob, rowsOf, wordsOf } from './demo-prepared.ts';

const prepared = demoPrepared();
const rehearsal = rehearse(prepared, { groups: 6, mistakes: 4, seed: 3 });
const golden = (name: string, text: string): string => {
  const file = new URL(`./${name}.golden.txt`, import.meta.url);
  if (process.env.UPDATE_GOLDEN === '1') writeFileSync(file, text);
  return readFileSync(file, 'utf8');
};

describe.each(['en', 'es'] as const)('a rehearsal in %s', (language) => {
  it('has its charts, its answers and what the class found as they were looked at', () => {
    const text = [
      rehearsalText(language, prepared, rehearsal),
      rehearsalAnswers(language, rehearsal),
      ...classSummaryText(language, rehearsal.review),
      '',
    ].join('\n');
    expect(text).toBe(golden(`rehearsal.${language}`, text));
  });

  it('tells nothing of what happened in its charts', () => {
    const charts = rehearsalText(language, prepared, rehearsal);
    const answers = rehearsalAnswers(language, rehearsal);
    for (const { readings } of rehearsal.planted) {
      const [first] = readings;
      // As a class that speaks the language would write it.
      const written = first?.written ?? 'nothing';
      expect(answers).toContain(language === 'es' ? written.replace('.', ',') : written);
    }
    expect(charts).not.toMatch(/probabl|likely/i);
  });
});

describe('the rehearsal on paper', () => {
  const [sheet] = rehearsalSheet.build(paperJob(prepared));
  if (sheet === undefined) throw new Error('there is one sheet');

  it('has every reading on the first page and what happened on the second', () => {
    const cut = sheet.blocks.findIndex(({ block }) => block === 'page-break');
    const [first, second] = [
      { ...sheet, blocks: sheet.blocks.slice(0, cut) },
      { ...sheet, blocks: sheet.blocks.slice(cut) },
    ];
    const setups = prepared.tables.flatMap((table) => table.setups.filter(({ isExtra }) => !isExtra));
    expect(rowsOf(first)).toHaveLength(setups.length);
    expect(rowsOf(second)).toHaveLength(4);
    expect(wordsOf(first).join(' ')).not.toContain('The program:');
    expect(wordsOf(second).join(' ')).toContain('The program:');
  });
});
