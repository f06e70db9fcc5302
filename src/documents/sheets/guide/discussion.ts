import { isNotDefined } from '../../../core/description/not-defined.ts';
import { decimalText } from '../../../core/quantities/print-quantity.ts';
import type { WorkAccount } from '../../../core/setups/work-account.ts';
import type { SetupSheet, TableSheet } from '../../pages/sheet.ts';
import { type Language, languagePack } from '../../sentences/language.ts';
import { sentence } from '../../sentences/sentence.ts';
import type { Block, Cell } from '../block.ts';
import type { Say } from '../say.ts';
import { definedOr, expectedOf, expectedWithUnit, raised, setupsWithTable, timesText } from './figures.ts';

/** Questions for the end of the period, each with a model answer in this kit's numbers. */
export function discussion(tables: readonly TableSheet[], language: Language, say: Say): readonly Block[] {
  const rows = accountsOf(tables);
  const text = joules(rows, language);
  return [
    { block: 'heading', level: 2, text: say('guide.talk') },
    { block: 'text', text: say('guide.talk.about') },
    ...answers(rows, tables, language, say, text).flatMap(({ question, answer }): readonly Block[] => [
      {
        block: 'together',
        blocks: [
          { block: 'text', text: question, tone: 'strong' },
          { block: 'text', text: answer },
        ],
      },
    ]),
    ...(rows.length === 0
      ? []
      : [
          { block: 'heading' as const, level: 3 as const, text: say('guide.work') },
          accountTable(rows, say, text),
          { block: 'text' as const, text: say('guide.work.note'), tone: 'small' as const },
        ]),
  ];
}

/** One setup's work over its own lift: what went in by whom, and what became of it. Joules. */
interface Accounted {
  readonly setup: SetupSheet;
  readonly hand: number;
  /** Weights that sink, and springs that let go. */
  readonly others: number;
  readonly load: number;
  /** Raised besides the load, or stored in a spring. */
  readonly raised: number;
  readonly rubbing: number;
  /** Where most is lost, as a sentence key. */
  readonly mostLost: { readonly cause: string; readonly joules: number } | null;
}

/** Setups that raise a load and are read moving up: there the account is about steady work. */
function accountsOf(tables: readonly TableSheet[]): readonly Accounted[] {
  return tables.flatMap((table) =>
    raised(table.setups).flatMap((setup): readonly Accounted[] => {
      const { account } = setup.prediction;
      return isNotDefined(account) || account.taken.length === 0 ? [] : [accounted(setup, account)];
    }),
  );
}

function accounted(setup: SetupSheet, { given, taken }: WorkAccount): Accounted {
  const sum = (entries: WorkAccount['given'], is: (by: string) => boolean): number =>
    entries.filter(({ by }) => is(by)).reduce((total, { joules }) => total + joules, 0);
  const losses = taken.filter(({ by }) => by === 'loss').sort((a, b) => b.joules - a.joules);
  return {
    setup,
    hand: sum(given, (by) => by === 'hand'),
    others: sum(given, (by) => by !== 'hand'),
    load: sum(taken, (by) => by === 'load'),
    raised: sum(taken, (by) => by !== 'load' && by !== 'loss'),
    rubbing: sum(taken, (by) => by === 'loss'),
    mostLost: losses[0] ?? null,
  };
}

/** Joules with as many decimals for all, so that the least total still has three digits and columns add up by eye. */
function joules(rows: readonly Accounted[], language: Language): (value: number) => string {
  const { decimal } = languagePack(language);
  const least = Math.min(...rows.map(({ hand, others }) => hand + others), 1);
  const decimals = Math.max(0, 2 - Math.floor(Math.log10(Math.max(least, 1e-6))));
  return (value) => decimalText(value, decimals, decimal);
}

