/** Spanish around the list of usual mistakes of a setup. */
export const mistakes = {
  'mistakes.title': 'Errores habituales en {setup}',
  'mistakes.good': 'bien es {range}',
  'mistakes.none': 'aquí no se lee nada que un error pueda cambiar',
  'mistakes.written': 'se escribiría',
  'mistakes.often': 'con qué frecuencia',
  'mistakes.again': 'se repite',
  'mistakes.what': 'qué pasó',
  'mistakes.persists.group': 'con el mismo grupo',
  'mistakes.persists.station': 'con el grupo siguiente',
  'mistakes.persists.reading': 'no',
  'mistakes.at-the-stop': 'en el tope',
  'mistakes.note':
    'La frecuencia es un supuesto: práctica común, sin fuente. Las cifras cambiadas de lugar y las marcas contadas por la mitad dependen de lo escrito y se buscan con la lectura.',
} as const;
