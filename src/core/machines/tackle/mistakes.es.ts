/**
 * Spanish for the usual mistakes: `.mistake` names one, `.try` is the one thing that a group is asked to do,
 * `.see` tells the teacher what probably happened and how to see it. Nobody is accused.
 */
export const mistakeSentences = {
  'tackle.try.one-part-fewer': 'Sigue la cuerda con un dedo según la tarjeta y lee otra vez.',
  'tackle.see.one-part-fewer':
    'Lo probable: la cuerda pasa con un ramal de menos, quizá desde el grupo anterior. Cuenta los ramales en el bloque móvil.',
  'tackle.try.one-part-more': 'Sigue la cuerda con un dedo según la tarjeta y lee otra vez.',
  'tackle.see.one-part-more':
    'Lo probable: la cuerda pasa con un ramal de más, quizá desde el grupo anterior. Cuenta los ramales en el bloque móvil.',
  'tackle.try.fall-off-the-other-block': 'Sigue la cuerda con un dedo según la tarjeta y lee otra vez.',
  'tackle.see.fall-off-the-other-block':
    'Lo probable: el tiro sale del otro bloque. Mira de qué bloque viene el cabo de la mano.',
  'tackle.mistake.fall-counted': 'se contó también el ramal del que tira la mano',
  'tackle.try.fall-counted': 'Cuenta solo los ramales que sostienen el bloque móvil.',
  'tackle.see.fall-counted':
    'Lo probable: se contó el ramal del que se tira, que no sostiene nada. Pregunta qué ramales llevan la carga.',
  'tackle.mistake.fall-not-counted': 'no se contó el ramal del que tira la mano',
  'tackle.try.fall-not-counted': 'Cuenta solo los ramales que sostienen el bloque móvil.',
  'tackle.see.fall-not-counted':
    'Lo probable: no se contó el ramal del que se tira, que aquí también sostiene. Pregunta qué ramales sujetan el bloque móvil.',
  'tackle.mistake.sheaves-counted': 'se contaron las poleas',
  'tackle.try.sheaves-counted': 'Cuenta solo los ramales que sostienen el bloque móvil.',
  'tackle.see.sheaves-counted':
    'Lo probable: se contaron las poleas en vez de los ramales. Pregunta qué sostiene el bloque móvil.',
  'tackle.mistake.parts-doubled': 'los ramales se contaron dos veces',
  'tackle.try.parts-doubled': 'Cuenta solo los ramales que sostienen el bloque móvil.',
  'tackle.see.parts-doubled':
    'Lo probable: los ramales se contaron dos veces. Pide que los señalen uno a uno.',
} as const;
