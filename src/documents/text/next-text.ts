import type { NextAtTable } from '../../core/bench.ts';
import type { NarrowedSetup } from '../../core/calibration/measure-next.ts';
import type { Prepared } from '../../core/prepare.ts';
import { setupNamed } from '../../core/review.ts';
import type { Language } from '../sentences/language.ts';
import { sentence } from '../sentences/sentence.ts';
import { wrapped } from './columns.ts';
import { measurementText } from './measurement-text.ts';
import { plainJson } from './plain-json.ts';
import { rangeText } from './prediction-text.ts';

/** A terminal that isn't wider still shows every line whole. */
const WIDTH = 100;

/** What to measure next, table by table, with the good ranges before and after. */
export function nextText(language: Language, prepared: Prepared, tables: readonly NextAtTable[]): string {
  const say = (key: string, facts = {}) => sentence(language, key, facts);
  return [
    ...wrapped(say('next.head'), WIDTH),
    ...tables.flatMap(({ table, title, next }) => [
      '',
      say('key.text.table', { mark: table, title }),
      ...(next === null
        ? [`  ${say('next.nothing')}`]
        : [
            `  ${measurementText(language, next.measurement)}`,
            ...next.setups.filter(isNarrower).map((setup) => `    ${setupText(language, prepared, setup)}`),
            ...(next.setups.some(isNarrower) ? [`    (${say('next.width')})`] : []),
          ]),
    ]),
    '',
  ].join('\n');
}

const isNarrower = ({ before, after }: NarrowedSetup): boolean =>
  after.to - after.from < before.to - before.from - 1e-9;

function setupText(language: Language, prepared: Prepared, { setup, before, after }: NarrowedSetup): string {
  const prediction = setupNamed(prepared, setup)?.prediction;
  if (prediction === undefined) return setup;
  return sentence(language, 'next.setup', {
    setup,
    before: rangeText(language, prediction, before),
    after: rangeText(language, prediction, after),
  });
}

/** The same as JSON; figures are SI. */
export const nextJson = (tables: readonly NextAtTable[]): string =>
  plainJson({
    handspike: 'next 1',
    tables: tables.map(({ table, title, next }) => ({
      table,
      title,
      measure: next?.measurement ?? null,
      narrowsGraduations: next?.narrows ?? null,
      setups: next?.setups ?? [],
    })),
  });
