/** Spanish messages about what the files say of the period. */
export const dayDiagnostics = {
  'not-a-clock-time': {
    what: 'esto no es una hora del día',
    here: '"{written}" no se lee como una hora',
    why: 'la clase empieza por el reloj de la pared',
    help: 'escribe horas y minutos de un reloj de 24 horas, como 09:15 o 13:40',
  },
  'not-a-time': {
    what: 'esto no es un momento de la clase',
    here: '"{written}" no es ni una hora ni unos minutos',
    why: 'los momentos se leen en el reloj, o se cuentan desde el principio de la clase',
    help: 'escribe una hora como 09:40, o minutos desde el principio como 25 min',
  },
  'clock-without-start': {
    what: 'una hora, y nadie dice cuándo empieza la clase',
    here: '¿cuánto después del principio es eso?',
    why: 'el plan cuenta desde el principio de la clase',
    help: 'añade una línea como "starts: "09:15"", o escribe minutos desde el principio como 25 min',
  },
  'ends-before-it-begins': {
    what: 'termina antes de empezar',
    here: 'esto no es más tarde que su principio',
    why: 'lo que está cerrado o fuera lo está desde una hora hasta otra posterior',
    help: 'intercambia las dos, o quita esta',
  },
  'outside-the-period': {
    what: 'un momento fuera de la clase',
    here: 'a esa hora no hay nadie en las mesas',
    why: 'no cambia nada en el plan',
    help: 'escribe una hora entre el principio y el final de la clase',
  },
  'no-time-for-tables': {
    what: 'no queda tiempo para las mesas',
    here: 'la introducción y la charla final duran {talks}',
    why: 'los grupos están en las mesas entre las dos',
    help: 'alarga la clase, o acorta las charlas en el archivo de la actividad',
  },
  'after-itself': {
    what: 'una mesa después de sí misma',
    here: 'la mesa "{table}" tendría que hacerse antes que ella misma',
    why: 'un grupo hace una mesa una sola vez',
    help: 'escribe las mesas que van antes, o quita "after"',
  },
  'adult-twice': {
    what: 'una etiqueta para dos adultos',
    here: 'ya hay un adulto "{label}"',
    why: 'el plan manda a un adulto a una mesa solo por su etiqueta',
    help: 'da otra etiqueta a uno de los dos',
  },
  'helpers-and-adults': {
    what: 'los ayudantes y los adultos no coinciden',
    here: 'ayudantes: {helpers}, pero en "adults" están {adults}',
    why: 'la lista dice quién puede atender mesas, así que el número no se usa',
    help: 'quita "helpers", o escribe tantos como tiene la lista',
  },
  'fewer-pupils-than-groups': {
    what: 'menos alumnos que grupos',
    here: '{pupils} alumnos en {groups} grupos',
    why: 'el plan tiene un recorrido para cada grupo, también para uno sin nadie',
    help: 'escribe {pupils} grupos como mucho, o cuántos alumnos vienen de verdad',
  },
  'two-groups-wanted': {
    what: 'un solo grupo',
    here: 'grupo "{group}": ¿"{key}" con quién?',
    why: '"{key}" se dice de dos grupos o más',
    help: 'escribe los grupos uno junto a otro, como "A, B"',
  },
  'wish-says-nothing': {
    what: 'un deseo que no dice nada',
    here: '¿qué se desea?',
    why: 'para quién es, todavía no es un deseo',
    help: 'añade uno de estos: {known}',
  },
  'wish-half-said': {
    what: 'medio deseo',
    here: '"{key}" va junto con "{other}"',
    why: 'ninguno dice nada solo',
    help: 'añade una línea "{other}:" al mismo bloque',
  },
  'unknown-class': {
    what: 'una clase desconocida',
    here: 'ninguna clase se llama "{written}"',
    why: 'un deseo es para una clase que está en "classes"',
    help: '[escribe "{nearest}"|escribe una de estas: {known}|quita "class", o enumera las clases en "classes"]',
  },
  'class-twice': {
    what: 'una etiqueta para dos clases',
    here: 'ya hay una clase "{label}"',
    why: 'un plan es de una clase, que se conoce por su etiqueta',
    help: 'da otra etiqueta a una de las dos',
  },
  'classes-overlap': {
    what: 'dos clases a la vez',
    here: '"{other}" sigue en las mesas cuando llega "{class}"',
    why: 'el kit tiene cada mesa una vez, y entre dos clases todas se dejan listas',
    help: 'haz que empiece más tarde, o acorta la clase anterior',
  },
} as const;
