import { expect, test } from 'vitest';
import type { QuestionShown, TalkShown } from '../engine/talk-wire.ts';
import { afterKey, movedTo, NO_TALK, type TalkNow, withTalk } from './talk-now.ts';

const talkOf = (...kinds: string[]): TalkShown => ({
  title: '',
  about: '',
  facts: [],
  how: [],
  leftOut: [],
  answer: '',
  questions: kinds.map(
    (kind): QuestionShown => ({
      kind,
      number: '',
      count: '',
      ask: '',
      task: '',
      shown: [],
      answer: [],
      notes: [],
    }),
  ),
  sheets: { wall: '', notes: '' },
});
const at = (place: number, isOpen = false): TalkNow => ({ talk: talkOf('a', 'b', 'c'), at: place, isOpen });

test('another question begins with its answer covered, and past either end nothing moves', () => {
  expect(movedTo(at(0, true), 1)).toMatchObject({ at: 1, isOpen: false });
  expect(movedTo(at(2, true), 3)).toMatchObject({ at: 2, isOpen: true });
  expect(movedTo(at(0, true), -1)).toMatchObject({ at: 0, isOpen: true });
  expect(movedTo(NO_TALK, 4)).toEqual(NO_TALK);
});

test('keys lead on, back, and to both ends; other keys mean nothing', () => {
  expect(
    ['ArrowRight', 'PageDown', 'ArrowLeft', 'PageUp', 'Home', 'End'].map((key) => afterKey(at(1), key)?.at),
  ).toEqual([2, 2, 0, 0, 0, 2]);
  expect(afterKey(at(1), 'x')).toBeNull();
});

test('a talk made anew stays at its question, answer and all; at the first where that is asked no more', () => {
  expect(withTalk(at(2, true), talkOf('c', 'a'))).toMatchObject({ at: 0, isOpen: true });
  expect(withTalk(at(1, true), talkOf('a', 'c'))).toMatchObject({ at: 0, isOpen: false });
  expect(withTalk(at(1), null)).toEqual(NO_TALK);
});
