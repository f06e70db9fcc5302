import { type BrokenRule, brokenByGroups, brokenByTables, brokenByTimes } from './broken-rules.ts';
import { brokenByWishes } from './broken-wishes.ts';
import type { Rotation } from './rotation.ts';
import type { Timetable } from './timetable.ts';

/**
 * What a timetable breaks of what a rotation asks, read off its times alone: it knows nothing of how the
 * timetable was made. Empty where it keeps everything. A visit that was left out breaks nothing.
 *
 * @example
 * import { exactly } from '../uncertainty/measured.ts';
 * const table = { mark: '1', run: exactly(300), reset: exactly(60), copies: 1, needsAdult: false, mayDo: false, beside: [] };
 * const rotation = { groups: [{ label: 'A', pupils: 4, arrives: 0 }], tables: [table], adults: [], walk: 30, begins: 0, bell: 200,
 *   breaks: [], way: 'free', wishes: [] };
 * const stays = [{ group: 'A', table: '1', copy: 1, from: 0, to: 300, round: null }];
 * checkTimetable(rotation, { way: 'free', stays, rounds: null, waits: [], stands: [], leftOut: [], ends: 300, bound: 300, proof: 'bound' }) // => [{ rule: 'bell', about: 'A 1 0-300' }]
 */
export const checkTimetable = (rotation: Rotation, timetable: Timetable): readonly BrokenRule[] => [
  ...brokenByTimes(rotation, timetable),
  ...brokenByGroups(rotation, timetable),
  ...brokenByTables(rotation, timetable),
  ...brokenByWishes(rotation, timetable),
];
