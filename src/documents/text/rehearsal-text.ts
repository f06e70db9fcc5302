import type { Prepared } from '../../core/prepare.ts';
import { causeKey } from '../../core/readings/causes.ts';
import type { Judgement } from '../../core/readings/judgement.ts';
import type { PlantedMistake, Rehearsal, RehearsedRow } from '../../core/rehearse.ts';
import type { Language } from '../sentences/language.ts';
import { sentence } from '../sentences/sentence.ts';
import { unitWords } from '../sentences/unit-words.ts';
import { tableHeading } from '../sheets/table-heading.ts';
import { causeName, causeNamed, causeToSee, causeToTry } from './cause-text.ts';
import { glued } from './class-figure-text.ts';
import { columns, wrapped } from './columns.ts';
import { plainJson } from './plain-json.ts';
import { marksOf } from './prediction-text.ts';
import { writtenText } from './written-text.ts';

const WIDTH = 100;

/** What the groups of a rehearsal wrote, table by table: a row a setup, a column a group; nothing is told. */
export function rehearsalText(language: Language, prepared: Prepared, rehearsal: Rehearsal): string {
  return [
    ...rehearsalTitle(language, rehearsal).flatMap((each) => wrapped(each, WIDTH)),
    ...prepared.tables.flatMap((table) => {
      const { head, rows } = tableWritten(language, table.mark, rehearsal);
      return rows.length === 0
        ? []
        : [
            '',
            tableHeading(language, table),
            ...columns(
              [head, ...rows],
              head.map((_, n) => (n < 2 ? 'left' : 'right')),
            ).map((line) => `  ${line}`),
          ];
    }),
    '',
  ].join('\n');
}

/** What it is, what to do with it, and what to expect. */
export const rehearsalTitle = (language: Language, { labels, planted, mistakes, seed }: Rehearsal) => [
  sentence(language, 'rehearsal.title', { groups: labels.length, mistakes: planted.length, seed }),
  ...(planted.length < mistakes
    ? [sentence(language, 'rehearsal.fewer', { count: planted.length, wished: mistakes })]
    : []),
  sentence(language, 'rehearsal.task'),
  sentence(language, 'rehearsal.some-unseen'),
];

/** One table's readings: a row a setup, its marks, then what each group wrote. */
export function tableWritten(
  language: Language,
  table: string,
  { labels, rows }: Rehearsal,
): { readonly head: readonly string[]; readonly rows: readonly (readonly string[])[] } {
  const own = rows.filter(({ at }) => at.setup.table === table);
  const setups = [...new Set(own.map(({ at }) => at))];
  const written = (row: RehearsedRow | undefined): string => writtenText(language, row?.written ?? '');
  return {
    head: [
      sentence(language, 'rehearsal.column.setup'),
      sentence(language, 'rehearsal.column.unit'),
      ...labels,
    ],
    rows: setups.map((at) => [
      at.setup.mark,
      marksText(language, at),
      ...labels.map((group) => written(own.find((row) => row.at === at && row.group === group))),
    ]),
  };
}

const marksText = (language: Language, { prediction }: RehearsedRow['at']): string =>
  prediction.watched === 'ease'
    ? sentence(language, 'sheet.chart.order-unit')
    : unitWords(language, marksOf(prediction).unit);

/** The answers: what was planted, what the program thinks of it, and what to say at the table. */
export function rehearsalAnswers(language: Language, rehearsal: Rehearsal): string {
  return [
    sentence(language, 'rehearsal.answers'),
    ...rehearsal.planted.flatMap((planted, n) => {
      const { mistake } = planted;
      const [first = '', ...rest] = [
        sentence(language, 'rehearsal.answer', {
          n: n + 1,
          where: whereText(language, planted),
          cause: causeNamed(language, mistake),
        }),
        sentence(language, 'rehearsal.answer.wrote', { readings: writtenIn(language, planted) }),
        sentence(language, 'rehearsal.answer.program', { thinks: thoughtOf(language, planted) }),
        sentence(language, 'rehearsal.answer.say', { text: causeToTry(language, mistake) }),
        sentence(language, 'rehearsal.answer.see', { text: causeToSee(language, mistake) }),
      ];
      return ['', ...wrapped(first, WIDTH), ...rest.flatMap(indented)];
    }),
    '',
    ...wrapped(soundText(language, rehearsal), WIDTH),
    '',
  ].join('\n');
}

