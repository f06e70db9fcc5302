/** Spanish text of the windlass's diagnostics, by code. */
export const diagnostics = {
  'windlass.no-wheel': {
    what: 'el torno no tiene rueda',
    here: '"{part}" no tiene diámetro de rueda',
    why: 'sin el tamaño de la rueda no se puede decir nada del esfuerzo',
    help: 'pon el diámetro de la rueda en el kit, o gíralo por la manivela',
  },
  'windlass.no-crank': {
    what: 'el torno no tiene manivela',
    here: '"{part}" no tiene longitud de manivela',
    why: 'sin la longitud de la manivela no se puede decir nada del esfuerzo',
    help: 'pon la longitud de la manivela en el kit, o gíralo por la rueda',
  },
  'windlass.nothing-to-turn-it': {
    what: 'nada gira este torno',
    here: '"{part}" no tiene ni diámetro de rueda ni longitud de manivela',
    why: 'la mano necesita una rueda o una manivela para girar el eje',
    help: 'mide la rueda de lado a lado, o del eje al mango, y escríbelo en el kit',
  },
  'windlass.wheel-or-crank': {
    what: 'no se dice qué gira el torno',
    here: '"{part}" tiene una rueda y una manivela',
    why: 'las dos tienen brazos distintos, así que el esfuerzo cambia',
    help: 'escribe "turned by: wheel" o "turned by: crank"',
  },
  'windlass.wide-bearing': {
    what: 'el cojinete es más ancho que el eje',
    here: '{bearing} de diámetro, en un eje de {axle}',
    why: 'el muñón es parte del eje o gira dentro de él, así que no es más ancho',
    help: 'mira si uno de los dos es un radio, y escribe los dos como diámetros',
  },
  'windlass.stiff-line': {
    what: 'la cuerda es gruesa para este eje',
    here: 'un eje de {axle} dobla una cuerda de {line} en menos de {times} veces su grosor',
    why: 'la rigidez de la cuerda no entra en el cálculo, y aquí cuenta',
    help: 'toma una cuerda más delgada, o un eje más grueso',
  },
  'windlass.costs-force': {
    what: 'este torno pide más que la carga',
    here: 'el esfuerzo tiene un brazo de {pull}, la carga uno de {load}',
    why: 'una rueda pequeña en un eje grande gana recorrido y cuesta fuerza',
    help: 'está bien si es eso lo que se quiere mostrar; si no, mira si los diámetros están cambiados',
  },
} as const;
