/** Spanish for the trial reading of a table on arrival: what to do when it lies outside its good range. */
export const arrivals = {
  'arrival.row': 'Rodea la fila de esta lectura en la clave que se ajusta sola.',
  'arrival.outside.zero-in-place': 'Pon el indicador de {scale} en 0 tal como cuelga.',
  'arrival.outside.zero-hook-down': 'Pon el indicador de {scale} en 0, con el gancho abajo.',
  'arrival.outside.zero-level': 'Pon el indicador de {scale} en 0, en horizontal.',
  'arrival.outside.zero-along-the-slope': 'Pon el indicador de {scale} en 0 a lo largo de la pendiente.',
  'arrival.outside.zero-upside-down': 'Pon el indicador de {scale} en 0, invertido.',
  'arrival.outside.zero-angle': 'Pon el indicador de {scale} en 0 en su ángulo.',
  'arrival.outside.check': 'Compara agujeros, carga y piezas con la tarjeta.',
  'arrival.outside.again': 'Toma la lectura otra vez.',
  'arrival.outside.row': 'Rodea ahora la fila de la nueva lectura.',
  'arrival.outside.close': 'Cierra la mesa por debajo de {from} o por encima de {to}.',
  'arrival.followed': 'Sigue la lectura de llegada del montaje {setup}: {reading}.',
} as const;
