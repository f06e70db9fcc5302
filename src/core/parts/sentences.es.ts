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
  'hung-load.step.read-rising': 'Lee al subir la carga, sin pausa y sin tirones.',
  'hung-load.step.creep': 'Deja bajar la carga, sin pausa y sin tirones.',
  'hung-load.step.read-sinking': 'Lee al bajar la carga.',
  'hung-load.step.hold': 'Mantén la carga quieta en el aire.',
  'hung-load.step.read-rest': 'Lee cuando pare el indicador.',
  'hung-load.step.harder': 'Tira cada vez más.',
  'hung-load.step.read-peak': 'Lee el valor más alto justo antes de que se mueva.',
} as const;

export const diagnostics = {
  'sheave.stated-twice': {
    what: 'la resistencia de una roldana se dice dos veces',
    here: '"{part}" tiene además un rendimiento',
    why: 'el rendimiento y la parte de resistencia son dos maneras de escribir lo mismo, y pueden no coincidir',
    help: 'deja el que se midió y borra el otro',
  },
} as const;
