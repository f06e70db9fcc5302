/** Spanish of the talk at the end: questions for the wall, answers in the class's numbers, notes for whoever leads it. */
export const discussions = {
  'talk.title': 'La charla del final',
  'talk.notes': 'Notas para la charla',
  'talk.about.class': 'Una pregunta por página, con los números de esta clase.',
  'talk.about.rehearsal': 'Una clase que nunca existió, para ensayar la charla: sus números son inventados.',
  'talk.fact.groups': 'Grupos',
  'talk.fact.readings': 'Lecturas',
  'talk.number': 'Pregunta {number} de {of}',
  'talk.answer': 'Respuesta',
  'talk.wait': 'Espera {seconds} segundos.',
  'talk.you-ask': 'Pregunta',
  'talk.then': 'Luego',
  'talk.you-answer': 'Responde',
  'talk.idea': 'Se oye a menudo',
  'talk.back': 'Devuelve la pregunta',
  'talk.how':
    'Pregunta y guarda silencio el tiempo que dicen las notas. Escucha tres respuestas antes de decir cuál es la buena. Después destapa la respuesta y léanla en voz alta entre todos.',
  'talk.how.words':
    'L1 es el montaje L1, como en su tarjeta. Lo que va entre paréntesis contiene el valor verdadero 19 de cada 20 veces. «Fuerza» es la de la mano, «camino» es lo que avanza la mano; el joule (J) es newton por metro.',
  'talk.within': 'Para {minutes} minutos: pregunta {numbers}.',
  'talk.in-five': 'Si solo quedan cinco minutos: pregunta {numbers}.',
  'talk.left-out': 'No se pregunta: «{ask}» Motivo: {because}.',
  'talk.minutes': 'unos {minutes} min',

  'talk.machines.ask': '¿Qué máquina es cuál?',
  'talk.machines.do': 'Busca la frase que va con cada máquina.',
  'talk.machines.machine': 'Máquina',
  'talk.machines.letter': 'Letra',
  'talk.machines.does': 'Qué hace',
  'talk.machines.trades': 'Qué cambia por qué',
  'talk.machines.lives': 'Dónde vive en el mundo',
  'talk.machines.at': '{machine}, mesa {tables}',
  'talk.machines.line': '{machine}: {letter}',
  'talk.machines.answer':
    'Las parejas: {pairs}. Después pregunta dónde encontraron hoy una de estas, y acepta cualquier respuesta.',
  'talk.machines.idea': '«Toda máquina lo hace más liviano.»',
  'talk.machines.back':
    'Una bandera sube por una sola polea en lo alto del mástil. ¿Qué se hace más liviano ahí? (Nada: se puede tirar hacia abajo en vez de hacia arriba.)',

  'talk.guess.ask': '¿Qué supusimos y qué leímos?',
  'talk.guess.do': 'Pon lo supuesto al lado de la lectura. ¿Era bueno el orden?',
  'talk.guess.setup': 'Montaje',
  'talk.guess.guessed': 'Supuesto, en el centro',
  'talk.guess.between': 'De lo menor a lo mayor',
  'talk.guess.read': 'Leído, en el centro',
  'talk.guess.order': '{right} de {of} grupos supusieron que {more} pide más que {less}.',
  'talk.guess.answer':
    'Suponer no es equivocarse: dice lo que pensábamos antes. Pregunta en qué se fijaron al suponer.',
  'talk.guess.idea': '«La máquina grande pide menos.»',
  'talk.guess.back': '¿Qué largo cuenta aquí: el de todo el aparato, o el que va del pasador a la mano?',

  'talk.traded.ask': '¿Qué se hizo más fácil y qué se hizo más largo?',
  'talk.traded.do': 'Cada punto es una lectura de esta clase.',
  'talk.traded.strips': '{less} y {more}: ¿cuál pide menos, y en cuál avanza más la mano?',
  'talk.traded.picture': 'Fuerza y camino, montaje por montaje',
  'talk.traded.dot': 'carga entre fuerza, según nuestras lecturas (barra: 19 de 20)',
  'talk.traded.diamond': 'camino de la mano entre camino de la carga, según las longitudes',
  'talk.traded.times': '{value}×',
  'talk.traded.described':
    '{setup}: la carga es {force} veces la fuerza; la mano avanza {way} veces lo que la carga.',
  'talk.traded.shown':
    'En {setup} la carga es {force} veces la fuerza. El precio: la mano avanza {way} veces lo que la carga.',
  'talk.traded.pair':
    '{more} pide {pull} veces lo que pide {less}. En {less} la mano avanza {way} veces más para subir lo mismo.',
  'talk.traded.rule':
    'Lo que se gana en fuerza se paga en camino. Donde el rombo queda a la derecha de la barra se paga más camino que la fuerza que se gana: el roce se lleva el resto.',
  'talk.traded.none': 'En ningún montaje es seguro que la fuerza sea menor que la carga.',
  'talk.traded.idea': '«Se hizo más fácil», y nadie mira la mano.',
  'talk.traded.back': 'Muéstralo con las dos manos: ¿cuánto avanza la carga, y cuánto avanza tu mano?',

  'talk.saved.ask': '¿Ahorra trabajo?',
  'talk.saved.do': 'El trabajo es fuerza por camino: el área. ¿Cuál de las dos es mayor?',
  'talk.saved.out': 'La carga: trabajo que sale',
  'talk.saved.given': 'La mano: trabajo que entra',
  'talk.saved.given.helped': 'Mano y partes que bajan: trabajo que entra',
  'talk.saved.force': '{force} N',
  'talk.saved.joules': '{joules} J',
  'talk.saved.rest': 'sobran {joules} J',
  'talk.saved.between': 'Barra: qué tan bien conocemos la fuerza (19 de 20)',
  'talk.saved.account': 'Cuenta del trabajo de {setup}, con el centro de nuestras lecturas',
  'talk.saved.described':
    '{setup}. Sale: {load} N por {rise}, {out} J. Entra: {pull} N por {travel}, {given} J. Sobran: {rest} J.',
  'talk.saved.asked': '{setup}. Sale: {load} N por {rise}. Entra: {pull} N por {travel}.',
  'talk.saved.picture': 'Trabajo que sale de cada 100 J que entran, montaje por montaje',
  'talk.saved.dot': 'según nuestras lecturas (barra: 19 de 20)',
  'talk.saved.line': 'sale tanto como entra',
  'talk.saved.percent': '{value} %',
  'talk.saved.no': 'sale menos de lo que entra',
  'talk.saved.open': 'no lo sabemos',
  'talk.saved.yes': 'mira otra vez',
  'talk.saved.efficiency': '{setup}: {percent}.',
  'talk.saved.rule':
    'Una máquina hace menor la fuerza y más largo el camino. Trabajo no ahorra: nunca sale más del que entra.',
  'talk.saved.idea': '«Es más fácil, así que es menos trabajo.»',
  'talk.saved.back':
    'Más fácil es la altura de la figura. ¿Cuánto mide de ancho? Entonces, ¿qué tan grande es el área?',

  'talk.rest.ask': '¿Adónde fue el resto?',
  'talk.rest.do': 'Entró más de lo que salió. ¿Quién se llevó la parte rayada?',
  'talk.rest.answer': 'En {setup} sobran {rest} J de {given} J: {percent} J de cada 100 J.',
  'talk.rest.cause': '{cause}: {percent} de 100 partes',
  'talk.rest.causes': 'Se lo llevó: {causes}.',
  'talk.rest.measures':
    'Cómo se reparte el resto se calcula con las medidas de este kit: ninguna lectura lo dice.',
  'talk.rest.warmth':
    'Lo que roza se calienta, demasiado poco para sentirlo. Nada se pierde del mundo, solo para la carga.',
  'talk.rest.others': 'Donde menos sobró fue en {setup}: {percent} J de cada 100 J.',
  'talk.rest.idea': '«La máquina se lo gastó.»',
  'talk.rest.back': 'Frota las palmas de las manos. ¿Qué sientes? ¿En qué lugar de esta mesa pasa eso?',

  'talk.surprised.ask': '¿Qué números nos sorprenden?',
  'talk.surprised.do': 'Un anillo con una cruz quedó fuera. ¿Qué pudo pasar ahí?',
  'talk.surprised.share': '{good} de {read} números están donde lee una mano cuidadosa.',
  'talk.surprised.strip': '{setup}, todas las lecturas de esta clase',
  'talk.surprised.one': '{setup}: {written}. Probablemente {cause}.',
  'talk.surprised.several': '{setup}: {written}. Probablemente cada vez: {cause}.',
  'talk.surprised.station':
    '{setups}: {count} números. Probablemente la mesa no estaba como dice su tarjeta: {cause}.',
  'talk.surprised.by': '{said} ({groups})',
  'talk.surprised.group': 'grupo {group}',
  'talk.surprised.too-good':
    '{setup}: {written} serían {percent} J a la salida por cada 100 J a la entrada (± {u}). Ninguna máquina hace eso: tiren otra vez, entre todos.',
  'talk.surprised.rule': 'Leer mal no es vergüenza: en todo taller se lee dos veces.',
  'talk.surprised.idea': '«Ese grupo se descuidó», o «el punto que está lejos está mal».',
  'talk.surprised.back': 'Si tiraran otra vez, ¿caería ahí de nuevo? ¿Qué mirarías primero?',

  'talk.ease.ask': '¿Cuál se sintió más fácil?',
  'talk.ease.do': 'Levanten la mano: ¿cuál fue el más fácil?',
  'talk.ease.picture': 'Mesa {table}: puesto desde lo más fácil, promedio de todos los grupos',
  'talk.ease.dot': 'puesto medio; 1 es lo más fácil',
  'talk.ease.described': '{setup}: puesto medio {place}.',
  'talk.ease.rule': 'Las manos dicen un orden, y nunca cuántas veces más fácil.',
  'talk.ease.idea': '«Los fuertes tienen razón.»',
  'talk.ease.back':
    '¿Encontrarías el más fácil con los ojos cerrados? Haz la prueba: que otra persona te lo ponga en la mano.',

  'talk.limits.ask': '¿Qué no puede mostrar este kit?',
  'talk.limits.do': '¿Qué tendrías que medir para saberlo?',
  'talk.limits.open':
    'Si sobra trabajo en {setups}: lo que entra y lo que sale están demasiado cerca para nuestras lecturas.',
  'talk.limits.alike': 'Una diferencia entre {setups}: nuestras lecturas están demasiado cerca.',
  'talk.limits.few': 'Nada seguro sobre {setups}: cuentan muy pocas lecturas.',
  'talk.limits.held':
    'Un único número bueno en {setups}: en reposo, el roce ayuda a sostener y vale cualquier fuerza de una banda.',
  'talk.limits.counted': 'Qué tan liviana se hace la fuerza en {setups}: ahí contamos y medimos.',
  'talk.limits.felt': 'Cuántas veces más fácil en {setups}: las manos dicen un orden.',
  'talk.limits.no-figure': 'La fuerza en {setups}: no cae en la escala.',
  'talk.limits.not-built': 'Nada sobre {setups}: hoy no se pudo montar.',
  'talk.limits.rule':
    'Estos números valen para este kit y para hoy. Otra tabla, otra cuerda, un día húmedo: otros números.',
  'talk.limits.idea': '«Entonces es así en todas partes.»',
  'talk.limits.back': '¿Qué cambiaría con el doble de carga? ¿Cómo lo averiguarías?',

  'discuss.one-machine': 'en las mesas hay menos de dos máquinas',
  'discuss.no-guesses': 'nadie anotó lo que suponía; el archivo de lecturas no tiene la columna "guess"',
  'discuss.nothing-pulled': 'ningún montaje en el que se tira se leyó tres veces',
  'discuss.no-account': 'hacen falta tres lecturas de un montaje en el que se tira y algo se mueve',
  'discuss.no-rest': 'en ningún montaje muestran las lecturas con seguridad que entró más de lo que salió',
  'discuss.nothing-read': 'no se leyó ningún número que se pueda juzgar',
  'discuss.no-surprise': 'ningún número llama la atención',
  'discuss.nothing-felt': 'ningún grupo ordenó dos montajes por lo que sintió',
  'discuss.no-limits': 'nada queda abierto',
} as const;
