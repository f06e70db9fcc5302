/**
 * Spanish for the usual mistakes: `.mistake` names one, `.try` is the one thing that a group is asked to do,
 * `.see` tells the teacher what probably happened and how to see it. Nobody is accused.
 */
export const mistakeSentences = {
  'drag.try.string-not-level': 'Lleva la cuerda horizontal y lee otra vez.',
  'drag.see.string-not-level':
    'Lo probable: la cuerda subía del gancho a la mano. Mírala de lado mientras tiran.',
  'drag.try.read-too-near': 'Lee otra vez antes, donde dice la tarjeta.',
  'drag.see.read-too-near':
    'Lo probable: se leyó cerca de la polea guía, donde la cuerda tira hacia arriba. Mira dónde se paran a leer.',
  'drag.mistake.left-empty': 'lo que lleva la carga se arrastró vacío',
  'drag.try.left-empty': 'Pon la carga y lee otra vez.',
  'drag.see.left-empty': 'Lo probable: la carga no iba puesta. Mira si está al lado.',
} as const;
