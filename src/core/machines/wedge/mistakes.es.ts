/**
 * Spanish for the usual mistakes: `.mistake` names one, `.try` is the one thing that a group is asked to do,
 * `.see` tells the teacher what probably happened and how to see it. Nobody is accused.
 */
export const mistakeSentences = {
  'wedge.try.not-to-the-mark': 'Empuja la cuña hasta su marca y lee otra vez.',
  'wedge.see.not-to-the-mark': 'Lo probable: la cuña se quedó antes de su marca. Mira dónde está la marca.',
  'wedge.mistake.past-the-mark': 'la cuña se metió más allá de su marca',
  'wedge.try.past-the-mark': 'Saca la cuña hasta su marca y lee otra vez.',
  'wedge.see.past-the-mark': 'Lo probable: la cuña entró más allá de su marca. Mira dónde está la marca.',
  'wedge.mistake.half-thickness': 'se tomó la mitad del grosor',
  'wedge.try.half-thickness': 'Mide el grosor entero por detrás y divide otra vez.',
  'wedge.see.half-thickness':
    'Lo probable: se tomó medio grosor, un lado de la cuña. Pregunta cuánto se separan las dos caras.',
  'wedge.mistake.upside-down': 'el grosor se dividió por la longitud',
  'wedge.try.upside-down': '¿Qué es más largo, la cuña o su dorso? Divídelo por lo otro.',
  'wedge.see.upside-down':
    'Lo probable: longitud y grosor están al revés en la fracción. Pregunta qué va arriba y por qué.',
} as const;
