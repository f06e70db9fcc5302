/** Spanish about what a readings file says, where that is not as plain as a number. */
export const readingsIn = {
  'reading.bound': 'esto dice lo que no es, y ningún número: escribe la marca más cercana a la aguja',
  'reading.unclear-figures':
    'estas cifras pueden ser un número o varios: escribe un número, o cada uno con punto y coma detrás',
  'reading.percent': 'un porcentaje no es una lectura: escribe lo que muestra el instrumento',
  'reading.date':
    'una hoja de cálculo hizo de esto una fecha o una hora: vuelve a escribir lo que escribió el grupo, como texto',
  'reading.spreadsheet-error':
    'una hoja de cálculo no pudo calcular esta celda: vuelve a escribir lo que escribió el grupo',
  'reading.formula': 'esto es una fórmula y no una lectura: escribe lo que escribió el grupo',
  'reading.mixed-units': 'varias lecturas en varias unidades: escríbelas todas en una unidad',
  'reading.two-meanings': 'puede ser {used} o {otherwise}: se toma como {used}',
  'reading.misspelt-digit': 'hay letras entre las cifras: se toma como {read}',
  'reading.remark': 'escrito al lado: {remark}',
  'reading.partly-unread': 'sin leer entre ellas: {written}',
  'review.hedged': 'el grupo no estaba seguro',
  'review.range': 'de - a, {middle} ± {half}: se juzga el medio',
  'review.repeats': '{count} lecturas: se juzga la del medio, {middle}',
  'review.notes': 'Cómo se leyó el archivo:',
  'readings.column-a-setup':
    'Tiene una columna por montaje, {columns} en total: donde un grupo dejó una en blanco, no se leyó nada.',
  'readings.column-a-group':
    'Tiene una columna por grupo, {columns} en total: donde una está en blanco, no se leyó nada.',
  'readings.guessed-columns':
    'No se entendió ningún encabezado. Por lo que hay en ellas, la columna {setup} es el montaje, la {reading} la lectura y la {group} el grupo. Nómbralas en una primera fila: grupo, montaje, lectura, nota.',
  'readings.above-heading': 'encima del encabezado, y no es una lectura: {text}',
  'readings.heading-again': 'otra vez el encabezado: {text}',
  'readings.unused-columns': 'Columnas que se guardan y no se usan: {names}.',
  'readings.no-group':
    'aquí no se nombra ningún grupo, y arriba el grupo {above}. Si la celda estaba unida con esa, escribe {above} también aquí.',
  'readings.same-again':
    'otra vez el grupo {group} en {setup}, igual que en la línea {line}: cuentan las dos. Si es una copia, quita una.',
  'readings.another':
    'el grupo {group} tiene otra lectura en {setup} en la línea {line}: cuentan las dos. Si esta corrige aquella, quita aquella.',
  'readings.empty-row': 'una fila sin lectura: {text}',
} as const;