const accountTable = (rows: readonly Accounted[], say: Say, text: (value: number) => string): Block => ({
  block: 'table',
  head: ['setup', 'hand', 'others', 'load', 'raised', 'rubbing'].map((column) => say(`guide.work.${column}`)),
  rows: rows.map(({ setup, hand, others, load, raised, rubbing }): readonly Cell[] => [
    { text: setup.mark, strong: true },
    ...[hand, others, load, raised, rubbing].map(text),
  ]),
  widths: [1, 1.4, 1.8, 1.4, 1.8, 1.4],
  align: ['left', 'right', 'right', 'right', 'right', 'right'],
  size: 'small',
});

interface Answered {
  readonly question: string;
  readonly answer: string;
}

function answers(
  rows: readonly Accounted[],
  tables: readonly TableSheet[],
  language: Language,
  say: Say,
  text: (value: number) => string,
): readonly Answered[] {
  const ask = (name: string, facts: Parameters<Say>[1] | null): readonly Answered[] =>
    facts === null
      ? []
      : [{ question: say(`guide.talk.${name}`), answer: say(`guide.talk.${name}.answer`, facts) }];
  const lossy = [...rows].sort((a, b) => share(b) - share(a))[0];
  const best = bestHelp(tables);
  const pair = clearestPair(tables);
  return [
    ...ask(
      'saves-work',
      lossy === undefined
        ? null
        : {
            setup: lossy.setup.mark,
            given: text(lossy.hand + lossy.others),
            load: text(lossy.load),
            lost: text(lossy.rubbing),
            raised: text(lossy.raised),
          },
    ),
    ...ask(
      'then-what',
      best === null
        ? null
        : {
            setup: best.mark,
            actual: timesText(language, best.actual),
            travel: timesText(language, best.travel),
          },
    ),
    ...ask(
      'where-lost',
      lossy === undefined || lossy.mostLost === null
        ? null
        : {
            setup: lossy.setup.mark,
            lost: text(lossy.mostLost.joules),
            cause: sentence(language, lossy.mostLost.cause),
          },
    ),
    ...ask(
      'which-pair',
      pair === null
        ? null
        : {
            one: pair.one.mark,
            other: pair.other.mark,
            less: expectedWithUnit(language, pair.one.prediction) ?? '',
            more: expectedWithUnit(language, pair.other.prediction) ?? '',
          },
    ),
    ...ask('why-not-book', {}),
    ...ask('why-differ', {}),
    ...ask('which-else', {}),
  ];
}

/** Share of what was given that rubbing took. */
const share = ({ hand, others, rubbing }: Accounted): number => rubbing / (hand + others);

function bestHelp(tables: readonly TableSheet[]) {
  const [best] = setupsWithTable(tables)
    .filter(({ setup }) => raised([setup]).length > 0)
    .flatMap(({ setup: { mark, prediction } }) => {
      const actual = definedOr(prediction.actualAdvantage);
      const travel = definedOr(prediction.velocityRatio);
      return actual === null || travel === null ? [] : [{ mark, actual, travel }];
    })
    .sort((a, b) => b.actual - a.actual);
  return best ?? null;
}

/** The partners whose readings differ most, the lesser first. Another load shows nothing of the machine. */
function clearestPair(tables: readonly TableSheet[]) {
  const [clearest] = tables
    .flatMap((table) =>
      raised(table.setups).flatMap((setup) => {
        const partner = raised(table.setups).find(({ mark }) => mark === setup.partner);
        if (partner === undefined || partner.load?.label !== setup.load?.label) return [];
        const [one, other] = [setup, partner].sort((a, b) => shownBy(a) - shownBy(b));
        return one === undefined || other === undefined || shownBy(one) <= 0
          ? []
          : [{ one, other, ratio: shownBy(other) / shownBy(one) }];
      }),
    )
    .sort((a, b) => b.ratio - a.ratio);
  return clearest ?? null;
}

const shownBy = ({ prediction }: SetupSheet): number => expectedOf(prediction) ?? 0;
