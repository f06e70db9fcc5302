/** Spanish of the screw's diagnostics: headline, what stands after the caret, why, and what can be done. */
export const diagnostics = {
  'screw.no-diameter': {
    what: 'el tornillo no tiene diámetro',
    here: 'no está escrito ni un nombre de rosca ni un diámetro',
    why: 'el ángulo de avance, y con él el rozamiento, depende de lo grueso que es el tornillo',
    help: 'escribe "thread: M8" o "diameter: 8 mm"',
  },
  'screw.no-pitch': {
    what: 'el tornillo no tiene paso',
    here: 'no está escrito ni un nombre de rosca, ni un paso, ni filetes por pulgada',
    why: 'el recorrido de una vuelta depende del paso',
    help: 'escribe "thread: M8", "pitch: 1.25 mm" o "threads per inch: 13"',
  },
  'screw.unknown-thread': {
    what: 'esto no es un nombre de rosca',
    here: 'ninguna rosca normalizada se llama "{thread}"',
    why: 'un nombre de rosca indica un diámetro y un paso de una tabla normalizada',
    help: 'escribe un nombre como M8, M10x1.25 o 1/2-13, o escribe diámetro y paso',
  },
  'screw.said-twice': {
    what: 'la rosca está escrita dos veces, con dos significados',
    here: '{written} aquí, {named} según "{other}"',
    why: 'dos valores para una medida no dicen para cuál vale la clave',
    help: 'deja uno de los dos',
  },
  'screw.not-standard': {
    what: 'ninguna rosca normalizada tiene este diámetro y este paso',
    here: 'un paso de {pitch} en {diameter}; la más cercana solo por el paso: {nearest}',
    why: 'casi todos los tornillos de un kit son comprados: un paso raro suele ser un desliz de la regla',
    help: 'mide diez filetes y divide entre diez, o déjalo si el tornillo es hecho en casa',
  },
  'screw.mean-diameter': {
    what: 'el diámetro medio no está dentro de la rosca',
    here: '{mean}, pero la rosca va de su fondo a {diameter}',
    why: 'los filetes se tocan a medio camino entre el fondo y el exterior',
    help: 'quita el diámetro medio, o mídelo otra vez',
  },
  'screw.pitch-too-coarse': {
    what: 'la rosca es más profunda que grueso el tornillo',
    here: 'un paso de {pitch} en un diámetro de {diameter}',
    why: 'una rosca de esta forma no dejaría núcleo',
    help: 'revisa las unidades de paso y diámetro; los filetes por pulgada no son un paso',
  },
  'screw.turns-and-travel': {
    what: 'se dan a la vez vueltas y recorrido',
    here: '{turns} vueltas, y un recorrido de {travel}',
    why: 'uno de los dos se fija y el otro se lee',
    help: 'quita el que el grupo tiene que encontrar',
  },
  'screw.steep': {
    what: 'la rosca es muy inclinada',
    here: 'su ángulo de avance es {lead}; la ley está probada hasta {most}',
    why: 'en una rosca inclinada la inclinación del flanco y el avance ya no van por separado',
    help: 'escribe "form: square" si lo es, o lee vueltas y recorrido en vez del esfuerzo',
  },
  'screw.mostly-friction': {
    what: 'este esfuerzo es sobre todo rozamiento',
    here: 'solo {share} del trabajo llega a la carga',
    why: 'el rozamiento de dos roscas que parecen iguales puede diferir en un factor de dos',
    help: 'mide una vez el esfuerzo en este tornillo y escribe el rozamiento de rosca que resulta',
  },
} as const;
