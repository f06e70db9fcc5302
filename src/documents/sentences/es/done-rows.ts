/** Spanish of a file of what has been done. */
export const doneRows = {
  'done.no-heading': 'ninguna fila nombra las columnas grupo, mesa y de',
  'done.unknown-group': 'ningún grupo tiene esa etiqueta',
  'done.unknown-table': 'la actividad no tiene esa mesa',
  'done.no-from': '"from" está en blanco: ¿cuándo empezó ahí el grupo?',
  'done.no-time': 'eso no es un momento de la clase: escribe 09:40, o minutos desde el principio como 25 min',
  'done.backwards': 'termina antes de empezar',
  'done.unknown-class': 'la visita no tiene esa clase',
  'done.no-copy': 'no hay tantas copias de esa mesa',
  'done.twice': 'este grupo ya hizo esa mesa, según la línea {other}',
  'done.two-tables': 'este grupo está en otra mesa a esa hora, según la línea {other}',
  'done.taken': 'otro grupo está en esa mesa a esa hora, según la línea {other}',
  'done.later': 'empieza después de ahora',
  'done.refused': 'la línea {line} no se usa ({text}): {because}',
  'done.unreadable':
    '{file}, línea 1: {because}. Sin ellas no se sabe qué está hecho y no se planea nada. Escribe una primera fila como grupo,mesa,de,a, como la tiene el plan con --csv.',
  'done.put-right': '{file}: corrige estas líneas ({lines}) y planea de nuevo; este plan no las cuenta.',
} as const;
