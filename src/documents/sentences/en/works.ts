/** English around advantage and the work account. */
export const works = {
  'work.heading': 'Advantage and work',
  'work.ideal-advantage': 'ideal advantage',
  'work.actual-advantage': 'actual advantage',
  'work.velocity-ratio': 'velocity ratio',
  'work.efficiency': 'efficiency',
  'work.account': 'work account',
  'work.account-for': 'work account for {travel} of pull:',
  'work.given': 'given',
  'work.taken': 'taken',
  'work.by.hand': 'by the hand',
  'work.by.load': 'by the load',
  'work.by.falling-scale': 'by the scale that falls',
  'work.by.raised-scale': 'by the scale that is raised',
} as const;
