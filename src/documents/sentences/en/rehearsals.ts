/** English around a rehearsal: a class that never was, for the night before. */
export const rehearsals = {
  'rehearsal.title': '{groups} groups that never were, and {mistakes} mistakes among them (seed {seed})',
  'rehearsal.task':
    'Take the answer key. Find the readings that you would look at again, and decide what you would say at the table. Then look at the answers.',
  'rehearsal.some-unseen':
    'A mistake may go on: a habit of a group, or a station as the group before left it.',
  'rehearsal.column.setup': 'setup',
  'rehearsal.column.unit': 'marks',
  'rehearsal.how-to-answer': 'The answers: the same command with --answers.',
  'rehearsal.answers': 'What happened, and what to say',
  'rehearsal.answer': '{n}. {where}: {cause}.',
  'rehearsal.where.station': 'Table {table}, from group {group} on',
  'rehearsal.where': 'Table {table}, group {group}',
  'rehearsal.answer.wrote': 'It shows at {readings}.',
  'rehearsal.answer.say': 'To the group: {text}',
  'rehearsal.answer.see': 'For you: {text}',
  'rehearsal.answer.program': 'The program: {thinks}.',
  'rehearsal.thinks.first.one': 'it names this first',
  'rehearsal.thinks.first': 'it names this first at {of} of {all} readings',
  'rehearsal.thinks.second.one': 'it has it among its first two',
  'rehearsal.thinks.second': 'it has it among its first two at {of} of {all} readings',
  'rehearsal.thinks.other.one': 'it asks to look again and names something else first: {causes}',
  'rehearsal.thinks.other':
    'it asks to look again at {of} of {all} readings and names something else first: {causes}',
  'rehearsal.thinks.not-seen': 'it does not see it: the numbers are what a good reading could be',
  'rehearsal.thinks.station':
    'it says that the station has changed, and judges these groups against it as it stands',
  'rehearsal.sound': 'Sound readings that the program would have looked at again: {readings}.',
  'rehearsal.sound.none': 'No sound reading was looked at again.',
  'rehearsal.fewer': 'Only {count} of {wished} mistakes could be placed: these setups have no room for more.',
  'rehearsal.sheet': 'Rehearsal',
  'rehearsal.sheet.about': 'for adults, the night before: these groups never were',
  'rehearsal.sheet.answers-behind': 'What happened is on the next page. Do not look yet.',
  'rehearsal.sheet.where': 'where and what was written',
  'rehearsal.sheet.happened': 'what happened',
  'rehearsal.sheet.group': 'to the group',
  'rehearsal.sheet.teacher': 'for you: how to see it',
} as const;
