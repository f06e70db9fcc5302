/** English around the list of usual mistakes of a setup. */
export const mistakes = {
  'mistakes.title': 'Usual mistakes at {setup}',
  'mistakes.good': 'good is {range}',
  'mistakes.none': 'nothing is read here that a mistake could change',
  'mistakes.written': 'would be written',
  'mistakes.often': 'how often',
  'mistakes.again': 'is met again',
  'mistakes.what': 'what happened',
  'mistakes.persists.group': 'with the same group',
  'mistakes.persists.station': 'with the next group',
  'mistakes.persists.reading': 'no',
  'mistakes.at-the-stop': 'on its stop',
  'mistakes.note':
    "How often is an assumption: common practice, no source. Numbers with two digits in each other's place, and marks counted for half their worth, hang on what was written and are looked for with the reading.",
} as const;
