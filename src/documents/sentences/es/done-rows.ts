/** Spanish of a file of what has been done. */
export const doneRows = {
  'done.no-heading': 'ninguna fila nombra las columnas grupo, mesa y de',
  'done.unknown-group': 'ningún grupo tiene esa etiqueta',
  'done.unknown-table': 'la actividad no tiene esa mesa',
  'done.no-from': '"from" está en blanco: ¿cuándo empezó ahí el grupo?',
  'done.no-time': 'eso no es un momento de la clase: escribe 09:40, o minutos desde el principio como 25 min',
  'done.backwards': 'termina antes de empezar',
  'done.twice': 'este grupo ya hizo esa mesa en una fila anterior',
  'done.later': 'empieza después de ahora',
  'done.refused': 'la línea {line} no se usa ({text}): {because}',
} as const;
