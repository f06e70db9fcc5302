import type { SetupSheet, TableSheet } from '../../pages/sheet.ts';
import type { Language } from '../../sentences/language.ts';
import { sentence } from '../../sentences/sentence.ts';
import type { Block } from '../block.ts';
import type { Say } from '../say.ts';
import { bestHelp, geometryText, sumText } from './easier.ts';
import { expectedOf, expectedWithUnit, plainFirst, raised, setupsWithTable, timesText } from './figures.ts';
import { type Accounted, type Accounts, accountsOf, accountTable, productText } from './work-of-setups.ts';

/** Questions for the end of the period, each with a model answer in this kit's numbers. */
export function discussion(tables: readonly TableSheet[], language: Language, say: Say): readonly Block[] {
  const accounts = accountsOf(tables, language);
  return [
    { block: 'heading', level: 2, text: say('guide.talk') },
    { block: 'text', text: say('guide.talk.about') },
    ...answers(accounts, tables, language, say).flatMap(({ question, answer }): readonly Block[] => [
      {
        block: 'together',
        blocks: [
          { block: 'text', text: question, tone: 'strong' },
          { block: 'text', text: answer },
        ],
      },
    ]),
    ...(accounts.rows.length === 0
      ? []
      : [
          { block: 'heading' as const, level: 3 as const, text: say('guide.work') },
          accountTable(accounts, say),
          { block: 'text' as const, text: say('guide.work.note'), tone: 'small' as const },
        ]),
  ];
}

interface Answered {
  readonly question: string;
  readonly answer: string;
}

function answers(
  { rows, text }: Accounts,
  tables: readonly TableSheet[],
  language: Language,
  say: Say,
): readonly Answered[] {
  const ask = (name: string, facts: Parameters<Say>[1] | null): readonly Answered[] =>
    facts === null
      ? []
      : [{ question: say(`guide.talk.${name}`), answer: say(`guide.talk.${name}.answer`, facts) }];
  // What can't be told from a graduation is no answer for a class.
  const lossy = rows
    .filter(({ isTold }) => isTold)
    .sort((a, b) => plainFirst(a.setup, b.setup) || share(b) - share(a))[0];
  const best = bestHelp(
    setupsWithTable(tables).map(({ setup }) => setup),
    language,
  );
  const pair = clearestPair(tables);
  const why = say('key.why');
  const key = say('key.title');
  return [
    ...ask(
      'saves-work',
      lossy === undefined || lossy.load === null
        ? null
        : {
            setup: lossy.setup.mark,
            given: productText(lossy.pull, lossy.way, text(lossy.given), say),
            others:
              lossy.others === 0 ? '' : say('guide.talk.saves-work.others', { others: text(lossy.others) }),
            load: productText(lossy.load.weight, lossy.load.rise, text(lossy.out), say),
            raised: text(lossy.raised),
            lost: text(lossy.rest),
          },
    ),
    ...ask(
      'then-what',
      best === null
        ? null
        : {
            setup: best.setup.mark,
            sum: sumText(best.times, say),
            travel: timesText(language, best.travel),
            geometry: geometryText(best.setup, language, say),
          },
    ),
    ...ask(
      'where-lost',
      lossy === undefined || lossy.mostLost === null
        ? null
        : {
            setup: lossy.setup.mark,
            lost: text(lossy.rest),
            cause: sentence(language, lossy.mostLost),
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
    ...ask('why-not-book', { key, why }),
    ...ask('why-differ', {}),
    ...ask('which-else', {}),
  ];
}

/** Share of what was given that is left over. */
const share = ({ given, others, rest }: Accounted): number => rest / (given + others);

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
