/**
 * Spanish for the usual mistakes: `.mistake` names one, `.try` is the one thing that a group is asked to do,
 * `.see` tells the teacher what probably happened and how to see it. Nobody is accused.
 */
export const mistakeSentences = {
  'screw.try.turn-more': 'Marca la cabeza, empieza como dice la tarjeta y cuenta otra vez.',
  'screw.see.turn-more':
    'Lo probable: la primera vuelta se contó antes de darla, o la última dos veces. Pide que cuenten en voz alta.',
  'screw.try.turn-less': 'Marca la cabeza, empieza como dice la tarjeta y cuenta otra vez.',
  'screw.see.turn-less':
    'Lo probable: la primera o la última vuelta no se contó. Pide que cuenten en voz alta.',
  'screw.try.half-turns': 'Marca la cabeza: la vuelta acaba donde vuelve la marca. Cuenta otra vez.',
  'screw.see.half-turns':
    'Lo probable: se contó cada giro de muñeca, que es media vuelta. Mira la marca de la cabeza.',
  'screw.try.not-flush': 'Gira hasta que justo toque y empieza entonces a contar.',
  'screw.see.not-flush': 'Lo probable: aún no tocaba cuando empezó la cuenta. Mira el hueco al principio.',
  'screw.mistake.arm-over-pitch': 'se dividió el brazo mismo por el avance de una vuelta',
  'screw.try.arm-over-pitch': '¿Cuánto recorre la mano en una vuelta? Divídelo por el avance de una vuelta.',
  'screw.see.arm-over-pitch':
    'Lo probable: se tomó el brazo por el círculo entero. Pregunta cuánto recorre la mano en una vuelta.',
  'screw.mistake.arm-taken-for-diameter': 'se tomó el brazo por el diámetro del círculo',
  'screw.try.arm-taken-for-diameter':
    '¿Cuánto recorre la mano en una vuelta? Divídelo por el avance de una vuelta.',
  'screw.see.arm-taken-for-diameter':
    'Lo probable: se tomó el brazo por un diámetro, medio círculo. Pregunta de dónde a dónde mide el círculo.',
  'screw.mistake.arm-taken-twice': 'se tomó el doble del brazo por el radio del círculo',
  'screw.try.arm-taken-twice': '¿Cuánto recorre la mano en una vuelta? Divídelo por el avance de una vuelta.',
  'screw.see.arm-taken-twice':
    'Lo probable: se tomó un diámetro por el radio, el doble del círculo. Pregunta dónde está el centro.',
  'screw.mistake.pitch-for-lead': 'se tomó el paso de un filete por el avance de una vuelta',
  'screw.try.pitch-for-lead': '¿Cuánto recorre la mano en una vuelta? Divídelo por el avance de una vuelta.',
  'screw.see.pitch-for-lead':
    'Lo probable: se tomó el paso de un filete, pero este tornillo tiene varios. Dale una vuelta y mide.',
} as const;
