/** Los ensayos al lado de la ley lineal, como los dice la orden. */
export const trials = {
  'trials.head':
    'Intervalos buenos por la ley lineal (JCGM 100) y por ensayos al azar (JCGM 101), semilla {seed}. La ley lineal vale donde sus dos extremos quedan a menos de una división de los de los ensayos, o de media unidad de la última cifra de u si es más.',
  'trials.explain':
    'Cerca de un límite de la ley lineal, así que también se ensaya al azar (JCGM 101, semilla {seed})',
  'trials.key-stays':
    'la clave y la revisión siguen con la ley lineal: aquí su intervalo se toma con cuidado',
  'trials.linear': 'ley lineal  bueno {good}',
  'trials.linear.none': 'ley lineal  sin intervalo',
  'trials.trials': 'ensayos     bueno {good}; media {mean}, u {u}; {trials} ensayos',
  'trials.rough': 'los extremos no se han fijado a un quinto de división: tómense con cuidado',
  'trials.held': 'sujeto en cualquier punto de la banda, 19 de 20 grupos anotan {range}',
  'trials.fates': 'de los ensayos: {fates}',
  'trials.fate.reading': '{percent} % una lectura',
  'trials.fate.on its stop': '{percent} % en el tope (se anota el tope)',
  'trials.fate.off the scale': '{percent} % fuera de la escala',
  'trials.fate.moves under the scale': '{percent} % movidos por el peso del dinamómetro',
  'trials.fate.scale on the other side': '{percent} % con el dinamómetro al otro lado',
  'trials.fate.does not come back': '{percent} % que no vuelven',
  'trials.fate.no balance': '{percent} % sin equilibrio',
  'trials.near': 'cerca de: {limits}',
  'trials.near.near the stop': 'el tope del dinamómetro',
  'trials.near.near the end of the scale': 'el final de la escala',
  'trials.near.near the weight of the scale': 'el peso propio del dinamómetro',
  'trials.near.near no pull': 'ninguna fuerza',
  'trials.near.coarse graduations': 'divisiones más gruesas que toda otra duda',
  'trials.near.no figure by the linear law': 'un límite donde la ley lineal no da cifra',
  'trials.because.far from every limit': 'se usa: la ley lineal, lejos de todo límite',
  'trials.because.the linear law holds':
    'se usa: la ley lineal, sus extremos difieren en {low} y {high} (se admite {tolerance})',
  'trials.because.the linear law does not hold':
    'se usan: los ensayos, los extremos de la ley lineal difieren en {low} y {high} (se admite {tolerance})',
  'trials.because.only trials have a figure': 'se usan: los ensayos, solo ellos dan cifra',
  'trials.because.hardly any trial has a figure': 'se usa: lo que dice la ley lineal',
  'trials.because.nothing is read': 'aquí no se lee nada',
  'trials.assumes':
    'Los ensayos siguen hasta que los extremos no se mueven más de un quinto de división, y son 50000 al menos. Cada incógnita se sortea una vez por ensayo, normal o uniforme como la tienen los archivos, y aparte de las demás salvo que la compartan. Quien ve el puntero en el tope anota el tope. Los ensayos fuera de la escala no anotan nada y no cuentan en los intervalos.',
} as const;
