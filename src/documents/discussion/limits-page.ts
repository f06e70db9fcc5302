import type { LimitFound } from '../../core/discussion/limits-of-kit.ts';
import { lines, type TalkContent, type TalkWords } from './talk-page.ts';

/** What the kit, or this class's numbers, can't show. */
export function limitsPage(limits: readonly LimitFound[], { say }: TalkWords): TalkContent {
  const told = limits.map(({ limit, setups }) => say(`talk.limits.${limit}`, { setups }));
  return {
    shown: lines(told),
    answer: lines([say('talk.limits.rule')]),
    model: [...told, say('talk.limits.rule')],
  };
}
