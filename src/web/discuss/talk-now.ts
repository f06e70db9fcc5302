import type { TalkShown } from '../engine/talk-wire.ts';

/** Where the talk is: what wall and notes show at this moment. */
export interface TalkNow {
  readonly talk: TalkShown | null;
  /** Place of the question in the list. */
  readonly at: number;
  /** Whether its answer is uncovered. */
  readonly isOpen: boolean;
}

export const NO_TALK: TalkNow = { talk: null, at: 0, isOpen: false };

/** At another question, its answer covered; past either end nothing moves. */
export function movedTo(now: TalkNow, at: number): TalkNow {
  const last = (now.talk?.questions.length ?? 1) - 1;
  const next = Math.min(Math.max(at, 0), last);
  return next === now.at ? now : { ...now, at: next, isOpen: false };
}

/** The same question of a talk that was made anew; the first one where it is asked no more. */
export function withTalk(now: TalkNow, talk: TalkShown | null): TalkNow {
  const kind = now.talk?.questions[now.at]?.kind;
  const at = talk?.questions.findIndex((each) => each.kind === kind) ?? -1;
  return at === -1 ? { talk, at: 0, isOpen: false } : { ...now, talk, at };
}

/** Where a key leads, by its name; `null` for a key that means nothing here. */
export function afterKey(now: TalkNow, key: string): TalkNow | null {
  switch (key) {
    case 'ArrowRight':
    case 'PageDown':
      return movedTo(now, now.at + 1);
    case 'ArrowLeft':
    case 'PageUp':
      return movedTo(now, now.at - 1);
    case 'Home':
      return movedTo(now, 0);
    case 'End':
      return movedTo(now, Number.POSITIVE_INFINITY);
    default:
      return null;
  }
}
