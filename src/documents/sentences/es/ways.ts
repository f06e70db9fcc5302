/** The four ways of reading in Spanish, how a scale hangs, and what is watched. */
export const ways = {
  'way.raise': 'subiendo despacio',
  'way.lower': 'volviendo poco a poco',
  'way.held': 'sosteniendo quieto',
  'way.start': 'el máximo justo antes de que se mueva',
  'way.raise.instruction': 'Lee mientras se mueve, sin pausa y sin tirones.',
  'way.lower.instruction': 'Lee mientras vuelve, sin pausa y sin tirones.',
  'way.held.instruction': 'Sostenlo quieto. Espera a que pare el indicador. Luego lee.',
  'way.start.instruction': 'Tira cada vez más. Lee el valor más alto justo antes de que se mueva.',
  'way.raise.why': 'Al subir, el rozamiento trabaja contra la mano: este es el esfuerzo constante más alto.',
  'way.lower.why': 'Al volver, el rozamiento ayuda a la mano: este es el esfuerzo constante más bajo.',
  'way.held.why':
    'Al sostener quieto, el rozamiento va hacia un lado u otro: sirve cualquier esfuerzo entre el límite inferior y el superior, y cada grupo encuentra otro.',
  'way.start.why': 'Arrancar cuesta un poco más que seguir: el indicador salta hacia arriba y vuelve a caer.',
  'hangs.hook down': 'con el gancho abajo',
  'hangs.level': 'en horizontal',
  'hangs.slope': 'a lo largo de la pendiente',
  'hangs.along the slope': 'a lo largo de la pendiente',
  'hangs.upside down': 'invertido',
  'hangs.angle': 'con el gancho a {angle} de la vertical hacia abajo',
  'hangs.hook down.instruction': 'Sujeta el dinamómetro por la anilla, con el gancho abajo.',
  'hangs.level.instruction': 'Sujeta el dinamómetro en horizontal.',
  'hangs.along the slope.instruction': 'Sujeta el dinamómetro a lo largo de la pendiente.',
  'hangs.upside down.instruction':
    'Dale la vuelta al dinamómetro. El gancho va arriba y la anilla en tu mano.',
  'hangs.angle.instruction': 'Sujeta el dinamómetro con el gancho a {angle} de la vertical hacia abajo.',
  'zeroed.angle.instruction':
    'Pon el indicador en 0 con el gancho a {angle} de la vertical hacia abajo. Después no toques el 0.',
  'zeroed.in place.instruction': 'Pon el indicador en 0 así, sin nada en el gancho.',
  'zeroed.hook down.instruction':
    'Pon el indicador en 0 con el gancho colgando hacia abajo. Después no toques el 0.',
  'zeroed.level.instruction':
    'Pon el indicador en 0 con el dinamómetro en horizontal. Después no toques el 0.',
  'zeroed.along the slope.instruction':
    'Pon el indicador en 0 con el dinamómetro a lo largo de la pendiente. Después no toques el 0.',
  'zeroed.upside down.instruction':
    'Pon el indicador en 0 con el dinamómetro invertido. Después no toques el 0.',
  'watched.pull': 'esfuerzo',
  'watched.turns': 'vueltas',
  'watched.travel': 'recorrido',
  'watched.ease': 'lo fácil que fue',
  'watched.turns.instruction': 'Escribe las vueltas, también los cuartos de vuelta.',
  'watched.travel.instruction': 'Mide con la regla cuánto se movió la cara.',
  'watched.ease.instruction': 'Siente cuánto cuesta. Di cuál fue el más fácil hasta ahora.',
} as const;
