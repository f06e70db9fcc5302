/** What a group will find, in Spanish, where it isn't simply a number; and why a range is what it is. */
export const outcomes = {
  'found.reading': '{expected}',
  'found.band': 'en cualquier punto de {lower} a {upper}',
  'found.on its stop': 'en el tope',
  'found.on its stop.long':
    'en el tope: el indicador tendría que marcar {shows}, por debajo de su tope en {stop}. El valor se pierde; no es cero.',
  'found.off the scale': 'fuera de la escala',
  'found.off the scale.long':
    'fuera de la escala: el esfuerzo marcaría {shows}, y el dinamómetro termina en {range}.',
  'found.off the scale.harms': 'Un esfuerzo así estira su muelle para siempre.',
  'found.moves under the scale': 'se mueve bajo el dinamómetro',
  'found.moves under the scale.long':
    'se mueve bajo el dinamómetro: bastarían {needed}, y el propio peso del dinamómetro tira con {weight}. El dinamómetro marca entonces unos {shows}; un grupo escribirá de {from} a {to}.',
  'found.scale on the other side': 'dinamómetro al otro lado',
  'found.scale on the other side.long':
    'dinamómetro al otro lado: se mueve por sí solo y hay que retenerlo con {force}.',
  'found.ease': 'número {order} de {of}, el más fácil primero',
  'found.ease.short': '{order} de {of}',
  'found.ease.note': 'el más fácil primero',
  'found.not-defined.short': 'no definido',
  'found.not-defined': 'aquí no está definido, porque {because}',
  'found.cut-at-own-weight': 'El rango termina en el propio peso del dinamómetro: no puede tirar con menos.',
  'range.from-to': '{from} a {to}',
  'list.and': 'y',
  'list.and.before-i': 'e',
  'list.nothing': 'nada',
  'not-defined.reason.unknown': 'no se aplica a esta máquina',
  'setup.no-balance': 'la máquina no encuentra equilibrio tal como está montada',
  'setup.no-scale': 'no hay ningún dinamómetro enganchado',
  'setup.nothing-to-count': 'aquí no se cuenta ni se mide nada',
  'setup.no-pull-needed': 'no necesita esfuerzo: se mueve por sí sola',
  'setup.efficiency-only-raising': 'el rendimiento se da al subir la carga',
  'setup.nothing-moves': 'nada se mueve mientras se sostiene',
  'setup.does-not-come-back': 'no vuelve por sí sola',
  'difference.scale-shows-less':
    'el dinamómetro cuelga {hangs} con su cero puesto {zeroed}, así que su propia parte móvil le hace marcar {shift} menos que el esfuerzo',
  'difference.scale-shows-more':
    'el dinamómetro cuelga {hangs} con su cero puesto {zeroed}, así que su propia parte móvil le hace marcar {shift} más que el esfuerzo',
  'setup.no-pull-to-feel': 'no hay esfuerzo que sentir',
  'narrows.advice': 'Mide {what}: el rango bueno se estrecharía de {from}–{to} a {closerFrom}–{closerTo}.',
  'narrows.little': 'Ninguna medida lo estrecharía en una graduación; la mayor duda es {what}.',
  'assumed.remark': '{what}: supuesto ({source})',
  'setup.runs-away': 'se escapa bajo el peso del dinamómetro, así que no hay esfuerzo constante que calcular',
  'setup.held-by-the-scale': 'el propio peso del dinamómetro la retiene, así que nada vuelve',
} as const;
