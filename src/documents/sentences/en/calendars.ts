/** English of a period in a calendar. */
export const calendars = {
  'calendar.class': 'Class {class}: {what}',
  'calendar.introduction': 'Introduction',
  'calendar.talk': 'Talk at the end',
  'calendar.break': 'Break',
  'calendar.group': 'group {group}',
  'calendar.stay': 'Group {group}: table {table}',
  'calendar.wait': 'Group {group}: while waiting',
  'calendar.setup': 'More to find: setup {setup} at table {table}',
  'calendar.stand': 'Table {table}: {adult} stands here',
} as const;
