import type { NextAtTable } from '../../core/bench.ts';
import type { NarrowedSetup } from '../../core/calibration/measure-next.ts';
import type { Prepared } from '../../core/prepare.ts';
import { setupNamed } from '../../core/review.ts';
import { COVERAGE_95 } from '../../core/uncertainty/measured.ts';
import type { Language } from '../sentences/language.ts';
import { sentence } from '../sentences/sentence.ts';
import { wrapped } from './columns.ts';
import { measurementText } from './measurement-text.ts';
import { type Outline, outlineText } from './outline.ts';
import { plainJson } from './plain-json.ts';
import { fineFigureIn, rangeText } from './prediction-text.ts';

/** A terminal that isn't wider still shows every line whole. */
const WIDTH = 100;

/** What to measure next, table by table, with the good ranges before and after. */
export function nextText(language: Language, prepared: Prepared, tables: readonly NextAtTable[]): string {
  return [
    ...wrapped(nextAbout(language), WIDTH),
    ...nextOutlines(language, prepared, tables).flatMap((each) => ['', ...outlineText(each, WIDTH)]),
    '',
  ].join('\n');
}

/** What it is about. */
export const nextAbout = (language: Language): string => sentence(language, 'next.head');

/** The same, table by table, as it is said. */
export const nextOutlines = (
  language: Language,
  prepared: Prepared,
  tables: readonly NextAtTable[],
): readonly Outline[] =>
  tables.map(({ table, title, next }) => ({
    heading: sentence(language, 'key.text.table', { mark: table, title }),
    lines:
      next === null
        ? [{ indent: 2, text: sentence(language, 'next.nothing') }]
        : [
            { indent: 2, text: measurementText(language, next.measurement) },
            ...narrowedTexts(language, prepared, next.setups).map((text) => ({ indent: 4, text })),
          ],
  }));

function narrowedTexts(
  language: Language,
  prepared: Prepared,
  setups: readonly NarrowedSetup[],
): readonly string[] {
  const narrower = setups.filter(isNarrower);
  return narrower.length > 0
    ? [...narrower.map((at) => rangesOf(language, prepared, at)), `(${sentence(language, 'next.width')})`]
    : [
        ...setups.filter(isBetterKnown).map((at) => halvesOf(language, prepared, at)),
        `(${sentence(language, 'next.same-marks')})`,
      ];
}

const isNarrower = ({ before, after }: NarrowedSetup): boolean =>
  after.to - after.from < before.to - before.from - 1e-9;

/** By a twentieth at least: less shows in no figure. */
const isBetterKnown = ({ uBefore, uAfter }: NarrowedSetup): boolean => uAfter < 0.95 * uBefore;

/** How far 19 of 20 readings lie about the expected one, where whole graduations hide it. */
function halvesOf(language: Language, prepared: Prepared, at: NarrowedSetup): string {
  const prediction = setupNamed(prepared, at.setup)?.prediction;
  if (prediction === undefined) return at.setup;
  const figure = fineFigureIn(language, prediction);
  return sentence(language, 'next.halves', {
    setup: at.setup,
    before: figure(COVERAGE_95 * at.uBefore),
    after: figure(COVERAGE_95 * at.uAfter),
    good: rangeText(language, prediction, at.before),
  });
}

function rangesOf(language: Language, prepared: Prepared, { setup, before, after }: NarrowedSetup): string {
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
