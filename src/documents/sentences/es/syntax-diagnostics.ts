/** Spanish messages about files that can't be read as YAML, or that say something else than they seem to. */
const READ_ALOUD = 'un archivo se lee en voz alta de arriba abajo, y nada en él señala a otra parte';

export const syntaxDiagnostics = {
  'syntax.too-deep': {
    what: 'esto tiene más niveles que ningún archivo nuestro',
    here: 'demasiado hondo de aquí en adelante',
    why: 'kit, actividad y visita necesitan seis niveles de sangría',
    help: 'busca corchetes o llaves que nunca se cierran',
  },
  'syntax.empty-file': {
    what: 'el archivo está vacío',
    here: 'aquí no hay nada escrito',
    why: 'no hay nada que revisar',
    help: 'empieza con una línea como "handspike: kit 1", o parte de un ejemplo',
  },
  'syntax.no-keys': {
    what: 'el archivo no está hecho de claves y valores',
    here: 'se esperaba una clave con dos puntos',
    why: 'la primera línea dice qué clase de archivo es, como "handspike: kit 1"',
    help: 'escribe claves con dos puntos detrás, cada una en su propia línea',
  },
  'syntax.second-document': {
    what: 'en el mismo archivo empieza un segundo documento',
    here: 'todo lo que sigue quedaría sin leer',
    why: 'un archivo es un kit, una actividad o una visita',
    help: 'borra la línea con tres guiones, o pon el resto en otro archivo',
  },
  'syntax.key-twice': {
    what: 'la misma clave dos veces',
    here: 'esta clave ya está más arriba',
    why: 'solo una de las dos podría valer, y quien lee no sabría cuál',
    help: 'borra una de ellas, o cámbiale el nombre si es otra pieza',
  },
  'syntax.tab': {
    what: 'un tabulador al principio de una línea',
    here: 'haz la sangría con espacios',
    why: 'los editores muestran los tabuladores con anchos distintos, y nadie ve qué va con qué',
    help: 'pon dos espacios por cada nivel',
  },
  'syntax.indent': {
    what: 'esta línea tiene otra sangría que sus vecinas',
    here: 'tal como está no pertenece a nada',
    why: 'las líneas que van juntas empiezan en la misma columna',
    help: 'alinéala con las líneas de arriba, con espacios',
  },
  'syntax.not-closed': {
    what: 'algo se abrió y nunca se cerró',
    here: 'se abre aquí y más abajo sigue abierto',
    why: 'unas comillas o un corchete necesitan su pareja',
    help: 'añade las comillas o el corchete de cierre, o quita los dos',
  },
  'syntax.second-colon': {
    what: 'una segunda clave en la misma línea',
    here: 'se esperaba un valor, y este lleva dentro una clave',
    why: 'dos puntos con un espacio detrás terminan una clave, así que en una línea hay una sola',
    help: 'pon la segunda clave en su propia línea, o el texto entre comillas',
  },
  'syntax.line-without-key': {
    what: 'una línea sin clave',
    here: 'en esta línea no hay dos puntos y espacio',
    why: 'una clave termina con dos puntos y un espacio: "load: 300 g"',
    help: 'añade el espacio tras los dos puntos, o los dos puntos',
  },
  'syntax.special-sign': {
    what: 'un texto que empieza con un signo que YAML se reserva',
    here: 'este signo no puede ir primero',
    why: 'los textos no pueden empezar con %, @ ni un acento grave suelto',
    help: 'pon el texto entre comillas',
  },
  'syntax.unreadable': {
    what: 'esto no se puede leer',
    here: 'aquí hay algo fuera de lugar',
    why: 'el archivo es YAML: claves con dos puntos y un espacio, listas con un guion y un espacio, dos espacios por nivel',
    help: 'compáralo con las líneas de alrededor, y pon entre comillas los textos con signos raros',
  },
  'syntax.anchor': {
    what: 'un ancla',
    here: '"&{name}" no se admite',
    why: READ_ALOUD,
    help: 'borra "&{name}", y escribe el valor entero donde vuelva a hacer falta',
  },
  'syntax.alias': {
    what: 'un alias',
    here: 'esto señala a otro lugar del archivo',
    why: READ_ALOUD,
    help: 'escribe el propio valor; un texto que empieza con un asterisco va entre comillas',
  },
  'syntax.tag': {
    what: 'una etiqueta de YAML',
    here: '"{tag}" no se admite',
    why: 'todo valor es un texto, y el campo dice cómo se lee',
    help: 'borra "{tag}"',
  },
  'syntax.merge-key': {
    what: 'una clave de fusión',
    here: '"<<" no se admite',
    why: READ_ALOUD,
    help: 'escribe las claves enteras',
  },
  'syntax.key-is-no-text': {
    what: 'una clave que no es un texto',
    here: 'aquí se esperaba una palabra',
    why: 'las claves se leen en voz alta: son palabras corrientes',
    help: 'escribe una palabra con dos puntos detrás',
  },
  'syntax.flow-with-commas': {
    what: 'corchetes o llaves en un archivo con comas decimales',
    here: 'aquí dentro una coma termina un valor',
    why: 'con llaves alrededor de "load: 1,5 N" la carga sería 1, y "5 N" otra clave',
    help: 'escribe cada clave en su propia línea, y cada elemento de una lista tras un guion',
  },
} as const;
