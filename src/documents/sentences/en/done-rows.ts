/** English of a file of what has been done. */
export const doneRows = {
  'done.no-heading': 'no row names the columns group, table and from',
  'done.unknown-group': 'no group has that label',
  'done.unknown-table': 'the activity has no such table',
  'done.no-from': '"from" is blank: when did the group begin there?',
  'done.no-time': 'that is no time within the period: write 09:40, or minutes from the start as 25 min',
  'done.backwards': 'it ends before it begins',
  'done.twice': 'this group has done that table in a row before',
  'done.later': 'it begins after now',
  'done.refused': 'line {line} is not used ({text}): {because}',
} as const;
