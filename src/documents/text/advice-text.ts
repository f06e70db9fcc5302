import { MOST_BUILT, type PairAdvice, type SetupAdvice, type TableAdvice } from '../../core/advise.ts';
import { isNotDefined, type NotDefined } from '../../core/description/not-defined.ts';
import { forceFact } from '../../core/diagnostics/facts.ts';
import type { Prepared } from '../../core/prepare.ts';
import type { Alternative, ChangeMade, Trade } from '../../core/setups/alternative.ts';
import type { ChanceToSee, Wanted } from '../../core/setups/chance-to-see.ts';
import { MOST_CHANGES } from '../../core/setups/pair-search.ts';
import type { Trouble } from '../../core/setups/trouble.ts';
import type { Language } from '../sentences/language.ts';
import { sentence } from '../sentences/sentence.ts';
import { wrapped } from './columns.ts';
import { type Outline, type OutlineLine, outlineText } from './outline.ts';
import { notDefinedText, outcomeText } from './prediction-text.ts';

/** A terminal that isn't wider still shows every line whole. */
const WIDTH = 100;

/** How the figures were reckoned: printed once, above the tables. */
export interface AdviceHead {
  readonly wanted: Wanted;
  readonly seed: number;
  readonly copies: number;
}

/** What each pair shows to a class, what can't work, and what would do better, table by table. */
export function adviceText(
  language: Language,
  prepared: Prepared,
  tables: readonly TableAdvice[],
  { wanted, seed, copies }: AdviceHead,
): string {
  return [
    ...wrapped(adviceAbout(language, { wanted, seed, copies }), WIDTH),
    ...adviceOutlines(language, prepared, tables).flatMap((each) => ['', ...outlineText(each, WIDTH)]),
    '',
    ...wrapped(adviceNotSearched(language, copies), WIDTH),
    '',
  ].join('\n');
}

/** What the figures say and how they were reckoned. */
export const adviceAbout = (language: Language, { wanted, seed, copies }: AdviceHead): string =>
  sentence(language, 'advice.head', {
    copies,
    seed,
    ratio: percent(wanted.ratio),
    groups: percent(wanted.groups),
  });

/** What nobody looked at. */
export const adviceNotSearched = (language: Language, copies: number): string =>
  sentence(language, 'advice.not-searched', { copies });

/** A line of the advice; the first line of another way to set it up carries that way, for whoever wants it so. */
export interface AdviceLine extends OutlineLine {
  readonly offers?: Alternative;
}

/** The same, table by table, as it is said. */
export const adviceOutlines = (
  language: Language,
  prepared: Prepared,
  tables: readonly TableAdvice[],
): readonly Outline<AdviceLine>[] => tables.map((table) => tableOutline(language, prepared, table));

function tableOutline(language: Language, prepared: Prepared, table: TableAdvice): Outline<AdviceLine> {
  const { searched } = table;
  const spots = searched.spots.map(({ field, stage, others }) =>
    sentence(language, 'advice.searched.spot', { field: fieldText(language, field, stage), others }),
  );
  return {
    heading: sentence(language, 'key.text.table', { mark: table.table, title: table.title }),
    lines: [
      ...table.setups.flatMap((each) => setupLines(language, prepared, each)),
      ...(table.pairs.length === 0 ? [line(2, sentence(language, 'advice.no-pairs'))] : []),
      ...table.pairs.flatMap((each) => pairLines(language, prepared, each)),
      ...(searched.built === 0
        ? []
        : [
            {
              ...line(
                2,
                `${sentence(language, 'advice.searched', {
                  built: searched.built,
                  most: MOST_CHANGES,
                  spots: spots.join(', '),
                })}${searched.isComplete ? '' : ` ${sentence(language, 'advice.searched.cut', { most: MOST_BUILT })}`}`,
              ),
              tone: 'small' as const,
            },
          ]),
    ],
  };
}

/** What is the matter with a setup, and the nearest that work. */
function setupLines(language: Language, prepared: Prepared, advice: SetupAdvice): readonly AdviceLine[] {
  const { at, troubles, cures, isCuredWithPair, wants } = advice;
  return [
    ...troubles.map((trouble) => line(2, troubleText(language, at, trouble))),
    ...(isCuredWithPair
      ? [line(4, sentence(language, 'advice.see-pair'))]
      : cures.length > 0
        ? [
            line(4, sentence(language, 'advice.works')),
            ...cures.flatMap((cure, n) => alternativeLines(language, prepared, cure, n + 1)),
          ]
        : [line(4, sentence(language, 'advice.nothing-works'))]),
    ...(wants === null
      ? []
      : [
          line(
            4,
            sentence(language, 'advice.nothing-works.scale', {
              graduation: forceFact(wants.graduation),
              range: forceFact(wants.range),
            }),
          ),
        ]),
  ];
}

function troubleText(
  language: Language,
  { setup, prediction }: SetupAdvice['at'],
  { code, facts }: Trouble,
): string {
  const reason = isNotDefined(prediction.outcome) ? notDefinedText(language, prediction.outcome) : '';
  return `! ${sentence(language, code, { setup: setup.mark, reason, ...facts })}`;
}

