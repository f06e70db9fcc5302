/** English about what a readings file says, where that is not as plain as a number. */
export const readingsIn = {
  'reading.bound': 'this says what it is not, and no number: write the mark nearest to the pointer',
  'reading.unclear-figures':
    'these figures may be one number or several: write one number, or each with a semicolon behind it',
  'reading.percent': 'a percentage is no reading: write what the instrument shows',
  'reading.date': 'a spreadsheet made a date or a time of it: write again what the group wrote, as text',
  'reading.spreadsheet-error': 'a spreadsheet could not work this cell out: write again what the group wrote',
  'reading.formula': 'this is a formula and no reading: write what the group wrote',
  'reading.mixed-units': 'several readings in several units: write them all in one unit',
  'reading.two-meanings': 'may be {used} or {otherwise}: taken as {used}',
  'reading.misspelt-digit': 'letters stand among the digits: taken as {read}',
  'reading.remark': 'written beside it: {remark}',
  'reading.partly-unread': 'not read among them: {written}',
  'review.hedged': 'the group was not sure',
  'review.range': 'from - to, {middle} ± {half}: the middle is judged',
  'review.repeats': '{count} readings: the middle one, {middle}, is judged',
  'review.notes': 'How the file was read:',
  'readings.column-a-setup':
    'It has one column a setup, {columns} of them: where a group left one blank, nothing was read.',
  'readings.column-a-group':
    'It has one column a group, {columns} of them: where one is blank, nothing was read.',
  'readings.guessed-columns':
    'No heading was understood. By what stands in them, column {setup} is the setup, {reading} the reading and {group} the group. Name them in a first row: group, setup, reading, note.',
  'readings.above-heading': 'above the heading, and no reading: {text}',
  'readings.heading-again': 'the heading once more: {text}',
  'readings.unused-columns': 'Columns that are kept and not used: {names}.',
  'readings.no-group':
    'no group is named here, and group {above} above. If the cell was merged with that one, write {above} here too.',
  'readings.same-again':
    'group {group} at {setup} once more, just as on line {line}: both count. If it is a copy, take one out.',
  'readings.another':
    'group {group} has another reading at {setup} on line {line}: both count. If this one puts that one right, take that one out.',
  'readings.empty-row': 'a row without a reading: {text}',
} as const;
