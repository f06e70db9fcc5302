/** Spanish text of the compound machine's diagnostics, by code. */
export const diagnostics = {
  'compound.too-few-stages': {
    what: 'una máquina compuesta tiene dos etapas o más',
    here: 'esta tiene {stages}',
    why: 'con una sola etapa es esa misma máquina',
    help: 'añade la etapa siguiente, o pon en la mesa la máquina de la etapa',
  },
  'compound.unknown-stage': {
    what: 'no hay ninguna máquina así',
    here: 'la etapa {stage} es "{machine}"',
    why: 'una etapa es una de las máquinas que funcionan solas',
    help: 'nombra una de las máquinas de la lista que imprime la ayuda',
  },
  'compound.passes-nothing-on': {
    what: 'una etapa no transmite nada',
    here: 'la etapa {stage}, "{machine}", no recibe el esfuerzo de la etapa anterior',
    why: 'su propio esfuerzo no depende de una carga, o su carga no se eleva',
    help: 'haz que sea la primera etapa, donde su resistencia es la carga, o quítala',
  },
  'compound.link-turns': {
    what: 'la unión entre dos etapas tiene que cambiar de dirección',
    here: 'de la etapa {stage} no se tira recto hacia arriba, y la etapa {next} toma su carga como si colgara',
    why: 'una cuerda recta tiraría de la etapa {next} en otra dirección que una carga colgada',
    help: 'pasa la unión por una polea que gire libre para que tire recto hacia abajo de la etapa {next}; esa polea no se cuenta',
  },
} as const;
