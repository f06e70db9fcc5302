import type { SetupSheet } from '../../pages/sheet.ts';
import type { Language } from '../../sentences/language.ts';
import type { Say } from '../say.ts';
import { definedOr, plainFirst, raised, timesText } from './figures.ts';
import { type PencilTimes, pencilTimes, threeDigits } from './pencil.ts';

/** The setup that helps most, by what a class reads there. */
export interface BestHelp {
  readonly setup: SetupSheet;
  readonly times: PencilTimes;
  /** The schoolbook's, and how many times further the hand moves. */
  readonly ideal: number;
  readonly travel: number;
}

/** The setup with the largest load over pull; `null` where nothing is raised. */
export function bestHelp(setups: readonly SetupSheet[], language: Language): BestHelp | null {
  const [best] = raised(setups)
    .flatMap((setup): readonly BestHelp[] => {
      const times = pencilTimes(language, setup);
      const ideal = definedOr(setup.prediction.idealAdvantage);
      const travel = definedOr(setup.prediction.velocityRatio);
      return times === null || ideal === null || travel === null ? [] : [{ setup, times, ideal, travel }];
    })
    .sort((a, b) => plainFirst(a.setup, b.setup) || b.times.actual.value - a.times.actual.value);
  return best ?? null;
}

/** The sum that a pencil does: shift first where there is one, then load over pull. */
export function sumText(times: PencilTimes, say: Say): string {
  const { shown, shift, pull, load, actual, unit } = times;
  const over = say('guide.sum.over', { load: load.text, pull: pull.text, unit, actual: actual.text });
  if (shift === null) return over;
  const more = shift.value > 0;
  return say(`guide.sum.${more ? 'add' : 'take'}`, {
    shown: shown.text,
    shift: more ? shift.text : shift.text.replace('-', ''),
    pull: pull.text,
    unit,
    over,
  });
}

/** Why the ways of hand and load are not as the schoolbook has them: geometry, with this kit's lengths. */
export function geometryText(setup: SetupSheet, language: Language, say: Say): string {
  const ideal = definedOr(setup.prediction.idealAdvantage);
  const travel = definedOr(setup.prediction.velocityRatio);
  if (ideal === null || travel === null) return '';
  const [book, real] = [timesText(language, ideal), timesText(language, travel)];
  if (book === real) return '';
  const lines = setup.prediction.working();
  const load = lines.find(({ what }) => what === 'windlass.load-arm');
  const hand = lines.find(({ what }) => what === 'windlass.pull-arm' || what === 'windlass.crank-arm');
  const value = (from: typeof load, name: string): number | null =>
    Object.entries(from?.values ?? {}).find(([key]) => key.replace(/_\d+$/, '') === name)?.[1] ?? null;
  const [axle, wheel, line] = [value(load, 'r'), value(hand, 'R'), value(load, 'ta')];
  if (load === undefined || hand === undefined || axle === null || wheel === null || line === null)
    return say('guide.geometry.other', { ideal: book, travel: real });
  const millimetres = (metres: number): string => threeDigits(language, metres * 1000).text;
  return say('guide.geometry.windlass', {
    wheel: millimetres(wheel),
    axle: millimetres(axle),
    line: millimetres(line),
    ideal: timesText(language, wheel / axle),
    hand: millimetres(hand.value),
    load: millimetres(load.value),
    travel: timesText(language, hand.value / load.value),
  });
}