function pairLines(language: Language, prepared: Prepared, pair: PairAdvice): readonly AdviceLine[] {
  const { first, second, shows, chance, isGood, alternatives } = pair;
  const head =
    shows === null
      ? sentence(language, 'advice.pair', { first, second })
      : sentence(language, 'advice.pair.shows', {
          first,
          second,
          shows: shows.texts[language] ?? shows.text,
        });
  const stands = isNotDefined(chance) ? notDefinedText(language, chance) : chanceText(language, chance);
  return [
    line(2, head),
    line(4, stands),
    ...(isGood ? [line(4, sentence(language, 'advice.good'))] : []),
    ...(alternatives.length > 0
      ? [
          line(4, sentence(language, isNotDefined(chance) ? 'advice.works' : 'advice.better')),
          ...alternatives.flatMap((each, n) =>
            alternativeLines(language, prepared, each, n + 1, pair.alsoWith),
          ),
        ]
      : isGood || isNotDefined(chance)
        ? []
        : [line(4, sentence(language, 'advice.nothing-better'))]),
  ];
}

/** What groups see from one reading each, and how many readings it takes. */
function chanceText(language: Language, chance: ChanceToSee): string {
  const say = (key: string, facts = {}) => sentence(language, `advice.${key}`, facts);
  const { once, unlucky, repeats, wanted, more, less, ratio } = chance;
  const never = [repeats.order, repeats.ratio].some(isNotDefined);
  return [
    say('ratio', { more, less, ratio }),
    say('once', { order: percent(once.order), share: percent(once.ratio) }),
    ...(once.schoolbook === null ? [] : [say('once.schoolbook', { share: percent(once.schoolbook) })]),
    say('unlucky', { order: percent(unlucky.order), share: percent(unlucky.ratio) }),
    repeats.order === 1 && repeats.ratio === 1
      ? say('repeats.enough', { groups: percent(wanted.groups) })
      : say('repeats', {
          groups: percent(wanted.groups),
          order: repeatsText(language, 'order', repeats.order),
          ratio: repeatsText(language, 'ratio', repeats.ratio),
        }),
    ...(never ? [say('apparatus-decides')] : []),
  ].join(' ');
}

const repeatsText = (language: Language, what: string, count: number | NotDefined): string =>
  isNotDefined(count)
    ? sentence(language, `advice.repeats.${what}.never`, count.facts)
    : sentence(language, `advice.repeats.${what}`, { count });

function alternativeLines(
  language: Language,
  prepared: Prepared,
  offers: Alternative,
  number: number,
  alsoWith: PairAdvice['alsoWith'] = [],
): readonly AdviceLine[] {
  const { changes, setups, shows, gains, costs } = offers;
  const trades = (found: readonly Trade[]): string =>
    found.map(({ code, facts }) => sentence(language, code, facts)).join('; ');
  const changed = new Set(changes.flatMap(({ at }) => at));
  const besides: readonly Trade[] = alsoWith
    .filter(({ setup }) => changed.has(setup))
    .map((facts) => ({ code: 'advice.cost.also-with', facts: { ...facts } }));
  const [first = '', ...rest] = changes.map((change) => changeText(language, prepared, change));
  return [
    { ...line(6, `${number}. ${first}`), offers },
    ...rest.map((each) => line(9, each)),
    ...(gains.length === 0 ? [] : [line(9, sentence(language, 'advice.gains', { trades: trades(gains) }))]),
    line(9, sentence(language, 'advice.costs', { trades: trades([...costs, ...besides]) })),
    ...(shows.chance === null ? [] : [line(9, chanceText(language, shows.chance))]),
    ...setups.map(({ setup, prediction }) =>
      line(
        9,
        sentence(language, 'advice.then', { setup: setup.mark, outcome: outcomeText(language, prediction) }),
      ),
    ),
  ];
}

/** What is written for a change, with the decimal mark of the activity that it stands in. */
export const asInFile = ({ activity }: Prepared, { kind, to }: ChangeMade): string =>
  activity?.decimal === 'comma' && kind !== 'part' ? to.replace(/(\d)\.(\d)/g, '$1,$2') : to;

/** The line to write into the files: words of the files are English in every language. */
function changeText(language: Language, prepared: Prepared, change: ChangeMade): string {
  const { at, field, stage, from } = change;
  const facts = { setups: at, field: fieldText(language, field, stage), to: asInFile(prepared, change) };
  return from === null
    ? sentence(language, 'advice.change.new', facts)
    : sentence(language, 'advice.change', { ...facts, from });
}

const fieldText = (language: Language, field: string, stage: number | null): string =>
  stage === null ? field : sentence(language, 'advice.change.field-of-stage', { field, stage });

const percent = (share: number): number => Math.round(1000 * share) / 10;

const line = (indent: number, text: string): OutlineLine => ({ indent, text });
