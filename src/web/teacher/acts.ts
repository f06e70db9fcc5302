import type { Happening } from '../../store/entry.ts';
import type { Outbox, Whereabouts } from '../../store/outbox.ts';
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
  /** Where what was done last to a reading on this device is; `null` where nothing was. */
  readonly where: (reading: string) => Whereabouts | null;
}

/** What an outbox knows of that. */
export const whereIn =
  ({ items }: Outbox): TeacherView['where'] =>
  (reading) =>
    items.findLast(({ entry: { what } }) => 'of' in what && what.of === reading)?.whereabouts ?? null;

/** The way back where nothing is the opposite of what was done. */
export const recalled = (key: TeacherKey, facts?: Said['facts']): Undo => ({
  what: 'recall',
  said: facts === undefined ? { key } : { key, facts },
});
