/**
 * Spanish for the usual mistakes: `.mistake` names one, `.try` is the one thing that a group is asked to do,
 * `.see` tells the teacher what probably happened and how to see it. Nobody is accused.
 */
export const mistakeSentences = {
  'lever.try.load-hole-right': 'Cuenta el agujero de la carga con la tarjeta delante y lee otra vez.',
  'lever.see.load-hole-right':
    'Lo probable: la carga cuelga un agujero de más a la derecha. Mira en qué agujero está su gancho.',
  'lever.try.pull-hole-right': 'Cuenta el agujero del dinamómetro con la tarjeta delante y lee otra vez.',
  'lever.see.pull-hole-right':
    'Lo probable: el dinamómetro tira un agujero de más a la derecha. Mira de qué agujero tira.',
  'lever.try.fulcrum-hole-right': 'Mira el agujero del pasador con la tarjeta delante y lee otra vez.',
  'lever.see.fulcrum-hole-right':
    'Lo probable: el pasador está un agujero de más a la derecha, quizá desde el grupo anterior. Míralo antes de que lea el siguiente.',
  'lever.try.load-hole-left': 'Cuenta el agujero de la carga con la tarjeta delante y lee otra vez.',
  'lever.see.load-hole-left':
    'Lo probable: la carga cuelga un agujero de más a la izquierda. Mira en qué agujero está su gancho.',
  'lever.try.pull-hole-left': 'Cuenta el agujero del dinamómetro con la tarjeta delante y lee otra vez.',
  'lever.see.pull-hole-left':
    'Lo probable: el dinamómetro tira un agujero de más a la izquierda. Mira de qué agujero tira.',
  'lever.try.fulcrum-hole-left': 'Mira el agujero del pasador con la tarjeta delante y lee otra vez.',
  'lever.see.fulcrum-hole-left':
    'Lo probable: el pasador está un agujero de más a la izquierda, quizá desde el grupo anterior. Míralo antes de que lea el siguiente.',
  'lever.try.load-counted-from-the-other-end':
    'Cuenta los agujeros desde el extremo que dice la tarjeta y lee otra vez.',
  'lever.see.load-counted-from-the-other-end':
    'Lo probable: el agujero de la carga se contó desde el otro extremo. Pide al grupo que te enseñe cómo cuenta.',
  'lever.try.pull-counted-from-the-other-end':
    'Cuenta los agujeros desde el extremo que dice la tarjeta y lee otra vez.',
  'lever.see.pull-counted-from-the-other-end':
    'Lo probable: el agujero del dinamómetro se contó desde el otro extremo. Pide al grupo que te enseñe cómo cuenta.',
  'lever.mistake.hooks-swapped': 'la carga y el dinamómetro estaban cada uno en el agujero del otro',
  'lever.try.hooks-swapped': 'Mira en la tarjeta qué agujero lleva la carga y lee otra vez.',
  'lever.see.hooks-swapped':
    'Lo probable: carga y dinamómetro están cada uno en el agujero del otro. Pon el dibujo junto a la barra.',
  'lever.mistake.arms-upside-down': 'el brazo de la carga se dividió por el del esfuerzo',
  'lever.try.arms-upside-down': '¿Qué brazo es el más largo? Divídelo por el otro.',
  'lever.see.arms-upside-down':
    'Lo probable: los dos brazos están al revés en la fracción. Pregunta qué brazo va arriba y por qué.',
  'lever.mistake.arms-from-the-end': 'los brazos se midieron desde el extremo de la barra',
  'lever.try.arms-from-the-end': 'Mide los dos brazos desde el pasador y divide otra vez.',
  'lever.see.arms-from-the-end':
    'Lo probable: los brazos se midieron desde el extremo de la barra. Pregunta dónde gira la barra.',
} as const;
