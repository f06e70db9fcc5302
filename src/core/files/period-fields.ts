import type { Fields } from '../description/fields.ts';

const duration = (meaning: string, example: string, least: 'above nothing' | 'nothing'): Fields[string] => ({
  type: 'quantity',
  dimensions: ['time'],
  ...(least === 'nothing' ? { least: 0 } : { above: 0 }),
  meaning,
  example,
});

/** What an activity says of the time around its tables. */
export const activityPeriodFields: Fields = {
  introduction: duration('activity.field.introduction', '5 min', 'nothing'),
  'talk at the end': duration('activity.field.talk-at-the-end', '10 min', 'nothing'),
  walk: duration('activity.field.walk', '30 s', 'nothing'),
};

/** What a table says of its place in the period. */
export const tablePeriodFields: Fields = {
  takes: duration('activity.field.takes', '6 min ± 2 min', 'above nothing'),
  reset: duration('activity.field.reset', '1 min', 'nothing'),
  'needs an adult': { type: 'yes-no', meaning: 'activity.field.needs-an-adult', example: 'yes' },
  after: { type: 'marks', meaning: 'activity.field.after', example: '1' },
  'may be left out': { type: 'yes-no', meaning: 'activity.field.may-be-left-out', example: 'yes' },
};

/** How groups move on, as it is said to a class. */
export const MOVES = ['on a signal', 'as tables free up'] as const;

/** What a visit says of its period, beside how long it is. */
export const visitPeriodFields: Fields = {
  starts: { type: 'text', meaning: 'visit.field.starts', example: '09:15' },
  move: { type: 'choice', of: MOVES, meaning: 'visit.field.move', example: 'on a signal' },
  'group size': { type: 'count', least: 1, most: 100, meaning: 'visit.field.group-size', example: '4' },
};

/** How many of a table there are. */
export const copiesField = {
  type: 'count',
  least: 1,
  most: 20,
  meaning: 'visit.field.copies-of',
  example: '2',
} as const satisfies Fields[string];

/** A table that is closed for some of the time. */
export const closedFields: Fields = {
  table: { type: 'text', required: true, meaning: 'visit.field.closed-table', example: '4' },
  from: { type: 'text', meaning: 'visit.field.closed-from', example: '09:30' },
  until: { type: 'text', meaning: 'visit.field.closed-until', example: '09:45' },
};

/** Somebody who may stand at a table. */
export const adultFields: Fields = {
  adult: { type: 'text', required: true, meaning: 'visit.field.adult', example: 'teacher' },
  at: { type: 'marks', meaning: 'visit.field.adult-at', example: '5, 6' },
};

export const breakFields: Fields = {
  at: { type: 'text', required: true, meaning: 'visit.field.break-at', example: '09:40' },
  lasts: { ...duration('visit.field.break-lasts', '10 min', 'above nothing'), required: true },
};

/** What somebody wants of the plan and can give up. */
export const wishFields: Fields = {
  class: { type: 'text', meaning: 'visit.field.wish-class', example: '5a' },
  group: { type: 'marks', meaning: 'visit.field.wish-group', example: 'A, B' },
  first: { type: 'text', meaning: 'visit.field.wish-first', example: '1' },
  last: { type: 'text', meaning: 'visit.field.wish-last', example: '7' },
  'must do': { type: 'marks', meaning: 'visit.field.wish-must-do', example: '3' },
  skips: { type: 'marks', meaning: 'visit.field.wish-skips', example: '6' },
  at: { type: 'text', meaning: 'visit.field.wish-at', example: '3' },
  time: { type: 'text', meaning: 'visit.field.wish-time', example: '09:40' },
  table: { type: 'text', meaning: 'visit.field.wish-table', example: '7' },
  after: { type: 'marks', meaning: 'visit.field.wish-after', example: '2' },
  'comes at': { type: 'text', meaning: 'visit.field.wish-comes-at', example: '09:25' },
  'away from': { type: 'text', meaning: 'visit.field.wish-away-from', example: '09:50' },
  'back at': { type: 'text', meaning: 'visit.field.wish-back-at', example: '10:00' },
};

/** One of several classes that come on one day. What it doesn't say holds as the visit says it. */
export const classFields: Fields = {
  class: { type: 'text', required: true, meaning: 'visit.field.class', example: '5a' },
  starts: { type: 'text', required: true, meaning: 'visit.field.class-starts', example: '10:20' },
  period: duration('visit.field.class-period', '50 min', 'above nothing'),
  pupils: { type: 'count', least: 1, most: 1000, meaning: 'visit.field.class-pupils', example: '24' },
  groups: { type: 'count', least: 1, most: 100, meaning: 'visit.field.class-groups', example: '6' },
};
