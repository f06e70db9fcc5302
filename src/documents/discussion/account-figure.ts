import { isNotDefined } from '../../core/description/not-defined.ts';
import type { WorkAt } from '../../core/discussion/saved-work.ts';
import { decimalsFor, decimalText } from '../../core/quantities/print-quantity.ts';
import { setupNamed } from '../../core/review.ts';
import { workShapes } from '../drawing/work-shapes.ts';
import { languagePack } from '../sentences/language.ts';
import { factText } from '../sentences/sentence.ts';
import { joulesText } from '../text/class-work-text.ts';
import { PICTURE_WIDTH, type TalkPart, type TalkWords } from './talk-page.ts';

/**
 * The work account of one setup as two shapes, from the middle of the class's readings: `asked` asks, without
 * joules and without what is left over.
 */
export function accountFigure(
  { setup, work, pull }: WorkAt,
  { say, language, prepared }: TalkWords,
  on: 'asked' | 'saved' | 'rest',
): readonly TalkPart[] {
  const isCovered = on === 'asked';
  const ratio = setupNamed(prepared, setup)?.prediction.velocityRatio;
  if (ratio === undefined || isNotDefined(ratio) || isNotDefined(pull)) return [];
  const { decimal } = languagePack(language);
  const joules = joulesText(language, work);
  const newtons = (value: number): string => decimalText(value, Math.max(1, decimalsFor(pull.u)), decimal);
  const length = (si: number): string => factText(language, { si, dimension: 'length' });
  const rise = work.travel / ratio;
  const load = work.out.value / rise;
  const helped = (work.helped?.value ?? 0) / work.travel;
  const given = work.pulled.value + (work.helped?.value ?? 0);
  const facts = {
    setup,
    load: newtons(load),
    rise: length(rise),
    pull: newtons(pull.value + helped),
    travel: length(work.travel),
    out: joules(work.out.value),
    given: joules(given),
    rest: joules(work.rest),
  };
  const name = `talk account ${setup} ${on}`;
  const area = (text: string): string => (isCovered ? '' : say('talk.saved.joules', { joules: text }));
  const svg = workShapes({
    out: {
      heading: say('talk.saved.out'),
      force: load,
      way: rise,
      forceText: say('talk.saved.force', { force: facts.load }),
      wayText: facts.rise,
      areaText: area(facts.out),
    },
    given: {
      heading: say(work.helped === null ? 'talk.saved.given' : 'talk.saved.given.helped'),
      force: pull.value + helped,
      way: work.travel,
      forceText: say('talk.saved.force', { force: facts.pull }),
      wayText: facts.travel,
      areaText: area(facts.given),
    },
    between: { from: pull.from + helped, to: pull.to + helped },
    needed:
      isCovered || work.rest <= 0
        ? null
        : { force: work.out.value / work.travel, text: say('talk.saved.rest', { joules: facts.rest }) },
    betweenText: say('talk.saved.between'),
    name,
    title: say('talk.saved.account', { setup }),
    description: say(isCovered ? 'talk.saved.asked' : 'talk.saved.described', facts),
    width: PICTURE_WIDTH,
  });
  return [{ part: 'figure', caption: say('talk.saved.account', { setup }), svg }];
}
