/** Spanish sentences of lines and sheaves, which several machines use. */
export const sentences = {
  'part.line': 'cuerda',
  'line.field.thickness': 'grosor de la cuerda',
  'part.guide-pulley': 'polea guía',
  'sheave.field.sheave': 'qué tipo de roldana es, si nadie la midió',
  'sheave.field.efficiency': 'lo que la roldana transmite del esfuerzo',
  'sheave.field.drag-share':
    'resistencia de la roldana como parte de la media de las dos tensiones de la cuerda',
  'sheave.field.constant-drag': 'resistencia de la roldana que queda por ligera que sea la carga',
} as const;

export const diagnostics = {
  'sheave.stated-twice': {
    what: 'la resistencia de una roldana se dice dos veces',
    here: '"{part}" tiene además un rendimiento',
    why: 'el rendimiento y la parte de resistencia son dos maneras de escribir lo mismo, y pueden no coincidir',
    help: 'deja el que se midió y borra el otro',
  },
} as const;
