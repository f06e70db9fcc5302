/**
 * Spanish for the usual mistakes: `.mistake` names one, `.try` is the one thing that a group is asked to do,
 * `.see` tells the teacher what probably happened and how to see it. Nobody is accused.
 */
export const mistakeSentences = {
  'incline.try.pin-too-high': 'Mira en qué clavija descansa la tabla y lee otra vez.',
  'incline.see.pin-too-high':
    'Lo probable: la tabla descansa una clavija más arriba, quizá desde el grupo anterior. Míralo antes de que lea el siguiente.',
  'incline.try.pin-too-low': 'Mira en qué clavija descansa la tabla y lee otra vez.',
  'incline.see.pin-too-low':
    'Lo probable: la tabla descansa una clavija más abajo, quizá desde el grupo anterior. Míralo antes de que lea el siguiente.',
  'incline.try.string-not-along': 'Lleva la cuerda a lo largo de la tabla y lee otra vez.',
  'incline.see.string-not-along':
    'Lo probable: la cuerda se apartaba de la tabla. Mira a lo largo de la tabla mientras tiran.',
  'incline.try.read-too-near': 'Lee otra vez antes, donde dice la tarjeta.',
  'incline.see.read-too-near':
    'Lo probable: se leyó cerca de la polea guía, donde la cuerda tira hacia arriba. Mira dónde se paran a leer.',
  'incline.mistake.left-empty': 'lo que lleva la carga subió vacío',
  'incline.try.left-empty': 'Pon la carga y lee otra vez.',
  'incline.see.left-empty': 'Lo probable: la carga no iba puesta. Mira si está junto a la tabla.',
  'incline.mistake.run-for-slope': 'la distancia horizontal se dividió por la altura',
  'incline.try.run-for-slope': '¿Por dónde va la carga? Mide a lo largo de la tabla y divide por la altura.',
  'incline.see.run-for-slope':
    'Lo probable: se tomó la distancia horizontal por la rampa. Pregunta por qué lado viaja la carga.',
  'incline.mistake.run-for-rise': 'la rampa se dividió por la distancia horizontal',
  'incline.try.run-for-rise': '¿A qué altura llega la carga? Divide la rampa por eso.',
  'incline.see.run-for-rise':
    'Lo probable: se tomó la distancia horizontal por la altura. Pregunta qué se gana arriba.',
  'incline.mistake.sides-upside-down': 'la altura se dividió por la rampa',
  'incline.try.sides-upside-down': '¿Qué es más largo, la rampa o la altura? Divídelo por lo otro.',
  'incline.see.sides-upside-down':
    'Lo probable: rampa y altura están al revés en la fracción. Pregunta qué va arriba y por qué.',
  'incline.mistake.whole-board-for-slope': 'la tabla entera se dividió por la altura del apoyo',
  'incline.try.whole-board-for-slope': 'Mide desde el pie hasta el apoyo y divide otra vez.',
  'incline.see.whole-board-for-slope':
    'Lo probable: se tomó la tabla entera, más allá del apoyo. Pregunta a qué altura está su extremo.',
} as const;
