import type { RestCause, RestFound } from '../../core/discussion/rest-of-work.ts';
import { percent } from '../text/class-figure-text.ts';
import { joulesText } from '../text/class-work-text.ts';
import { accountFigure } from './account-figure.ts';
import { lines, type TalkContent, type TalkWords } from './talk-page.ts';

/** Less than a hundredth of the rest is no part to talk about. */
const TOO_SMALL = 0.01;

/** Where the rest went: the hatched part of the account, then who took it. */
export function restPage({ setups, shown }: RestFound, words: TalkWords): TalkContent {
  const { say, language } = words;
  const at = setups.find(({ setup }) => setup === shown);
  if (at === undefined) return { shown: [], answer: [] };
  const { work } = at;
  const joules = joulesText(language, work);
  const causes = at.causes
    .filter(({ share }) => share > TOO_SMALL)
    .map((each) => say('talk.rest.cause', { cause: say(causeKey(each)), percent: percent(each.share) }));
  const [least] = [...setups].sort((a, b) => a.share - b.share);
  const told = [
    say('talk.rest.answer', {
      setup: shown,
      rest: joules(work.rest),
      given: joules(work.pulled.value + (work.helped?.value ?? 0)),
      percent: percent(at.share),
    }),
    ...(causes.length === 0 ? [] : [say('talk.rest.causes', { causes })]),
    ...(causes.length < 2 ? [] : [say('talk.rest.measures')]),
    say('talk.rest.warmth'),
    ...(least === undefined || least === at
      ? []
      : [say('talk.rest.others', { setup: least.setup, percent: percent(least.share) })]),
  ];
  return { shown: accountFigure(at, words, 'rest'), answer: lines(told), model: told };
}

/** Scale and load are named in general, what else there is by its machine. */
const causeKey = ({ by, cause }: RestCause): string =>
  by === 'falling scale' ? 'work.by.raised-scale' : cause;
