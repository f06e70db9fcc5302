/** Spanish messages about numbers and their units. */
export const quantityDiagnostics = {
  'quantity.empty': {
    what: 'falta un número',
    here: 'aquí no hay nada escrito',
    why: 'la palabra de delante pide uno',
    help: 'escribe el número, o quita la palabra',
  },
  'quantity.not-a-number': {
    what: 'esto no es un número',
    here: '[se esperaba un número, no "{written}"|se esperaba un número]',
    why: 'una magnitud es un número con una unidad, como "300 g" o "14.2 cm ± 0.1 cm"',
    help: 'escribe el número en cifras y su unidad detrás',
  },
  'quantity.no-unit': {
    what: 'un número sin su unidad',
    here: '¿"{written}" de qué?',
    why: 'los archivos se escriben en centímetros y pulgadas, en gramos y newtons, y nadie puede adivinarlo',
    help: 'escribe detrás la unidad: {units}',
  },
  'quantity.unknown-unit': {
    what: 'una unidad desconocida',
    here: 'nada se mide en "{written}"',
    why: 'las mayúsculas y minúsculas cuentan: mN es un milinewton',
    help: '[escribe "{nearest}"|aquí se conocen: {units}]',
  },
  'quantity.wrong-dimension': {
    what: 'una unidad de otra cosa',
    here: '"{written}" es una medida de {is@word}',
    why: 'en este lugar va: {wanted@word}',
    help: 'aquí se conocen: {units}',
  },
  'quantity.mass-for-force': {
    what: 'una masa donde hace falta una fuerza',
    here: '"{written}" es una masa',
    why: 'un dinamómetro marcado en gramos también mide una fuerza, la misma en todas partes',
    help: 'escribe "{asForce}" si el dinamómetro está marcado así, o {asNewtons}',
  },
  'quantity.force-for-mass': {
    what: 'una fuerza donde hace falta una masa',
    here: '"{written}" es una fuerza',
    why: 'una balanza indica una masa; lo que pesa depende del lugar',
    help: 'escribe la masa: unos {asMass} con la gravedad normal',
  },
  'quantity.decimal-comma': {
    what: 'una coma decimal en un archivo con puntos decimales',
    here: '"{written}" tiene una coma',
    why: 'este archivo escribe sus décimas tras un punto[; la coma también podría indicar miles: {thousands}|]',
    help: '[escribe "{instead}"|escríbelo con punto], o pon "decimal: comma" al principio del archivo',
  },
  'quantity.decimal-point': {
    what: 'un punto decimal en un archivo con comas decimales',
    here: '"{written}" tiene un punto',
    why: 'este archivo dice "decimal: comma"[; el punto también podría indicar miles: {thousands}|]',
    help: '[escribe "{instead}"|escríbelo con coma]',
  },
  'quantity.empty-range': {
    what: 'un intervalo con los extremos al revés',
    here: '"{written}" va hacia abajo',
    why: 'un intervalo va del valor menor al mayor',
    help: 'escribe "{instead}"',
  },
  'quantity.hyphen-range': {
    what: 'un intervalo con guion',
    here: '¿"{written}" es un intervalo o una resta?',
    why: 'un guion también es un signo menos',
    help: 'escribe "{instead}" para "en cualquier punto entre los dos"',
  },
  'quantity.negative-uncertainty': {
    what: 'un margen menor que nada',
    here: '"{written}" no puede ir detrás de ±',
    why: 'el margen dice cuánto puede desviarse el valor hacia un lado u otro',
    help: 'escríbelo sin el signo menos',
  },
  'quantity.ambiguous-percent': {
    what: '¿por ciento de qué?',
    here: '"{written}" se puede leer de dos maneras',
    why: 'en una razón sin unidad, el por ciento puede ser una parte del valor o puntos',
    help: 'escribe el margen como número: "0.30 ± 0.03"',
  },
  'quantity.left-over': {
    what: 'sobra algo detrás de la magnitud',
    here: 'no se esperaba "{written}"',
    why: 'en un lugar va una sola magnitud',
    help: 'bórralo, o ponlo en un comentario tras " # "',
  },
  'quantity.too-large': {
    what: 'un número fuera de toda medida',
    here: '"{written}" es más de lo que se puede calcular',
    why: 'ningún kit tiene una pieza de ese tamaño',
    help: 'cuenta otra vez sus cifras',
  },
} as const;
