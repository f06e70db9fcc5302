/** English of a file of what has been done. */
export const doneRows = {
  'done.no-heading': 'no row names the columns group, table and from',
  'done.unknown-group': 'no group has that label',
  'done.unknown-table': 'the activity has no such table',
  'done.no-from': '"from" is blank: when did the group begin there?',
  'done.no-time': 'that is no time within the period: write 09:40, or minutes from the start as 25 min',
  'done.backwards': 'it ends before it begins',
  'done.unknown-class': 'the visit has no such class',
  'done.no-copy': 'there are not that many of this table',
  'done.twice': 'this group has done that table already, by line {other}',
  'done.two-tables': 'this group is at another table at that time, by line {other}',
  'done.taken': 'another group is at that table at that time, by line {other}',
  'done.later': 'it begins after now',
  'done.refused': 'line {line} is not used ({text}): {because}',
  'done.unreadable':
    '{file}, line 1: {because}. Without them nothing is known of what has been done, so nothing is planned. Write a first row as group,table,from,to, as the plan has it with --csv.',
  'done.put-right':
    '{file}: put these lines right ({lines}) and plan again; what is planned now leaves them out.',
} as const;
