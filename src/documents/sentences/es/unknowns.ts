/**
 * Spanish names of what is not known exactly, as rows of the budget and as advice ("Mide ..."): each
 * brings its own article.
 */
export const unknowns = {
  'unknown.reading/hand scatter': 'la dispersión de la mano',
  'unknown.reading/graduation': 'leer a la graduación más cercana',
  'unknown.reading/tube friction': 'el indicador que se pega en el tubo',
  'unknown.reading/hand scatter on arrival': 'la dispersión de la mano en la lectura de llegada',
  'unknown.reading/graduation on arrival': 'leer a la graduación más cercana a la llegada',
  'unknown.reading/tube friction on arrival': 'el indicador que se pega en el tubo a la llegada',
  'unknown.place/latitude': 'la latitud del lugar',
  'unknown.place/height': 'la altura del lugar',
  'unknown.visit/gravity': 'la gravedad local',
  'unknown.kit/gravity': 'la gravedad local',
  'unknown.place/gravity': 'la gravedad local',
  'unknown.gravity': 'la gravedad local',
  'unknown.field-of': '{field} de {owner}',
  'unknown.stage-of': 'la etapa {stage} de {owner}',
  'unknown.at-the-start': '{what} justo antes de que se mueva',
  'unknown.kind.bearing': 'el rozamiento de {name}',
  'unknown.kind.friction': 'el rozamiento de {name}',
  'unknown.kind.rolling': 'la resistencia a rodar de {name}',
  'unknown.kind.sheave': 'la resistencia de {name}',
  'unknown.kind.share': 'la parte del esfuerzo que se queda {name}',
  'unknown.kind.constant': 'la resistencia de {name} sin carga',
  'unknown.kind.other': 'el intervalo de {name}',
  'unknown.kind.ratio': 'la razón entre el rozamiento al arrancar y al moverse de {name}',
  'origin.stated': 'declarado',
  'origin.bare': 'la mitad de la última cifra escrita',
  'origin.assumed': 'supuesto',
  'origin.exact': 'exacto',
} as const;
