import { expect, test } from 'vitest';
import { demoPrepared, paperJob, wordsOf } from '../../../test/documents/demo-prepared.ts';
import { dataCharts } from '../sheets/data-chart.ts';
import { tableCards } from '../sheets/table-card.ts';
import { tableSigns } from '../sheets/table-sign.ts';
import { sheetIn } from './sheet-in.ts';

const job = paperJob(demoPrepared());

test('paper in Spanish bears the Spanish titles, and paper in English those of the file', () => {
  const spanish = { ...job, languages: { cards: 'es', key: 'en' } } as const;
  for (const kind of [tableCards, tableSigns]) {
    expect(kind.build(spanish)[0]?.title).toBe('Mesa 1: El remo que levanta');
    expect(kind.build(job)[0]?.title).toBe('Table 1: The oar that lifts');
  }
  const charts = dataCharts.build(job);
  const wordsIn = (tag: string) => charts.filter(({ language }) => language === tag).flatMap(wordsOf);
  expect(wordsIn('es')).toEqual(expect.arrayContaining(['Mesa 2: Rampa arriba', 'Actividad: Día de puerto']));
  expect(wordsIn('es').join('\n')).not.toContain('slipway');
  expect(wordsIn('en')).toEqual(expect.arrayContaining(['Table 2: Up the slipway', 'Activity: Harbour day']));
});

test('a title without a second language stands on paper as it was written', () => {
  const alone = paperJob(
    demoPrepared((text, file) => (file === 'activity' ? text.replace(/^ *title in es: .*\n/gm, '') : text)),
  );
  const { activity, tables } = sheetIn('es', alone.sheet);
  expect(activity).toBe('Harbour day');
  expect(tables.map(({ title }) => title)).toContain('The oar that lifts');
});

test('one language after another leaves each its own titles', () => {
  expect(sheetIn('en', sheetIn('es', job.sheet))).toEqual(sheetIn('en', job.sheet));
});
