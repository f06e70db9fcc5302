/**
 * Spanish for what groups reckon themselves: each reckoning by its name, `try.` for the group and `see.` for the
 * teacher where it is a slip. It is about the computed columns only.
 */
export const reckonings = {
  'reckoning.column.advantage': 'ventaja',
  'reckoning.column.workIn': 'trabajo dado',
  'reckoning.column.workOut': 'trabajo obtenido',
  'reckoning.verdict.as the key': 'como la clave',
  'reckoning.verdict.another way': 'otra cifra, bien calculada',
  'reckoning.verdict.slip': 'mira otra vez el cálculo',
  'reckoning.verdict.not found': 'nada de la lista lo da',
  'reckoning.verdict.unreadable': 'ilegible, guardado como se escribió',
  'reckoning.verdict.not judged': 'sin juzgar',
  'reckoning.right': 'calculado: {column} {written} ({way})',
  'reckoning.slip': 'calculado: {column} {written} ({way}, parece)',
  'reckoning.not-found': 'calculado: {column} {written} (ningún cálculo de la lista lo da)',
  'reckoning.left': 'calculado: {column} {written} ({because})',
  'reckoning.should-be': 'su propia lectura da {should}',
  'reckoning.or': ' o ',
  'reckoning.nothing-to-divide': 'no hay esfuerzo o no hay carga por dividir',
  'reckoning.no-lift': 'el montaje no dice cuánto se sube, así que no hay trabajo que calcular',
  'reckoning.no-travel': 'aquí no se sube nada, así que no se conoce el recorrido de la mano',
  'reckoning.no-figure': 'esto no es una cifra, con unidad de trabajo o sin ella',
  'reckoning.no-reading': 'no hay lectura del grupo con la que calcular',
  'reckoning.load-over-pull': 'la carga dividida por el esfuerzo',
  'reckoning.ideal': 'la máquina sin rozamiento: contada o medida, no leída',
  'reckoning.carriage-counted-in': 'el carro o el bloque contado con la carga',
  'reckoning.carriage-left-out': 'carga por altura, sin el carro o el bloque',
  'reckoning.load-lift': 'carga por altura',
  'reckoning.pull-by-travel': 'esfuerzo por el recorrido de la mano',
  'reckoning.upside-down': 'el esfuerzo dividido por la carga',
  'try.reckoning.upside-down': '¿Qué es mayor, la carga o el esfuerzo? Divídelo por lo otro.',
  'see.reckoning.upside-down':
    'Lo probable: carga y esfuerzo están al revés en la fracción. Pregunta qué dice el número.',
  'reckoning.grams-over-newtons': 'una carga en gramos dividida por un esfuerzo en newtons',
  'try.reckoning.grams-over-newtons': 'Escribe los dos en la misma unidad y divide otra vez.',
  'see.reckoning.grams-over-newtons':
    'Lo probable: se dividieron gramos por newtons. Pide la unidad junto a cada número.',
  'reckoning.kilograms-over-newtons': 'una carga en kilogramos dividida por un esfuerzo en newtons',
  'try.reckoning.kilograms-over-newtons': 'Escribe los dos en la misma unidad y divide otra vez.',
  'see.reckoning.kilograms-over-newtons':
    'Lo probable: se dividieron kilogramos por newtons. Pide la unidad junto a cada número.',
  'reckoning.kilograms-for-newtons': 'kilogramos tomados por newtons',
  'try.reckoning.kilograms-for-newtons': '¿Cuántos newtons pesa la carga? Multiplica otra vez.',
  'see.reckoning.kilograms-for-newtons':
    'Lo probable: se tomó la masa por el peso. Pregunta qué marcaría un dinamómetro con la carga.',
  'reckoning.pull-travel': 'carga por el recorrido de la mano',
  'try.reckoning.pull-travel': '¿Cuánto sube la carga? Multiplica por eso.',
  'see.reckoning.pull-travel':
    'Lo probable: se tomó el recorrido de la mano por el de la carga. Pide medir los dos.',
  'reckoning.pull-for-load': 'esfuerzo por altura',
  'try.reckoning.pull-for-load': '¿Qué fuerza sube esa altura? Multiplica otra vez.',
  'see.reckoning.pull-for-load':
    'Lo probable: se tomó el esfuerzo por la carga. Pregunta qué fuerza va con qué recorrido.',
  'reckoning.load-travel': 'esfuerzo por el recorrido de la carga',
  'try.reckoning.load-travel': '¿Cuánto recorre la mano? Multiplica por eso.',
  'see.reckoning.load-travel':
    'Lo probable: se tomó el recorrido de la carga por el de la mano. Pide medir los dos.',
  'reckoning.load-for-pull': 'carga por el recorrido de la mano',
  'try.reckoning.load-for-pull': '¿Qué fuerza hace la mano? Multiplica otra vez.',
  'see.reckoning.load-for-pull':
    'Lo probable: se tomó la carga por el esfuerzo. Pregunta qué fuerza va con qué recorrido.',
  'reckoning.centimetres-for-metres': 'centímetros tomados por metros',
  'try.reckoning.centimetres-for-metres': 'Escribe el recorrido en metros y multiplica otra vez.',
  'see.reckoning.centimetres-for-metres':
    'Lo probable: el recorrido quedó en centímetros, cien veces más julios. Pregunta por su unidad.',
} as const;
