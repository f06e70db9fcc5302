import { isNotDefined } from '../../core/description/not-defined.ts';
import { decimalsFor, decimalText } from '../../core/quantities/print-quantity.ts';
import { type ClassSummary, classSummary, type SetupFound } from '../../core/readings/class-summary.ts';
import type { JudgedReading } from '../../core/review.ts';
import { newtonMarks, readingText } from '../printing/reading-text.ts';
import { type Language, languagePack } from '../sentences/language.ts';
import { factText, sentence } from '../sentences/sentence.ts';
import { unitWords } from '../sentences/unit-words.ts';
import { causeNamed } from './cause-text.ts';
import { figureText, glued, NOTHING, percent, percentText, reasonText } from './class-figure-text.ts';
import { feltText, pairsText } from './class-pairs-text.ts';
import { savedText, surprisingText, workText } from './class-work-text.ts';
import { columns, wrapped } from './columns.ts';
import { marksOf } from './prediction-text.ts';

const WIDTH = 100;

interface Judged {
  readonly judged: readonly JudgedReading[];
}

/** What the class found, as lines for the end of a review; none where nothing with a number was read. */
export function classSummaryText(language: Language, review: Judged): readonly string[] {
  const summary = classSummary(review);
  const isBlank = summary.setups.every(({ count, leftOut }) => count + leftOut.length === 0);
  if (isBlank && summary.felt.length === 0) return [];
  const say = (key: string, facts = {}) => sentence(language, `summary.${key}`, facts);
  return [
    ...(summary.setups.length === 0 ? [] : [say('title'), ...setupLines(language, summary, review), '']),
    ...section(say('pairs'), pairsText(language, summary.pairs)),
    ...section(
      say('felt'),
      summary.felt.map((order) => feltText(language, order)),
    ),
    ...section(
      say('work'),
      summary.setups.flatMap((setup) => workText(language, setup, summary.saved)),
    ),
    ...section(say('saved'), savedText(language, summary)),
    ...section(say('surprising'), surprisingText(language, summary)),
  ].slice(0, -1);
}

/** A heading with its lines below, and an empty line behind; nothing where there are none. */
const section = (title: string, lines: readonly string[]): readonly string[] =>
  lines.length === 0 ? [] : [...wrapped(title, WIDTH), ...lines.flatMap((each) => indented(each)), ''];

const indented = (text: string): readonly string[] => {
  const [first = '', ...rest] = wrapped(text, WIDTH - 4);
  return [`  ${first}`, ...rest.map((line) => `    ${line}`)];
};

const deeper = (text: string): readonly string[] =>
  wrapped(text, WIDTH - 6).map((line, n) => `${n === 0 ? '    ' : '      '}${line}`);

const COLUMNS = ['setup', 'count', 'middle', 'scatter', 'pull', 'advantage', 'efficiency'] as const;

function setupLines(language: Language, summary: ClassSummary, review: Judged): readonly string[] {
  const say = (key: string, facts = {}) => sentence(language, `summary.${key}`, facts);
  const rows = summary.setups.map((setup) => rowOf(language, setup, review));
  const { hand } = summary;
  return [
    ...columns(
      [COLUMNS.map((each) => say(`column.${each}`)), ...rows],
      ['left', 'left', 'left', 'left', 'left', 'left', 'left'],
    ).map((line) => `  ${line}`),
    ...notSaid(language, summary.setups).flatMap(indented),
    ...leftOutText(language, summary.setups),
    ...(hand === null
      ? []
      : indented(
          say('hand', {
            share: hand.share < 0.005 ? '< 1' : percent(hand.share),
            assumed: percent(hand.assumed),
          }),
        )),
    ...(summary.setups.every(({ centre }) => isNotDefined(centre) || isNotDefined(centre.scatter))
      ? []
      : indented(say('how'))),
  ];
}

function rowOf(language: Language, found: SetupFound, { judged }: Judged): readonly string[] {
  const { decimal } = languagePack(language);
  const at = judged.find((each) => each.at.setup.mark === found.setup)?.at;
  const { centre } = found;
  const marks = at === undefined ? newtonMarks : marksOf(at.prediction);
  const shown = (si: number): string =>
    `${readingText(marks, si, marks.step / 10, decimal)} ${unitWords(language, marks.unit)}`;
  return [
    found.setup,
    sentence(language, 'summary.count', { count: found.count, of: found.count + found.leftOut.length }),
    isNotDefined(centre) ? NOTHING : shown(centre.median),
    isNotDefined(centre) || isNotDefined(centre.scatter)
      ? NOTHING
      : centre.scatter.spread === 0
        ? `< ${shown(marks.step)}`
        : `${decimalText(centre.scatter.spread / marks.unitSi, decimalsFor(marks.step / marks.unitSi / 5), decimal)} ${unitWords(language, marks.unit)}`,
    figureText(language, found.pull, ' N'),
    figureText(language, found.advantage, ''),
    isNotDefined(found.work) ? NOTHING : percentText(language, found.work.efficiency),
  ];
}

/** Setups of which no advantage or no efficiency is said, by the reason. */
function notSaid(language: Language, setups: readonly SetupFound[]): readonly string[] {
  const byReason = new Map<string, string[]>();
  for (const { setup, centre, advantage, work } of setups) {
    const why = [centre, advantage, work].find(isNotDefined);
    if (why === undefined) continue;
    const reason = reasonText(language, why);
    byReason.set(reason, [...(byReason.get(reason) ?? []), setup]);
  }
  return [...byReason].map(([because, marks]) =>
    sentence(language, 'summary.not-said', { setups: marks, because }),
  );
}

/** Readings that do not count, once for each reason; then rows without a number. */
function leftOutText(language: Language, setups: readonly SetupFound[]): readonly string[] {
  const told = (which: 'mistake' | 'station', key: string): readonly string[] => {
    const alike = new Map<string, string[]>();
    for (const { setup, leftOut } of setups) {
      const own = leftOut.filter(({ because }) => because === which);
      if (own.length === 0) continue;
      const text = byCause(language, own, which);
      alike.set(text, [...(alike.get(text) ?? []), setup]);
    }
    const rows = [...alike].map(([text, marks]) => `${factText(language, marks)}: ${text}`);
    return rows.length === 0 ? [] : [...indented(sentence(language, key)), ...rows.flatMap(deeper)];
  };
  const without = setups.filter(({ withoutNumber }) => withoutNumber > 0);
  return [
    ...told('mistake', 'summary.left-out'),
    ...told('station', 'summary.left-out.station'),
    ...(without.length === 0
      ? []
      : indented(
          sentence(language, 'summary.without-number', {
            setups: without.map(({ setup, withoutNumber }) => `${setup}\u00a0(${withoutNumber})`),
          }),
        )),
  ];
}

/** Of a mistake what was written; of a changed station only which groups found it so. */
function byCause(language: Language, readings: SetupFound['leftOut'], which: 'mistake' | 'station'): string {
  const told = new Map<string, string[]>();
  for (const { group, written, code, facts } of readings) {
    const cause = causeNamed(language, { code, ...(facts === undefined ? {} : { facts }) });
    const between = /\d$/.test(group) ? ':\u00a0' : '\u00a0';
    const reading = which === 'station' ? group : `${group}${between}${glued(written)}`;
    told.set(cause, [...(told.get(cause) ?? []), reading]);
  }
  return [...told]
    .map(([cause, each]) =>
      sentence(language, `summary.left-out.${which === 'station' ? 'groups' : 'one'}`, {
        readings: each.join(', '),
        cause,
      }),
    )
    .join('; ');
}
