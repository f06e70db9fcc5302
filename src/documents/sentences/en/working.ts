/** Headings of the explanation, and words that several machines use in their working. */
export const working = {
  'explain.title': 'Setup {setup}: {machine}, read {way}',
  'explain.working': 'Working',
  'explain.budget': 'What the doubt is made of',
  'explain.budget.contribution': 'contribution',
  'explain.budget.share': 'share',
  'explain.budget.unknown': 'from',
  'explain.budget.origin': 'known how',
  'explain.result': 'Result',
  'explain.assumed': 'Assumed',
  'explain.angles': 'Angles are in radians; every number has six figures.',
  'explain.no-working': 'There is no working to show.',
  'explain.narrows': 'Narrow it',
} as const;
