import { isNotDefined } from '../../../core/description/not-defined.ts';
import { decimalText } from '../../../core/quantities/print-quantity.ts';
import type { WorkAccount } from '../../../core/setups/work-account.ts';
import type { SetupSheet, TableSheet } from '../../pages/sheet.ts';
import { type Language, languagePack } from '../../sentences/language.ts';
import { marksOf } from '../../text/prediction-text.ts';
import type { Block, Cell } from '../block.ts';
import type { Say } from '../say.ts';
import { definedOr, raised } from './figures.ts';
import { loadOf, type PencilPull, type Printed, pencilPull, threeDigits } from './pencil.ts';

/** One setup's work over its own lift, reckoned from printed figures; joules. */
export interface Accounted {
  readonly setup: SetupSheet;
  readonly pull: Printed;
  readonly way: Printed;
  /** The load in newtons and how far it rises; `null` where none is raised. */
  readonly load: { readonly weight: Printed; readonly rise: Printed } | null;
  /** Pull times way. */
  readonly given: number;
  /** By weights that sink and springs that let go; the scale's own weight is in the pull already. */
  readonly others: number;
  /** Load times rise. */
  readonly out: number;
  /** Raised besides the load, or stored in a spring. */
  readonly raised: number;
  /** What is left over: rubbing, as well as the marks of the scale can tell. */
  readonly rest: number;
  /** Whether the rest is more than half a graduation makes. */
  readonly isTold: boolean;
  /** Where most is lost, as a sentence key. */
  readonly mostLost: string | null;
}

/** The accounts of a day, and how their joules are printed. */
export interface Accounts {
  readonly rows: readonly Accounted[];
  readonly text: (joules: number) => string;
}

/** Setups that raise a load and are read moving up: there the account is about steady work. */
export function accountsOf(tables: readonly TableSheet[], language: Language): Accounts {
  const found = tables.flatMap((table) =>
    raised(table.setups).flatMap((setup) => {
      const { account } = setup.prediction;
      const pull = pencilPull(language, setup);
      return isNotDefined(account) || account.taken.length === 0 || pull === null
        ? []
        : [{ setup, account, pull }];
    }),
  );
  const totals = found.map(({ account }) => account.given.reduce((sum, { joules }) => sum + joules, 0));
  // As many decimals for all, so that the least total still has three digits and columns add up by eye.
  const least = Math.max(Math.min(1, ...totals), 1e-6);
  const decimals = Math.max(0, 2 - Math.floor(Math.log10(least)));
  const round = (value: number): number => Number(decimalText(value, decimals));
  return {
    rows: found.map(({ setup, account, pull }) => accounted(setup, account, pull, language, round)),
    text: (value) => decimalText(value, decimals, languagePack(language).decimal),
  };
}

function accounted(
  setup: SetupSheet,
  { given, taken, effortTravel }: WorkAccount,
  { newtons }: PencilPull,
  language: Language,
  round: (value: number) => number,
): Accounted {
  const sum = (entries: WorkAccount['given'], is: (by: string) => boolean): number =>
    round(entries.filter(({ by }) => is(by)).reduce((total, { joules }) => total + joules, 0));
  const way = threeDigits(language, effortTravel);
  const weight = loadOf(setup);
  const ratio = definedOr(setup.prediction.velocityRatio);
  const load =
    weight === null || ratio === null
      ? null
      : { weight: threeDigits(language, weight), rise: threeDigits(language, effortTravel / ratio) };
  const put = round(newtons.value * way.value);
  const others = sum(given, (by) => by !== 'hand' && by !== 'falling scale');
  const out = load === null ? 0 : round(load.weight.value * load.rise.value);
  const besides = sum(taken, (by) => by !== 'load' && by !== 'loss');
  const rest = round(put + others - out - besides);
  const [most] = taken.filter(({ by }) => by === 'loss').sort((a, b) => b.joules - a.joules);
  return {
    setup,
    pull: newtons,
    way,
    load,
    given: put,
    others,
    out,
    raised: besides,
    rest,
    isTold: rest > (marksOf(setup.prediction).step / 2) * way.value,
    mostLost: most?.cause ?? null,
  };
}

/** Force times way, as it is reckoned on a chart. */
export const productText = (force: Printed, way: Printed, joules: string, say: Say): string =>
  say('guide.work.product', { force: force.text, way: way.text, joules });

/** Every setup with its sums: what is left over is what was given less what was got. */
export const accountTable = ({ rows, text }: Accounts, say: Say): Block => ({
  block: 'table',
  head: ['setup', 'pull', 'others', 'load', 'raised', 'rubbing'].map((column) => say(`guide.work.${column}`)),
  rows: rows.map((row): readonly Cell[] => [
    { text: row.setup.mark, strong: true },
    productText(row.pull, row.way, text(row.given), say),
    text(row.others),
    row.load === null ? text(row.out) : productText(row.load.weight, row.load.rise, text(row.out), say),
    text(row.raised),
    row.isTold ? text(row.rest) : say('guide.work.untold', { rest: text(row.rest) }),
  ]),
  widths: [1, 3, 1.8, 3, 1.8, 2],
  align: ['left', 'right', 'right', 'right', 'right', 'right'],
  size: 'small',
});
