/** Libro de banco, comprobación a la llegada y qué medir ahora, como lo dicen las órdenes. */
export const bench = {
  'bench.since': 'Sigue las lecturas de banco hasta el {since}.',
  'bench.head': 'Libro de banco {file}: {used} de {readings} lecturas usadas{left}.',
  'bench.elsewhere': '; {count} de otras actividades o de montajes que hoy no se montan',
  'bench.unusable': '; {count} que no se pueden usar: "handspike check" dice por qué',
  'bench.unread': 'Libro de banco {file}: no se puede leer ninguna línea; el error de arriba dice por qué.',
  'bench.empty':
    'Libro de banco {file}: ninguna lectura todavía. "handspike bench --help" dice cómo empezar.',
  'bench.none':
    'El kit no lleva libro de banco. Añade una línea "bench book: ARCHIVO.bench.csv" a {file} para empezar uno.',
  'bench.added': 'añadida a {file}, línea {line}',
  'bench.column.line': 'línea',
  'bench.column.date': 'fecha',
  'bench.column.by': 'por',
  'bench.column.what': 'qué',
  'bench.column.reading': 'lectura',
  'bench.column.expected': 'según archivos',
  'bench.column.off': 'desvío',
  'bench.column.fitted': 'ajuste',
  'bench.column.used': 'usada',
  'bench.used.yes': 'sí',
  'bench.used.far from the files': 'no: lejos de los archivos',
  'bench.used.at odds with the others': 'no: no cuadra con las demás',
  'bench.used.left out': 'no: apartada',
  'bench.used.no figure': 'no: sin cifra',
  'bench.told': 'Lo que dicen las lecturas (19 de 20):',
  'bench.told.nothing': 'Las lecturas no dicen nada todavía.',
  'bench.column.unknown': 'incógnita',
  'bench.column.moved': 'se movió',
  'bench.column.before': 'se sabía a',
  'bench.column.now': 'se sabe a',
  'bench.others': '{count} más apenas se movieron y apenas se conocen mejor que antes.',
  'bench.priors':
    'Los márgenes de los archivos cuentan como leyes normales de la misma u; la mano, la graduación y el indicador que se pega, como dispersión de cada lectura; lo que un montaje fija de nuevo cada día, como dispersión de ese día.',
  'bench.not-converged':
    'El ajuste no se asentó: toma estas cifras con cuidado y mira otra vez las lecturas.',
  'bench.confused': 'Las lecturas no distinguen {first} de {second} (correlación {correlation}).',
  'bench.told-apart': 'Para distinguirlas: {measurement} (correlación entonces {correlation}).',
  'bench.not-told-apart': 'Nada de este kit las distinguiría.',
  'bench.scale.line':
    'Dinamómetro {scale} con masas: suma {ends} (19 de 20; las lecturas quedan a {residual} de la recta). Más allá de lo que se colgó, la recta es solo una suposición.',
  'bench.scale.at': '{correction} ± {half} en {shown}',
  'bench.scale.shift':
    'El dinamómetro {scale}, invertido, marca {shift} ± {half} de menos según la última vez que se le dio la vuelta{known}.',
  'bench.scale.known':
    '; según todas las lecturas y el archivo del kit, {shift} ± {half}, y eso sigue la clave',
  'turn-over.below-nothing':
    'Dinamómetro {scale}: invertido marcaría más que su peso ({weight}), y no puede ser. Pon su cero con el gancho abajo, pésalo otra vez y vuelve a darle la vuelta.',
  'turn-over.more-than-the-scale':
    'Dinamómetro {scale}: la diferencia de {shift} es más del doble de su peso ({weight}), y no puede ser. Pésalo otra vez y vuelve a darle la vuelta.',
  'measure.reading': 'lee una vez el montaje {setup}, {way}',
  'measure.reading.times': 'lee {times} veces el montaje {setup}, {way}, y toma la media',
  'measure.watched': 'lee una vez el montaje {setup}',
  'measure.watched.times': 'lee {times} veces el montaje {setup} y toma la media',
  'measure.hung load': 'cuelga "{load}" del dinamómetro "{scale}", dale un golpecito y léelo',
  'measure.turn over': 'dale la vuelta al dinamómetro "{scale}", cuélgalo de su gancho y léelo',
  'measure.weigh': 'pesa {part} en una balanza de cocina (a 1 g: práctica común)',
  'measure.ruler': 'mide con una regla: {what} (a medio milímetro: práctica común)',
  'next.head': 'Qué medir ahora: la medición corta que más estrecha los márgenes buenos de una mesa.',
  'next.nothing': 'nada corto estrecha un margen bueno en media graduación',
  'next.setup': '{setup}: bueno {before}, después {after}',
  'next.halves':
    '{setup}: 19 de 20 a menos de {before}, después a menos de {after}, de lo esperado; bueno sigue {good}',
  'next.same-marks': 'los extremos quedan en las mismas graduaciones mientras se lea lo que se esperaba',
  'next.width': 'así de ancho alrededor de lo que entonces se espere',
  'arrival.command.head': 'A la llegada toma una lectura por mesa; fuera de su margen bueno, mira otra vez.',
  'arrival.command.none': 'nada se lee como una sola cifra',
  'arrival.command.check': 'lee el montaje {setup}, {way}: bueno {range}',
  'arrival.command.watched': 'lee el montaje {setup}: bueno {range}',
  'arrival.command.outside': 'Fuera:',
  'arrival.command.after':
    'Tras {reading} en el montaje {setup}, los márgenes buenos de la mesa {table} son:',
  'arrival.command.row': '{good}, antes {before}',
  'arrival.command.no-figure': 'ya sin cifra',
  'arrival.command.again':
    '{reading} en el montaje {setup} está fuera de {from} a {to}: ninguna clave se ajusta a eso. Mira otra vez:',
} as const;
