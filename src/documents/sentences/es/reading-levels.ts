/** Spanish around the reading level of the cards. */
export const readingLevels = {
  'reading-level.title': 'Qué difíciles de leer son las tarjetas: {activity}',
  'reading-level.limit.grade':
    'Lectores desde {age} años: grado {grade} como máximo (Flesch y Kincaid, 1975); {words} palabras por paso como máximo.',
  'reading-level.limit.score':
    'Lectores desde {age} años: una puntuación de {score} como mínimo (Fernández Huerta, 1959); {words} palabras por paso como máximo.',
  'reading-level.age-assumed': 'La actividad no dice ninguna edad: se supone {age}.',
  'reading-level.figures':
    'Un número, su unidad o una marca es una palabra de su frase, tan larga como el promedio de las demás.',
  'reading-level.column.card': 'Mesa',
  'reading-level.column.sentences': 'frases',
  'reading-level.column.words': 'palabras',
  'reading-level.column.figures': 'cifras',
  'reading-level.column.syllables': 'sílabas',
  'reading-level.column.longest-step': 'paso más largo',
  'reading-level.column.grade': 'grado',
  'reading-level.column.score': 'puntuación',
  'reading-level.column.perspicuity': 'perspicuidad',
  'reading-level.column.limit': 'límite',
  'reading-level.verdict.easy enough': 'lo bastante fácil',
  'reading-level.verdict.too hard': 'demasiado difícil',
  'reading-level.verdict.a step is too long': 'un paso es demasiado largo',
  'reading-level.verdict.too hard, and a step is too long': 'demasiado difícil, y un paso es demasiado largo',
  'reading-level.hardest': 'Las frases más difíciles',
  'reading-level.sentence': '{words} palabras, {syllables} sílabas por palabra: {text}',
  'reading-level.no-words': 'no hay palabras que contar',
} as const;
