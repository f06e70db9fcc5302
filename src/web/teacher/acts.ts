import type { Happening } from '../../store/entry.ts';
import type { TeacherKey, TeacherSay } from '../words/teacher-words.ts';

/** Does something, says so, and keeps how to undo it where that can be. */
export type Act = (what: Happening, said: Said, undo?: Undo) => void;

export interface Said {
  readonly key: TeacherKey;
  readonly facts?: Readonly<Record<string, string | number>>;
}

export interface Undo {
  readonly what: Happening;
  readonly said: Said;
}

/** What the views of the teacher's page have in common. */
export interface TeacherView {
  readonly say: TeacherSay;
  readonly language: string;
  readonly act: Act;
}