/** The table and the group; what a station keeps goes on from there. */
export const whereText = (language: Language, { mistake, table, group }: PlantedMistake): string =>
  sentence(language, mistake.persists === 'station' ? 'rehearsal.where.station' : 'rehearsal.where', {
    table,
    group,
  });

const indented = (text: string): readonly string[] => wrapped(text, WIDTH - 4).map((line) => `    ${line}`);

/** Readings of a mistake, setup by setup: "S1: D 0.85 N, E 0.85". */
export function writtenIn(language: Language, { readings }: Pick<PlantedMistake, 'readings'>): string {
  const bySetup = new Map<string, string[]>();
  for (const { setup, group, written } of readings)
    bySetup.set(setup, [...(bySetup.get(setup) ?? []), glued(`${group} ${writtenText(language, written)}`)]);
  return [...bySetup].map(([setup, each]) => `${setup}: ${each.join(', ')}`).join('; ');
}

/** What the program makes of a planted mistake, counted over its readings. */
export function thoughtOf(language: Language, { mistake, readings }: PlantedMistake): string {
  const say = (key: string, facts = {}) => sentence(language, `rehearsal.thinks.${key}`, facts);
  const counted = (key: string, facts = {}) => say(readings.length === 1 ? `${key}.one` : key, facts);
  const judgements = readings.flatMap(({ judgement }) => (judgement === null ? [] : [judgement]));
  const all = readings.length;
  const isIt = (each: { readonly code: string }): boolean =>
    each.code === mistake.code || causeKey(each) === mistake.key;
  if (judgements.some(({ station }) => station !== null && isIt(station))) return say('station');
  const again = judgements.filter(({ verdict }) => verdict === 'look again');
  const first = again.filter((each) => mistakesIn(each).slice(0, 1).some(isIt)).length;
  const second = again.filter((each) => mistakesIn(each).slice(0, 2).some(isIt)).length;
  if (again.length === 0) return say('not-seen');
  if (first === again.length || first >= all / 2) return counted('first', { of: first, all });
  if (second > 0) return counted('second', { of: second, all });
  const causes = [...new Set(again.flatMap((each) => mistakesIn(each)[0]?.code ?? []))];
  return counted('other', {
    of: again.length,
    all,
    causes: causes.map((code) => causeName(language, { code })),
  });
}

const mistakesIn = ({ causes }: Judgement) => causes.filter(({ kind }) => kind !== 'good');

/** Sound readings that were looked at again: a program errs too. */
export const soundText = (language: Language, { queriedThoughSound }: Rehearsal): string =>
  queriedThoughSound.length === 0
    ? sentence(language, 'rehearsal.sound.none')
    : sentence(language, 'rehearsal.sound', {
        readings: writtenIn(language, {
          readings: queriedThoughSound.map(({ reading }) => ({ ...reading, judgement: null })),
        }),
      });

/** A rehearsal as JSON; what was planted only where the answers are asked for. */
export const rehearsalJson = (rehearsal: Rehearsal, withAnswers: boolean): string =>
  plainJson({
    handspike: 'rehearsal 1',
    seed: rehearsal.seed,
    groups: rehearsal.labels,
    mistakes: rehearsal.planted.length,
    readings: rehearsal.rows.map(({ group, at, written }) => ({
      group,
      table: at.setup.table,
      setup: at.setup.mark,
      written,
    })),
    ...(withAnswers
      ? {
          planted: rehearsal.planted.map(({ mistake, table, group, readings }) => ({
            code: mistake.code,
            ...(mistake.facts === undefined ? {} : { facts: mistake.facts }),
            persists: mistake.persists,
            table,
            group,
            readings: readings.map(({ judgement, ...reading }) => ({
              ...reading,
              verdict: judgement?.verdict ?? null,
              causes: judgement?.causes ?? [],
            })),
          })),
          queriedThoughSound: rehearsal.queriedThoughSound.map(({ reading }) => reading),
        }
      : {}),
  });
