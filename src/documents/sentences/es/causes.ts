/**
 * Spanish for likely causes: `cause.` names one, `try.` is the one thing that the group is asked to do, `see.`
 * tells the teacher what probably happened and how to see it. Nobody is accused. Those of a machine stand
 * in its folder.
 */
export const causes = {
  'cause.good': 'una buena lectura',
  'cause.unexplained': 'nada de la lista lo explica',
  'cause.scale.zero-from-hook-down': 'el dinamómetro se giró y conservó su cero de antes',
  'cause.scale.zero-set-in-place':
    'el dinamómetro se puso a cero tal como cuelga; la tarjeta pide el cero con el gancho abajo',
  'cause.scale.carried': 'la mano sostuvo el dinamómetro en vez de dejarlo colgar',
  'cause.way.lowering-for-raising': 'se leyó mientras la carga volvía a bajar',
  'cause.way.start-for-moving': 'se leyó en la sacudida del arranque',
  'cause.way.raising-for-lowering': 'se leyó mientras la carga subía; la tarjeta la pide de vuelta',
  'cause.way.moving-for-start': 'se leyó mientras se movía; la tarjeta pide el máximo antes de que se mueva',
  'cause.reading.schoolbook': 'el número es el del libro de texto: quizá calculado y no leído',
  'cause.reading.in-grams': 'el número cuenta gramos',
  'cause.reading.in-newtons': 'el número cuenta newtons',
  'cause.reading.in-ounces': 'el número cuenta onzas',
  'cause.reading.in-pounds': 'el número cuenta libras',
  'cause.reading.in-kilograms': 'el número cuenta kilogramos',
  'cause.reading.in-millimetres': 'el número cuenta milímetros',
  'cause.reading.in-centimetres': 'el número cuenta centímetros',
  'cause.reading.in-inches': 'el número cuenta pulgadas',
  'cause.reading.in-metres': 'el número cuenta metros',
  'cause.reading.in-turns': 'el número cuenta vueltas',
  'cause.way.speeding-up': 'se leyó mientras la carga aún ganaba velocidad',
  'cause.load.other-weight': 'colgaba otra pesa que la de la tarjeta',
  'cause.setup.swapped': 'la lectura de un montaje pareja',
  'cause.reading.ten-times': 'falta el punto o la coma: diez veces de más',
  'cause.reading.a-tenth': 'el punto o la coma está un lugar más a la izquierda: la décima parte',
  'cause.reading.a-hundred-times': 'falta el punto o la coma: cien veces de más',
  'cause.reading.digits-swapped': 'dos cifras cambiaron de lugar',
  'cause.reading.marks-of-half': 'cada marca se contó por la mitad de lo que vale',
  'try.unexplained': 'Compara el montaje con la tarjeta y lee otra vez.',
  'try.scale.zero-from-hook-down':
    'Cuelga el dinamómetro tal como tiras, pon el indicador en 0 y lee otra vez.',
  'try.scale.zero-set-in-place': 'Pon el indicador en 0 con el gancho abajo y lee otra vez.',
  'try.scale.carried': 'Deja el dinamómetro colgando de su gancho y lee otra vez.',
  'try.way.lowering-for-raising': 'Lee otra vez mientras la carga sube despacio.',
  'try.way.start-for-moving': 'Lee otra vez mientras se mueve despacio, no en la sacudida.',
  'try.way.raising-for-lowering': 'Lee otra vez mientras la carga vuelve despacio.',
  'try.way.moving-for-start': 'Busca otra vez la marca más alta justo antes de que se mueva.',
  'try.reading.schoolbook': 'Escribe lo que marca el indicador, sea lo que sea.',
  'try.reading.unit': 'Mira qué unidad está junto a las marcas que lees y escríbela también.',
  'try.way.speeding-up': 'Tira despacio y parejo, y lee otra vez mientras se mueve.',
  'try.load.other-weight': 'Mira la marca de la carga con la tarjeta delante y lee otra vez.',
  'try.setup.swapped': 'Mira qué montaje dice la tarjeta y lee otra vez.',
  'try.reading.point': 'Escribe otra vez el número, con su punto o su coma.',
  'try.reading.digits-swapped': 'Lee el número en voz alta y escríbelo otra vez.',
  'try.reading.marks-of-half': 'Cuenta las marcas entre dos números: ¿cuánto vale una? Luego lee otra vez.',
  'see.unexplained': 'Ningún error de la lista lleva a este número. Mira mientras el grupo lee otra vez.',
  'see.scale.zero-from-hook-down':
    'Lo probable: el dinamómetro se giró después de ponerlo a cero. Déjalo colgar libre como tira: no marca 0.',
  'see.scale.zero-set-in-place':
    'Lo probable: el dinamómetro se puso a 0 tal como cuelga. Ponlo con el gancho abajo: no marca 0.',
  'see.scale.carried': 'Lo probable: una mano sostenía el dinamómetro. Mira si cuelga solo de su gancho.',
  'see.way.lowering-for-raising':
    'Lo probable: se leyó mientras la carga bajaba. Mira la carga, no el indicador.',
  'see.way.start-for-moving':
    'Lo probable: se leyó la sacudida del arranque. Mira si el indicador retrocede en cuanto se mueve.',
  'see.way.raising-for-lowering':
    'Lo probable: se leyó mientras la carga subía. Mira la carga, no el indicador.',
  'see.way.moving-for-start':
    'Lo probable: se leyó después del arranque. Busca la marca más alta justo antes de que se mueva.',
  'see.way.speeding-up':
    'Lo probable: la mano tenía prisa y el esfuerzo también aceleraba la carga. Mira si el indicador baja cuando se mueve parejo.',
  'see.load.other-weight':
    'Lo probable: cuelga otra pesa. Mira su marca: el grupo siguiente la encontraría también.',
  'see.load.other-weight.named':
    'Lo probable: cuelga {hung} en lugar de {belongs}. Mira su marca: el grupo siguiente la encontraría también.',
  'see.setup.swapped':
    'Esto es lo que marca un montaje pareja: lo probable es que las dos filas estén cambiadas. Mira la otra fila del grupo.',
  'see.setup.swapped.named':
    'Esto es lo que marca {partner}: lo probable es que las dos filas estén cambiadas. Mira la fila del grupo para {partner}.',
  'see.reading.schoolbook':
    'El número es el del libro de texto, sin rozamiento: probablemente calculado y no leído. Pide verlo en el instrumento.',
  'see.reading.unit':
    'El número encaja en otra unidad. Pregunta qué marcas se leyeron; si hay dos columnas, cuál de ellas.',
  'see.reading.point': 'Las cifras encajan, el punto o la coma no. Pregunta dónde estaba el indicador.',
  'see.reading.digits-swapped':
    'El número encaja con dos cifras cambiadas de lugar. Pregunta dónde estaba el indicador.',
  'see.reading.marks-of-half':
    'Lo probable: las marcas entre dos números se contaron por la mitad. Pregunta cuánto vale una marca pequeña.',
  'verdict.good': 'bien',
  'verdict.a little off': 'un poco fuera',
  'verdict.look again': 'mira otra vez',
  'verdict.no reading': 'sin lectura',
  'verdict.unreadable': 'ilegible, guardada como se escribió',
  'verdict.not judged': 'sin juzgar',
  'reading.not-a-number': 'esto no es un número con unidad ni sin ella',
  'reading.unknown-unit': 'esta unidad no se conoce para una lectura',
  'reading.wrong-dimension': 'esta unidad no corresponde a lo que se lee aquí',
  'outcome.off-the-scale': 'el esfuerzo pasa del final del dinamómetro: no hay con qué comparar',
  'outcome.scale-on-the-other-side': 'aquí el dinamómetro va al otro lado',
  'outcome.ease': 'un orden que se siente no se juzga lectura a lectura',
} as const;
