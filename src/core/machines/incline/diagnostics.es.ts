import { diagnostics as carriage } from '../../parts/carriage-diagnostics.es.ts';

/** Spanish messages of the inclined plane. */
export const diagnostics = {
  ...carriage,
  'incline.beyond-the-board': {
    what: 'la pendiente es más larga que su tabla',
    here: '{at} a lo largo de la tabla; "{part}" mide {length}',
    why: 'el soporte sostiene la tabla en algún punto de su longitud',
    help: 'mide otra vez las dos: la longitud a lo largo de la tabla va del pie al soporte',
  },
  'incline.no-slope': {
    what: 'nada dice cuánto se inclina la tabla',
    here: 'falta una clavija, una elevación o un ángulo',
    why: 'el esfuerzo depende de la pendiente',
    help: 'añade "propped at: hole 3", "rise: 30 cm" o "angle: 20 deg"',
  },
  'incline.two-slopes': {
    what: 'la pendiente de la tabla se dice dos veces',
    here: '"{first}" también da la pendiente',
    why: 'dos maneras de decir una pendiente pueden no coincidir',
    help: 'deja "{first}" o "{second}", la que se midió mejor',
  },
  'incline.level': {
    what: 'la tabla está horizontal',
    here: '{angle} no es una pendiente',
    why: 'en una tabla horizontal no sube nada, así que no hay ventaja que encontrar',
    help: 'levanta la tabla, o cambia la máquina por "drag on the level"',
  },
  'incline.upright': {
    what: 'la tabla está de pie',
    here: 'con {angle} no queda dónde apoyarse',
    why: 'una carga solo se apoya en una pendiente de menos de 90 grados',
    help: 'escribe el ángulo sobre la horizontal, menor que 90 deg',
  },
  'incline.too-high': {
    what: 'la tabla se apoya más alto de lo que alcanza',
    here: '{rise} de alto en {length} de tabla',
    why: 'la elevación de una pendiente es más corta que su longitud',
    help: 'mide la altura desde el pie de la tabla, y la longitud a lo largo de ella',
  },
  'incline.length-unused': {
    what: 'se da una longitud de pendiente, pero falta su elevación',
    here: 'no se usa',
    why: 'una longitud de pendiente solo dice algo junto con "rise"',
    help: 'borra esta línea, o da la pendiente con "rise" y "slope length"',
  },
  'incline.nearly-level': {
    what: 'la tabla está casi horizontal',
    here: 'pendiente de {angle}; por debajo de {limit} el esfuerzo se conoce mal',
    why: 'un grado más o menos cambia un esfuerzo tan pequeño en una sexta parte o más',
    help: 'levanta más la tabla, o mide elevación y longitud en vez del ángulo',
  },
  'incline.steep': {
    what: 'la tabla está muy empinada',
    here: 'pendiente de {angle}; por encima de {limit} las cargas vuelcan antes de resbalar',
    why: 'la ley vale para una carga que queda plana sobre la tabla',
    help: 'baja la tabla',
  },
  'incline.read-too-near': {
    what: 'se lee cerca de la polea guía',
    here: 'allí la cuerda se inclina {angle}; por encima de {limit} cambia deprisa',
    why: 'cerca de una polea más alta que el gancho el esfuerzo crece con cada centímetro',
    help: 'lee más lejos de la polea, o baja la polea a la altura del gancho',
  },
} as const;
