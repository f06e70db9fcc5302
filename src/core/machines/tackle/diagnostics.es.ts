/** Spanish text of the tackle's diagnostics, by code. */
export const diagnostics = {
  'tackle.no-tackle': {
    what: 'un solo ramal desde el bloque móvil no es un polipasto',
    here: 'la mano levantaría la carga ella sola',
    why: 'el ramal del que se tira es el único que tira de la carga',
    help: 'escribe 2 ramales o más, o haz que el extremo libre salga del bloque fijo',
  },
  'tackle.block-missing': {
    what: 'falta un bloque',
    here: '{parts} ramales necesitan un {block@word} con {needed} roldanas o más',
    why: 'la cuerda va y viene entre los dos bloques y en cada vuelta pasa por una roldana',
    help: 'nombra la pieza que es el {block@word}, o escribe menos ramales',
  },
  'tackle.too-few-sheaves': {
    what: 'un bloque tiene pocas roldanas para tantos ramales',
    here: '{parts} ramales necesitan {needed} en el {block@word}; "{part}" tiene {has}',
    why: 'la cuerda va y viene entre los dos bloques y en cada vuelta pasa por una roldana',
    help: 'estos dos bloques llevan {most} ramales como máximo; escribe eso, o toma un bloque con más roldanas',
  },
  'tackle.idle-block': {
    what: 'el bloque móvil no tiene nada que hacer',
    here: 'con {parts} ramal la carga cuelga de la propia cuerda; "{part}" no se usa',
    why: 'una sola polea fija únicamente cambia la dirección del esfuerzo',
    help: 'quita el bloque móvil, o escribe 2 ramales',
  },
  'tackle.pull-direction': {
    what: 'no se puede tirar de la cuerda hacia ahí',
    here: 'una cuerda que sale del {block@word} va {goes@word}, no {pull@word}',
    why: 'el esfuerzo tiene que alejarse de la última roldana, y nada lo desvía por el camino',
    help: 'quita la dirección del esfuerzo, o añade una polea guía',
  },
  'tackle.lean-of-one-part': {
    what: 'un solo ramal no puede inclinarse',
    here: 'oscilaría hasta colgar vertical, no inclinado {lean}',
    why: 'una sola cuerda solo sostiene una carga colgada desde justo encima',
    help: 'quita la inclinación, o escribe 2 ramales o más',
  },
  'tackle.leaning-parts': {
    what: 'los ramales se inclinan mucho',
    here: '{lean} de inclinación piden {more} más de esfuerzo que unos ramales verticales',
    why: 'más allá de {most} unos pocos grados cambian el esfuerzo más de lo que el dinamómetro distingue del rozamiento',
    help: 'cuelga los bloques más separados, o mide la inclinación con un transportador',
  },
} as const;
