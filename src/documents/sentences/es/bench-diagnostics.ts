/** Spanish messages about the bench book of a kit. */
export const benchDiagnostics = {
  'bench-not-begun': {
    what: 'un libro de banco que nadie ha empezado',
    here: 'en "{book}" no hay todavía ninguna línea',
    why: 'sin lecturas de banco la clave sigue solo el archivo del kit',
    help: 'nada, o añade la primera lectura, en la página para preparar o con "handspike bench --setup ... --reading ... --by ..."; ¿está bien el nombre del archivo?',
  },
  'bench-no-columns': {
    what: 'esto no es un libro de banco',
    here: 'falta una columna para: {lacking}',
    why: 'cada línea dice qué día se leyó qué, y de qué kit',
    help: 'empieza el archivo con una línea de nombres de columna: {known}',
  },
  'bench-row': {
    what: 'una línea que no se puede separar',
    here: 'más celdas que columnas, o una comilla sin cerrar',
    why: 'una línea del libro de banco tiene una celda por columna',
    help: 'pon entre comillas lo que lleve una coma ("2,2 N") y cierra todas las comillas',
  },
  'bench-other-kit': {
    what: 'una línea sobre otro kit',
    here: 'esto trata de "{written}", y el archivo del kit, de "{serial}"',
    why: 'no hay dos kits iguales del todo, y cada uno tiene su propio libro',
    help: 'lleva la línea al libro de ese kit, o sustitúyela por una línea nueva con la serie correcta',
  },
  'bench-replaces': {
    what: 'no sustituye a ninguna línea',
    here: '[la línea {written} ya está sustituida por la línea {by}|arriba no hay ninguna línea "{written}" que se pueda sustituir]',
    why: 'una corrección es una línea nueva que nombra el número de la que sustituye; las dos se quedan',
    help: 'escribe el número de línea de una lectura anterior, o deja "replaces" en blanco',
  },
  'bench-unknown-what': {
    what: '¿qué se leyó?',
    here: '"{written}" no es aquí ni montaje, ni dinamómetro, ni pieza',
    why: 'una lectura de banco es de un montaje ("L1", "L1 lower"), de un dinamómetro ("amber with W500", "amber turned over") o de una medida de una pieza ("oar mass")',
    help: '[escribe "{nearest}"|los montajes son {known}], o nombra en "activity" el archivo al que pertenece',
  },
  'bench-not-a-reading': {
    what: 'esto no es una lectura',
    here: '"{written}" no es un número con una unidad que convenga',
    why: 'un dinamómetro tiene newtons junto a gramos, así que un número solo podría ser cualquiera de los dos',
    help: 'escribe lo que marcó el instrumento, con su unidad, como "{example}"',
  },
  'bench-no-figure': {
    what: 'ahí nada se lee como una sola cifra',
    here: '"{written}" no tiene una sola cifra',
    why: 'solo una cifra dice algo del aparato; una franja, un orden o un indicador en el tope no lo dicen',
    help: 'toma otro montaje, o léelo con "raise" o "lower"',
  },
  'bench-other-parts': {
    what: 'leído con otras piezas que las de ahora',
    here: 'el montaje {setup} tiene {today}, no {parts}',
    why: 'una lectura habla de las piezas con las que se tomó; esta no se usa',
    help: 'nada, si ahora deben estar ahí otras piezas; si no, repártelas en el archivo de la visita',
  },
  'bench-far': {
    what: 'una lectura de banco lejos de lo que dice el archivo del kit',
    here: 'marca {reading}; podría ser de {from} a {to}[; las líneas {others} se desvían igual|]',
    why: '[las líneas {others} coinciden con ella: es más probable que fallen los márgenes del archivo del kit que las lecturas|es un descuido, o una pieza no es lo que dice el archivo del kit]; no se usa',
    help: '[ensancha el margen en el archivo del kit, o escribe una línea nueva que sustituya a cada una, con "yes" en "use"; antes mira otra vez la línea {others}|léela otra vez; una línea nueva con "yes" en "use" la toma de todos modos]',
  },
  'bench-at-odds': {
    what: 'una lectura de banco que no cuadra con las demás',
    here: 'marca {reading}; las demás dan {fitted}, a {times} incertidumbres típicas',
    why: 'el archivo del kit solo la admitiría, las demás lecturas no; no se usa',
    help: 'léela otra vez; una línea nueva que la sustituya, con "yes" o "no" en "use", lo decide',
  },
} as const;
