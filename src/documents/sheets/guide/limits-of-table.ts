import type { PreparedTable } from '../../../core/prepare.ts';
import { differenceToSee } from '../../../core/setups/difference.ts';
import type { SetupSheet } from '../../pages/sheet.ts';
import { diagnosticSentence } from '../../sentences/diagnostic-sentence.ts';
import type { Language } from '../../sentences/language.ts';
import { fillIn } from '../../sentences/sentence.ts';
import { unknownName } from '../../sentences/unknown-name.ts';
import { asSentence, capital } from '../../text/key-table.ts';
import { goodRangeOf, outcomeText, rangeText } from '../../text/prediction-text.ts';
import type { Say } from '../say.ts';
import { sumText } from './easier.ts';
import { definedOr, timesText } from './figures.ts';
import { loadOf, pencilTimes, threeDigits } from './pencil.ts';

/** An advantage below this can't be felt against bare hands: the share that a hand can tell apart, see `FEEL`. */
const HARDLY = 1.2;
/** A range wider than this share of its upper end shows a difference and no number: own bound. */
const WIDE = 0.3;

/** What a table of this kit can not show, with the number that says so. Empty where it shows what it ought to. */
export function limitsOfTable(
  table: PreparedTable,
  sheets: readonly SetupSheet[],
  language: Language,
  say: Say,
): readonly string[] {
  const said = new Set<string>();
  const told = table.setups.flatMap(({ setup, prediction }): readonly string[] => {
    const { mark } = setup;
    const found = prediction.diagnostics.map(({ code, facts }) => {
      said.add(`${mark} ${code}`);
      const { what, here } = diagnosticSentence(language, code);
      return say('guide.limit.found', { setup: mark, what, here: fillIn(language, here, facts) });
    });
    const { kind } = prediction.outcome;
    const actual = definedOr(prediction.actualAdvantage);
    const ideal = definedOr(prediction.idealAdvantage);
    const isFelt = prediction.watched === 'pull' || prediction.watched === 'ease';
    const isWeak = isFelt && actual !== null && ideal !== null && ideal > HARDLY && actual < HARDLY;
    return [
      ...found,
      ...(isWeak && !said.has(`${mark} wedge.hands-do-better`)
        ? [
            say(`guide.limit.${actual < 1 ? 'worse' : 'hardly'}`, {
              setup: mark,
              sum: weakSum(
                sheets.find((sheet) => sheet.mark === mark),
                language,
                say,
              ),
              ideal: timesText(language, ideal),
            }),
          ]
        : []),
      ...(kind === 'reading' || kind === 'band' || kind === 'ease' || found.length > 0
        ? []
        : [
            say('guide.limit.outcome', {
              setup: mark,
              outcome: asSentence(outcomeText(language, prediction)),
            }),
          ]),
      ...wideRange(mark, prediction, language, say),
    ];
  });
  const alike = differenceToSee(table.setups).map(({ code, facts }) =>
    say('guide.limit.alike', {
      here: capital(fillIn(language, diagnosticSentence(language, code).here, facts)),
    }),
  );
  const watched = new Set(table.setups.map(({ prediction }) => prediction.watched));
  const general =
    table.setups.length === 0 || watched.has('pull')
      ? []
      : [say(watched.has('ease') ? 'guide.limit.only-ease' : 'guide.limit.only-counted')];
  return [...told, ...alike, ...general];
}

/** Load over pull as a class reckons it; where nothing is read, the side force over the push by the measures. */
function weakSum(setup: SetupSheet | undefined, language: Language, say: Say): string {
  if (setup === undefined) return '';
  const times = pencilTimes(language, setup);
  if (times !== null) return sumText(times, say);
  const force = loadOf(setup);
  const push = setup.prediction.pull?.value ?? 0;
  if (force === null || push <= 0) return '';
  const [side, back] = [threeDigits(language, force), threeDigits(language, push)];
  return say('guide.sum.push', {
    side: side.text,
    push: back.text,
    actual: timesText(language, side.value / back.value),
  });
}

/** A wide range is honest: something about the apparatus is not known, and here is what. */
function wideRange(
  mark: string,
  prediction: PreparedTable['setups'][number]['prediction'],
  language: Language,
  say: Say,
): readonly string[] {
  const good = goodRangeOf(prediction);
  if (good === null || prediction.outcome.kind !== 'reading' || good.to <= 0) return [];
  if ((good.to - good.from) / good.to < WIDE || prediction.narrows === null) return [];
  return [
    say('guide.limit.wide', {
      setup: mark,
      range: rangeText(language, prediction, good),
      what: unknownName(language, prediction.narrows.unknown),
    }),
  ];
}
