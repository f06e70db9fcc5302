/** How hard the cards are to read: columns, limits and verdicts in the terminal. */
export const readingLevels = {
  'reading-level.title': 'How hard the cards are to read: {activity}',
  'reading-level.limit.grade':
    'Readers from age {age}: grade {grade} at most (Flesch and Kincaid, 1975); {words} words a step at most.',
  'reading-level.limit.score':
    'Readers from age {age}: a score of {score} at least (Fernández Huerta, 1959); {words} words a step at most.',
  'reading-level.age-assumed': 'The activity says no age: {age} is assumed.',
  'reading-level.figures':
    'A number, its unit or a mark is a word of its sentence, as long as the average of the others.',
  'reading-level.column.card': 'Table',
  'reading-level.column.sentences': 'sentences',
  'reading-level.column.words': 'words',
  'reading-level.column.figures': 'figures',
  'reading-level.column.syllables': 'syllables',
  'reading-level.column.longest-step': 'longest step',
  'reading-level.column.grade': 'grade',
  'reading-level.column.score': 'score',
  'reading-level.column.perspicuity': 'perspicuity',
  'reading-level.column.limit': 'limit',
  'reading-level.verdict.easy enough': 'easy enough',
  'reading-level.verdict.too hard': 'too hard',
  'reading-level.verdict.a step is too long': 'a step is too long',
  'reading-level.verdict.too hard, and a step is too long': 'too hard, and a step is too long',
  'reading-level.hardest': 'Hardest sentences',
  'reading-level.sentence': '{words} words, {syllables} syllables a word: {text}',
  'reading-level.no-words': 'there are no words to count',
} as const;
