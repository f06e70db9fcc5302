/**
 * Spanish for the usual mistakes: `.mistake` names one, `.try` is the one thing that a group is asked to do,
 * `.see` tells the teacher what probably happened and how to see it. Nobody is accused.
 */
export const mistakeSentences = {
  'windlass.try.line-winds-on-itself':
    'Suelta la cuerda del eje, enróllala vuelta junto a vuelta y lee otra vez.',
  'windlass.see.line-winds-on-itself':
    'Lo probable: la cuerda se monta sobre sí misma y el eje queda más grueso. Mira las vueltas del eje.',
  'windlass.try.lines-swapped': 'Mira en la tarjeta qué tambor lleva la carga y lee otra vez.',
  'windlass.see.lines-swapped':
    'Lo probable: carga y dinamómetro están cada uno en el tambor del otro. Mira de qué cuerda cuelga la carga.',
  'windlass.mistake.radius-for-diameter': 'el radio de la rueda se dividió por el diámetro del eje',
  'windlass.try.radius-for-diameter': 'Toma los dos diámetros o los dos radios y divide otra vez.',
  'windlass.see.radius-for-diameter':
    'Lo probable: se dividió un radio por un diámetro, la mitad de lo debido. Pregunta de dónde a dónde midieron.',
  'windlass.mistake.diameter-for-radius': 'el diámetro de la rueda se dividió por el radio del eje',
  'windlass.try.diameter-for-radius': 'Toma los dos diámetros o los dos radios y divide otra vez.',
  'windlass.see.diameter-for-radius':
    'Lo probable: se dividió un diámetro por un radio, el doble de lo debido. Pregunta de dónde a dónde midieron.',
  'windlass.mistake.upside-down': 'el eje se dividió por la rueda',
  'windlass.try.upside-down': '¿Qué es más grande, la rueda o el eje? Divídelo por lo otro.',
  'windlass.see.upside-down':
    'Lo probable: rueda y eje están al revés en la fracción. Pregunta qué va arriba y por qué.',
  'windlass.mistake.with-the-line': 'se midió hasta el centro de las cuerdas',
  'windlass.try.with-the-line': 'Así se cuenta también el grueso de la cuerda: bien medido.',
  'windlass.see.with-the-line':
    'Se contó también el grueso de las cuerdas, que el libro de texto no cuenta. No hay ningún error.',
} as const;
