import { sentences as carriage } from '../../parts/carriage-sentences.es.ts';
import { mistakeSentences } from './mistakes.es.ts';

/** Spanish sentences of the inclined plane; facts stand in braces. */
export const sentences = {
  ...mistakeSentences,
  ...carriage,
  'machine.inclined plane': 'Plano inclinado',
  'inclined plane.about': 'Una tabla en pendiente. Poca fuerza en un camino largo sube una gran carga.',
  'inclined plane.school': 'Plano inclinado',
  'inclined plane.does': 'Una pendiente sostiene parte de la carga mientras la subes.',
  'inclined plane.trades': 'Fuerza por un camino más largo.',
  'inclined plane.pays': 'Un camino más largo que en vertical.',
  'inclined plane.lives':
    'Rampa de un cobertizo de botes, varadero, carretera de montaña, tobogán, tabla de carga.',
  'incline.board': 'tabla',
  'incline.field.prop-at':
    'a qué distancia, tabla arriba, está el soporte; si no se pone, en su extremo alto',
  'incline.field.first-pin': 'altura de la primera clavija del soporte sobre el pie de la tabla',
  'incline.field.pin-spacing': 'altura de una clavija a la siguiente',
  'incline.field.pins': 'cuántas clavijas tiene el soporte',
  'incline.field.pin-heights':
    'altura de cada clavija sobre el pie de la tabla, si no están a distancias iguales',
  'incline.field.propped-at':
    'la clavija del soporte (hole 3), o la altura del soporte sobre el pie de la tabla',
  'incline.field.rise': 'cuánto sube la tabla',
  'incline.field.slope-length': 'en qué longitud a lo largo de la tabla sube; si no se pone, en toda',
  'incline.field.angle': 'ángulo de la tabla sobre la horizontal, tal como se midió',
  'incline.angle': 'ángulo de la tabla',
  'incline.ideal-advantage': 'ventaja ideal: longitud entre altura',
  'incline.step.pin': 'Apoya la tabla en la clavija {hole}, a {length} del pie.',
  'incline.step.rise': 'Sube la tabla {rise}, a {length} del pie.',
  'incline.step.angle': 'Inclina la tabla {angle}.',
  'incline.step.set-wheels': 'Pon el carrito al pie de la tabla.',
  'incline.step.set-bare-base': 'Pon el bloque al pie de la tabla.',
  'incline.step.lay-rollers': 'Coloca los rodillos atravesados al pie de la tabla.',
  'incline.step.pull-along': 'Tira tabla arriba.',
  'incline.step.pull-along-hand': 'Tira de la cuerda tabla arriba.',
  'incline.reset.wheels': 'Pon el carrito al pie de la tabla.',
  'incline.reset.bare-base': 'Pon el bloque al pie de la tabla.',
  'incline.reset.rollers': 'Pon el tablón al pie de la tabla.',
  'incline.reset.load': 'Devuelve la carga a la bandeja.',
  'incline.reset.load-and-scale': 'Devuelve la carga y el dinamómetro a la bandeja.',
  'incline.reset.pin': 'Deja la tabla en la clavija {hole} del soporte.',
  'incline.reset.rise': 'Deja la tabla subida {rise}, a {length} del pie.',
  'incline.reset.angle': 'Deja la tabla inclinada {angle}.',
  'incline.mistake.pin-too-high': 'la tabla estaba una clavija demasiado alta',
  'incline.mistake.pin-too-low': 'la tabla estaba una clavija demasiado baja',
  'incline.mistake.string-not-along': 'la cuerda no iba a lo largo de la tabla, unos 10 grados desviada',
  'incline.mistake.read-too-near': 'se leyó demasiado cerca de la polea guía, a la mitad de la distancia',
} as const;
