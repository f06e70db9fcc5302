import type { Happening } from '../../store/entry.ts';
import type { TeacherKey, TeacherSay } from '../words/teacher-words.ts';

/** Does something, says so, and keeps how to undo it where that can be. */
export type Act = (what: Happening, said: Said, undo?: Undo) => void;

export interface Said {
  readonly key: TeacherKey;
  readonly facts?: Readonly<Record<string, string | number>>;
}

export interface Undo {
  /** `recall`: nothing is its opposite, so the entry itself is taken back. */
  readonly what: Happening | 'recall';
  readonly said: Said;
}

/** What the views of the teacher's page have in common. */
export interface TeacherView {
  readonly say: TeacherSay;
  readonly language: string;
  readonly act: Act;
}

/** The way back where nothing is the opposite of what was done. */
export const recalled = (key: TeacherKey, facts?: Said['facts']): Undo => ({
  what: 'recall',
  said: facts === undefined ? { key } : { key, facts },
});
