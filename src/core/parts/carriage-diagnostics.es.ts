/** Spanish messages about what a load rides on and about the string that pulls it. */
export const diagnostics = {
  'carriage.axle-too-thick': {
    what: 'el eje es más grueso que su rueda',
    here: 'un eje de {axle} en una rueda de {wheel}',
    why: 'el eje atraviesa la rueda, así que tiene que ser el más delgado de los dos',
    help: 'mide otra vez los dos diámetros; quizá uno se escribió como radio',
  },
  'carriage.two-rollings': {
    what: 'la rodadura de las ruedas se dice dos veces',
    here: '"{part}" tiene además un brazo de rodadura de {arm}',
    why: 'brazo de rodadura y coeficiente de rodadura son dos maneras de escribir lo mismo',
    help: 'deja el que se midió y borra el otro',
  },
  'carriage.faces-unused': {
    what: 'se nombran caras, pero nada roza en ellas',
    here: 'la carga va sobre "{part}" ({kind@sheet.kind})',
    why: 'solo roza un bloque sobre su base; ruedas y rodillos tienen su propia resistencia',
    help: 'borra esta línea, o pon un bloque donde va la carga',
  },
  'string.no-pulley': {
    what: 'aquí no hay polea guía',
    here: '"{field}" trata de una polea guía',
    why: 'sin polea guía la mano tira directamente de la carga',
    help: 'nombra una con "guide pulley:", o borra esta línea',
  },
  'string.two-leans': {
    what: 'la inclinación de la cuerda se dice dos veces',
    here: 'una polea más alta que el gancho también da la inclinación',
    why: 'la altura de la polea y el lugar de la lectura ya fijan el ángulo',
    help: 'deja "string leans", o bien "pulley above the hook" con "read at"',
  },
  'string.no-distance': {
    what: 'la cuerda viene de arriba, pero no se dice desde qué distancia',
    here: 'falta la distancia a la que se lee el dinamómetro',
    why: 'cuanto más se acerca la carga a la polea, más empinado tira la cuerda',
    help: 'añade "read at: 40 cm", la distancia del gancho a la polea al leer',
  },
  'string.two-directions': {
    what: 'la cuerda sale de la polea guía en dos direcciones',
    here: '"after the pulley" también lo dice',
    why: 'una cuerda sale de una polea en una sola dirección',
    help: 'deja "after the pulley", o bien "string leaves at"',
  },
  'string.leans-too-far': {
    what: 'la cuerda tira separándose de la superficie',
    here: 'con {lean} no queda esfuerzo a lo largo de ella',
    why: 'una cuerda a escuadra con la superficie, o inclinada hacia atrás, no hace avanzar la carga',
    help: 'escribe un ángulo entre -90 deg y 90 deg; a lo largo de la superficie es 0 deg',
  },
} as const;
