import { isNotDefined } from '../../core/description/not-defined.ts';
import { decimalsFor, decimalText } from '../../core/quantities/print-quantity.ts';
import type { FeltOrder } from '../../core/readings/class-order.ts';
import type { PairFound } from '../../core/readings/class-pairs.ts';
import { type Language, languagePack } from '../sentences/language.ts';
import { factText, sentence } from '../sentences/sentence.ts';
import { figureText, percent, reasonText } from './class-figure-text.ts';

/** Partners as the class read them, and how many groups found it so; those of which nothing is said together. */
export function pairsText(language: Language, pairs: readonly PairFound[]): readonly string[] {
  const silent = new Map<string, string[]>();
  const said = pairs.flatMap((pair) => {
    const { more, less, ratio, groups } = pair;
    const read = groups.less + groups.more + groups.same;
    if (!isNotDefined(ratio) || read >= FEW) return [pairText(language, pair, read)];
    const because = reasonText(language, ratio);
    silent.set(because, [
      ...(silent.get(because) ?? []),
      sentence(language, 'summary.pair.against', { more, less }),
    ]);
    return [];
  });
  return [
    ...said,
    ...[...silent].map(([because, each]) =>
      sentence(language, 'summary.pair.not-said', { pairs: each, because }),
    ),
  ];
}

function pairText(
  language: Language,
  { more, less, ratio, expected, groups }: PairFound,
  read: number,
): string {
  const said = isNotDefined(ratio)
    ? sentence(language, 'summary.pair.not-said', {
        pairs: [sentence(language, 'summary.pair.against', { more, less })],
        because: reasonText(language, ratio),
      })
    : sentence(language, expected === null ? 'summary.pair.without-key' : 'summary.pair', {
        more,
        less,
        ratio: figureText(language, ratio, ''),
        ...(expected === null
          ? {}
          : { expected: decimalText(expected, decimalsFor(ratio.u), languagePack(language).decimal) }),
      });
  if (read === 0) return said;
  return `${said} ${sentence(language, read < FEW ? 'summary.pair.few-groups' : 'summary.pair.groups', {
    groups: read,
    more: groups.less,
    less: groups.more,
    same: groups.same,
    percent: percent(groups.probability),
  })}`;
}

/** Fewer groups than this show nothing that chance would not: of two, both agree by chance every second time. */
const FEW = 3;

/** What one table felt, from the easiest. */
export function feltText(language: Language, felt: FeltOrder): string {
  const { decimal } = languagePack(language);
  const { pair, agreement, expected, setups, groups } = felt;
  const [first, second] = setups;
  const agreed =
    pair !== null && first !== undefined && second !== undefined && groups > 0
      ? sentence(language, groups < FEW ? 'summary.felt.few' : 'summary.felt.pair', {
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
  ].join(' ');
}
