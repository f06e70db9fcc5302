/** Spanish about what a class found: figures from its own numbers, never about anybody. */
export const classSummary = {
  'summary.title': 'Lo que halló la clase, según sus propios números (entre paréntesis: 19 de 20):',
  'summary.column.setup': 'montaje',
  'summary.column.count': 'cuentan',
  'summary.column.middle': 'centro',
  'summary.column.scatter': 'dispersión',
  'summary.column.pull': 'fuerza en el gancho',
  'summary.column.advantage': 'carga entre fuerza',
  'summary.column.efficiency': 'trabajo útil',
  'summary.count': '{count} de {of}',
  'summary.range': '{value} ({from} a {to})',
  'summary.percent': '{value} % ({from} a {to} %)',
  'summary.not-said': 'No se dice de {setups}: {because}.',
  'summary.left-out': 'Fuera, porque un error es más probable que una buena lectura:',
  'summary.left-out.station': 'Fuera, porque la estación probablemente no está como dice su tarjeta:',
  'summary.left-out.one': '{readings} ({cause})',
  'summary.left-out.groups': 'grupos {readings} ({cause})',
  'summary.without-number': 'Sin número: {setups}.',
  'summary.hand':
    'Las lecturas de esta clase se dispersan un {share} % de su valor, según todas sus fuerzas juntas; la clave supone un {assumed} %.',
  'summary.how':
    'Centro: la mediana. Dispersión: 1,4826 veces la distancia mediana a ella, corregida para pocas lecturas. Lo que no se sabe de carga, dinamómetro y longitudes está en los paréntesis, y también el redondeo a una división.',
  'summary.pairs': 'Parejas, una al lado de la otra:',
  'summary.pair': '{more} pide {ratio} veces lo que pide {less}; la clave tiene {expected}.',
  'summary.pair.without-key': '{more} pide {ratio} veces lo que pide {less}.',
  'summary.pair.not-said': '{pairs}: {because}.',
  'summary.pair.against': '{more} frente a {less}',
  'summary.pair.groups':
    'De {groups} grupos que leyeron las dos, {more} lo hallaron así, {less} al revés y {same} sin diferencia (el azar solo hace otro tanto en un {percent} %).',
  'summary.pair.few-groups': 'Grupos que leyeron las dos: {groups}; que lo hallaron así: {more}.',
  'summary.felt': 'Qué tan fácil se sintió:',
  'summary.felt.order': 'Mesa {table}, desde lo más fácil, con puestos medios: {order}.',
  'summary.felt.pair':
    'De {groups} grupos, {less} sintieron más fácil {first}, {more} sintieron más fácil {second} y {same} sin diferencia (el azar solo hace otro tanto en un {percent} %).',
  'summary.felt.few': '{first} más fácil: {less}; {second} más fácil: {more}; sin diferencia: {same}.',
  'summary.felt.agreement':
    '{groups} grupos coinciden con W = {w} (0 nada, 1 todos igual; el azar solo trae otro tanto en un {percent} %).',
  'summary.felt.none': 'Ningún grupo los ordenó todos, o nadie halló diferencia.',
  'summary.felt.incomplete': 'Grupos que dejaron uno fuera: {count}.',
  'summary.felt.as-key': 'La clave espera el mismo orden.',
  'summary.felt.not-as-key': 'La clave espera otro orden: {order}.',
  'summary.work': 'Adónde fue el trabajo:',
  'summary.work.at': '{setup}, para {travel} de recorrido: la fuerza dio {pulled} J, la carga tomó {out} J.',
  'summary.work.helped':
    '{setup}, para {travel} de recorrido: la fuerza dio {pulled} J y las partes que bajan {helped} J, la carga tomó {out} J.',
  'summary.work.lost': 'Entraron {rest} J más de los que salieron.',
  'summary.work.won': 'Salieron {rest} J más de los que entraron, según estos números.',
  'summary.work.alike': 'Lo que entra y lo que sale es lo mismo, hasta donde lo dicen las lecturas.',
  'summary.saved': '¿Ahorró trabajo la máquina?',
  'summary.saved.no': 'No, en {setups}: entró más trabajo del que salió (más seguro que 19 de 20).',
  'summary.saved.open':
    'En {setups} los números lo dejan abierto: lo que entra y lo que sale están demasiado cerca para lo que dicen las lecturas.',
  'summary.saved.yes':
    'En {setups} el centro de las lecturas pide más trabajo a la salida que a la entrada. Ninguna máquina hace eso: hay que leer otra vez antes de hablarlo en clase.',
  'summary.saved.least':
    'Lo menos seguro es {setup}: solo según sus lecturas, «no se ahorró trabajo» tiene una probabilidad del {percent} %.',
  'summary.saved.nothing':
    'Todavía no se puede decir nada: hacen falta tres lecturas de un montaje en el que se tira y algo se mueve.',
  'summary.saved.force':
    'Lo que se ahorró es fuerza: la carga es hasta {advantage} veces la fuerza ({setup}), en un camino más largo.',
  'summary.surprising':
    'Sorprende: por sí sola, más trabajo a la salida que a la entrada. Merece otra mirada entre todos, con el dinamómetro en la mano:',
  'summary.surprising.one': '{setup}: {written} da un {percent} % (± {u} %); grupos: {groups}',
  'summary.surprising.station':
    'Sin listar, porque la estación probablemente no está como dice su tarjeta: {count}.',
  'summary.too-few': 'hacen falta {least} lecturas que cuenten, y hay menos',
  'summary.not-pulled': 'allí no se lee ninguna fuerza',
  'summary.held-still': 'en reposo vale cualquier lectura de una banda, y nada se mueve',
  'summary.scale-pulls':
    'el propio peso del dinamómetro la mueve, así que lo que muestra no es la fuerza de la máquina',
  'summary.no-figure': 'la fuerza no cae allí en la escala',
  'summary.nothing-read': 'no se leyó nada que cuente',
  'summary.pair-too-few': 'hacen falta tres lecturas que cuenten en las dos',
  'summary.pair-of-nothing': 'una de las dos no pide nada',
} as const;
