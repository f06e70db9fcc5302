import { isNotDefined, type NotDefined } from '../../core/description/not-defined.ts';
import { decimalsFor, decimalText } from '../../core/quantities/print-quantity.ts';
import type { ClassFigure } from '../../core/readings/class-figure.ts';
import type { FeltOrder } from '../../core/readings/class-order.ts';
import type { PairFound } from '../../core/readings/class-pairs.ts';
import {
  type ClassSummary,
  classSummary,
  type SetupFound,
  type WorkSaved,
} from '../../core/readings/class-summary.ts';
import type { JudgedReading } from '../../core/review.ts';
import { newtonMarks, readingText } from '../printing/reading-text.ts';
import { type Language, languagePack } from '../sentences/language.ts';
import { factText, hasSentence, sentence } from '../sentences/sentence.ts';
import { unitWords } from '../sentences/unit-words.ts';
import { causeName } from './cause-text.ts';
import { columns, wrapped } from './columns.ts';
import { marksOf } from './prediction-text.ts';

const WIDTH = 100;
const NOTHING = '–';

interface Judged {
  readonly judged: readonly JudgedReading[];
}

/** What the class found, as lines for the end of a review; none where nothing with a number was read. */
export function classSummaryText(language: Language, review: Judged): readonly string[] {
  const summary = classSummary(review);
  if (summary.setups.length === 0 && summary.felt.length === 0) return [];
  const say = (key: string, facts = {}) => sentence(language, `summary.${key}`, facts);
  return [
    ...(summary.setups.length === 0 ? [] : [say('title'), ...setupLines(language, summary, review), '']),
    ...section(
      say('pairs'),
      summary.pairs.flatMap((pair) => pairText(language, pair)),
    ),
    ...section(
      say('felt'),
      summary.felt.flatMap((order) => feltText(language, order)),
    ),
    ...section(
      say('work'),
      summary.setups.flatMap((setup) => workText(language, setup)),
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
    ...summary.setups.flatMap((setup) => leftOutText(language, setup)).flatMap(indented),
    ...(hand === null
      ? []
      : indented(say('hand', { share: percent(hand.share), assumed: percent(hand.assumed) }))),
    ...indented(say('how')),
  ];
}

function rowOf(language: Language, found: SetupFound, { judged }: Judged): readonly string[] {
  const { decimal } = languagePack(language);
  const at = judged.find((each) => each.at.setup.mark === found.setup)?.at;
  const { centre } = found;
  const marks = at === undefined ? newtonMarks : marksOf(at.prediction);
  const shown = (si: number): string =>
    `${readingText(marks, si, marks.step / 10, decimal)} ${unitWords(language, marks.unit)}`;
  const inPercent = (value: number): string => decimalText(100 * value, 0, decimal);
  return [
    found.setup,
    sentence(language, 'summary.count', { count: found.count, of: found.count + found.leftOut.length }),
    isNotDefined(centre) ? NOTHING : shown(centre.median),
    isNotDefined(centre) || isNotDefined(centre.scatter)
      ? NOTHING
      : `${decimalText(centre.scatter.spread / marks.unitSi, decimalsFor(marks.step / marks.unitSi / 5), decimal)} ${unitWords(language, marks.unit)}`,
    figureText(language, found.pull, ' N'),
    figureText(language, found.advantage, ''),
    isNotDefined(found.work)
      ? NOTHING
      : sentence(language, 'summary.percent', {
          value: inPercent(found.work.efficiency.value),
          from: inPercent(found.work.efficiency.from),
          to: inPercent(found.work.efficiency.to),
        }),
  ];
}

/** To two digits of its standard uncertainty; the interval to the same decimals. */
function figureText(language: Language, figure: ClassFigure | NotDefined, unit: string): string {
  if (isNotDefined(figure)) return NOTHING;
  const decimals = decimalsFor(figure.u);
  const text = (value: number): string => decimalText(value, decimals, languagePack(language).decimal);
  return `${sentence(language, 'summary.range', {
    value: text(figure.value),
    from: text(figure.from),
    to: text(figure.to),
  })}${unit}`;
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

const reasonText = (language: Language, { because, facts }: NotDefined): string =>
  hasSentence(language, because)
    ? sentence(language, because, facts)
    : sentence(language, 'not-defined.reason.unknown');

function leftOutText(language: Language, { setup, leftOut, withoutNumber }: SetupFound): readonly string[] {
  const told = (which: 'mistake' | 'station', key: string): readonly string[] => {
    const byCause = new Map<string, string[]>();
    for (const { because, group, written, code, facts } of leftOut) {
      if (because !== which) continue;
      const cause = causeName(language, { code, ...(facts === undefined ? {} : { facts }) });
      byCause.set(cause, [...(byCause.get(cause) ?? []), `${group} ${onOneLine(written)}`]);
    }
    const readings = [...byCause].map(([cause, each]) =>
      sentence(language, 'summary.left-out.one', { readings: each.join(', '), cause }),
    );
    return readings.length === 0 ? [] : [sentence(language, key, { setup, readings: readings.join('; ') })];
  };
  return [
    ...told('mistake', 'summary.left-out'),
    ...told('station', 'summary.left-out.station'),
    ...(withoutNumber === 0
      ? []
      : [sentence(language, 'summary.without-number', { setup, count: withoutNumber })]),
  ];
}

function pairText(language: Language, pair: PairFound): readonly string[] {
  const { more, less, ratio, expected, groups } = pair;
  const said = isNotDefined(ratio)
    ? sentence(language, 'summary.pair.not-said', { more, less, because: reasonText(language, ratio) })
    : sentence(language, expected === null ? 'summary.pair.without-key' : 'summary.pair', {
        more,
        less,
        ratio: figureText(language, ratio, ''),
        ...(expected === null
          ? {}
          : { expected: decimalText(expected, decimalsFor(ratio.u), languagePack(language).decimal) }),
      });
  const read = groups.less + groups.more + groups.same;
  return [
    read === 0
      ? said
      : `${said} ${sentence(language, 'summary.pair.groups', {
          more: groups.less,
          less: groups.more,
          same: groups.same,
          percent: percent(groups.probability),
        })}`,
  ];
}

function feltText(language: Language, felt: FeltOrder): readonly string[] {
  const { decimal } = languagePack(language);
  const { pair, agreement, expected, setups, groups } = felt;
  const [first, second] = setups;
  const agreed =
    pair !== null && first !== undefined && second !== undefined && groups > 0
      ? sentence(language, 'summary.felt.pair', {
          groups,
          less: pair.less,
          more: pair.more,
          same: pair.same,
          first: first.setup,
          second: second.setup,
          percent: percent(pair.probability),
        })
      : agreement !== null
        ? sentence(language, 'summary.felt.agreement', {
            groups,
            w: decimalText(agreement.w, 2, decimal),
            percent: percent(agreement.probability),
          })
        : sentence(language, 'summary.felt.none');
  const order = sentence(language, 'summary.felt.order', {
    table: felt.table,
    order: setups.map(({ setup, meanPlace }) => `${setup} ${decimalText(meanPlace, 1, decimal)}`),
  });
  return [
    [
      ...(groups === 0 ? [] : [order]),
      agreed,
      ...(expected === null
        ? []
        : [
            sentence(language, expected.agrees ? 'summary.felt.as-key' : 'summary.felt.not-as-key', {
              order: factText(language, expected.order),
            }),
          ]),
      ...(felt.incomplete === 0
        ? []
        : [sentence(language, 'summary.felt.incomplete', { count: felt.incomplete })]),
    ].join(' '),
  ];
}

function workText(language: Language, { setup, work }: SetupFound): readonly string[] {
  if (isNotDefined(work)) return [];
  const joules = (value: number): string =>
    decimalText(value, Math.max(2, decimalsFor(work.pulled.u)), languagePack(language).decimal);
  return [
    sentence(language, work.helped === null ? 'summary.work.at' : 'summary.work.helped', {
      setup,
      travel: { si: work.travel, dimension: 'length' },
      pulled: joules(work.pulled.value),
      ...(work.helped === null ? {} : { helped: joules(work.helped.value) }),
      out: joules(work.out.value),
      rest: joules(work.rest),
    }),
  ];
}

function savedText(language: Language, { saved, setups }: ClassSummary): readonly string[] {
  const say = (key: string, facts = {}) => sentence(language, `summary.saved.${key}`, facts);
  const { least } = saved;
  if (least === null) return [say('nothing')];
  const told = (which: Exclude<keyof WorkSaved, 'least'>): readonly string[] =>
    saved[which].length === 0 ? [] : [say(which, { setups: saved[which] })];
  const best = setups.reduce<{ setup: string; value: number } | null>(
    (before, { setup, advantage }) =>
      isNotDefined(advantage) || advantage.from <= 1 || advantage.value <= (before?.value ?? 0)
        ? before
        : { setup, value: advantage.value },
    null,
  );
  return [
    ...told('no'),
    ...told('open'),
    ...told('yes'),
    ...(least.notSaved > 0.995
      ? []
      : [say('least', { setup: least.setup, percent: percent(least.notSaved) })]),
    ...(best === null
      ? []
      : [
          say('force', {
            setup: best.setup,
            advantage: decimalText(best.value, 1, languagePack(language).decimal),
          }),
        ]),
  ];
}

const surprisingText = (language: Language, { surprising }: ClassSummary): readonly string[] =>
  surprising.map(({ group, setup, written, efficiency, u }) =>
    sentence(language, 'summary.surprising.one', {
      group,
      setup,
      written: onOneLine(written),
      percent: percent(efficiency),
      u: percent(1.96 * u),
    }),
  );

/** A cell may hold line ends, and marks that a terminal would obey. */
const onOneLine = (text: string): string => text.replace(/[\p{Cc}\p{Cf}\s]+/gu, ' ');

const percent = (share: number): number => Math.round(100 * share);
