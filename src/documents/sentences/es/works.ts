/** Spanish around advantage and the work account. */
export const works = {
  'work.heading': 'Ventaja mecánica y trabajo',
  'work.ideal-advantage': 'ventaja ideal',
  'work.actual-advantage': 'ventaja real',
  'work.velocity-ratio': 'relación de velocidades',
  'work.efficiency': 'rendimiento',
  'work.account': 'cuenta del trabajo',
  'work.account-for': 'cuenta del trabajo para {travel} de recorrido del esfuerzo:',
  'work.given': 'dado',
  'work.taken': 'tomado',
  'work.by.hand': 'por la mano',
  'work.by.load': 'por la carga',
  'work.by.falling-scale': 'por el dinamómetro que baja',
  'work.by.raised-scale': 'por el dinamómetro que sube',
} as const;
