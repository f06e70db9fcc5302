/** Spanish of the wedge's diagnostics: headline, what stands after the caret, why, and what can be done. */
export const diagnostics = {
  'wedge.no-angle': {
    what: 'la cuña no tiene ángulo',
    here: 'no está escrito ni su grosor ni su ángulo entero',
    why: 'lo que gana una cuña depende de su inclinación',
    help: 'escribe "thickness: 3.2 cm", medido en el dorso',
  },
  'wedge.angle-twice': {
    what: 'el ángulo de la cuña está escrito dos veces',
    here: 'un ángulo entero de {angle}, y además un grosor de {thickness}',
    why: 'dos valores para una medida no dicen para cuál vale la clave',
    help: 'deja el grosor y quita el ángulo: una regla es más segura que un transportador',
  },
  'wedge.no-edge': {
    what: 'esta cuña no tiene filo',
    here: 'un ángulo entero de {angle}',
    why: 'unas caras tan abiertas no apartan nada',
    help: 'escribe el ángulo entre las caras en el extremo delgado',
  },
  'wedge.past-its-back': {
    what: 'la cuña se mete más allá de su propio dorso',
    here: '{advance} adentro, pero la cuña solo mide {length}',
    why: 'detrás del dorso no queda nada que abra la ranura',
    help: 'escribe cuánto ha avanzado el filo desde el primer contacto',
  },
  'wedge.lifting-goes-level': {
    what: 'una cuña de levantar se empuja en horizontal',
    here: 'empujada hacia abajo, esta cuña no levantaría nada',
    why: 'se desliza por la mesa bajo su carga',
    help: 'quita "pushed", o usa una cuña con "kind of wedge: splitting"',
  },
  'wedge.lifting-has-no-cords': {
    what: 'una cuña de levantar no separa gomas',
    here: '"{part}" mantiene juntas dos caras, y aquí solo hay una carga',
    why: 'el empuje de una cuña de levantar se calcula solo con la carga',
    help: 'quita las gomas, o usa una cuña con "kind of wedge: splitting"',
  },
  'wedge.how-far-in': {
    what: 'no se dice cuánto entra la cuña',
    here: 'las gomas "{part}" tiran más cuanto más ancha es la abertura',
    why: 'la lectura depende del lugar en que se toma',
    help: 'escribe "pushed in: 60 mm" y dibuja esa marca en la cuña',
  },
  'wedge.near-jam': {
    what: 'la cuña está cerca de trabarse',
    here: 'los ángulos de pendiente y rozamiento suman {lean}; por encima de {most} se notan mucho los pequeños cambios de rozamiento',
    why: 'el empuje crece sin límite cuando llegan a un ángulo recto',
    help: 'usa una cuña más delgada o caras enceradas',
  },
  'wedge.cords-over-limit': {
    what: 'las gomas se estiran más allá de su límite',
    here: 'abiertas {opening}, y el límite de las gomas es {most}',
    why: 'una goma más allá de su límite puede saltar hacia atrás',
    help: 'mete menos la cuña, o usa gomas más largas',
  },
  'wedge.hands-do-better': {
    what: 'esta cuña pide más de lo que da',
    here: 'un empuje de {push} para una fuerza lateral de {side}',
    why: 'una cuña de madera seca empujada apenas mejora a las manos: es el golpe el que hace el trabajo',
    help: 'dilo en la conversación, encera las caras, o usa una cuña más delgada',
  },
} as const;
