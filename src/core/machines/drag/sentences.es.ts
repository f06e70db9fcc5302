import { sentences as carriage } from '../../parts/carriage-sentences.es.ts';
import { mistakeSentences } from './mistakes.es.ts';

/** Spanish sentences of dragging and rolling on the level; facts stand in braces. */
export const sentences = {
  ...mistakeSentences,
  ...carriage,
  'machine.drag on the level': 'Arrastrar y rodar',
  'drag on the level.about': 'Una carga en el suelo. Con ruedas o rodillos se mueve con poca fuerza.',
  'drag on the level.school': 'Rodillos y ruedas',
  'drag on the level.does': 'Ruedan donde una base desnuda rozaría.',
  'drag on the level.trades': 'Nada: quita rozamiento.',
  'drag on the level.pays': 'Hay que llevar los rodillos otra vez delante.',
  'drag on the level.lives': 'Carro, tren, troncos bajo un bote, silla de oficina.',
  'drag.pull': 'esfuerzo en la cuerda, avanzando',
  'drag.let-back': 'esfuerzo en la cuerda, dejándola volver (por debajo de 0: no vuelve)',
  'drag.no-useful-work': 'en horizontal no sube nada, así que no se hace trabajo útil',
  'drag.step.set-wheels': 'Pon el carrito en lo llano, con sitio delante.',
  'drag.step.set-bare-base': 'Pon el bloque en lo llano, con sitio delante.',
  'drag.step.lay-rollers': 'Coloca los rodillos uno junto a otro, atravesados.',
  'drag.step.pull-level': 'Tira recto y en horizontal.',
  'drag.step.pull-level-hand': 'Tira de la cuerda recto y en horizontal.',
  'drag.reset.load': 'Devuelve la carga a su bandeja.',
  'drag.reset.string': 'Deja la cuerda recta.',
  'drag.reset.scale': 'Quita el dinamómetro de la cuerda.',
  'drag.reset.wheels': 'Devuelve el carrito a la salida.',
  'drag.reset.bare-base': 'Devuelve el bloque a la salida.',
  'drag.reset.rollers': 'Devuelve el tablón a la salida.',
  'drag.mistake.string-not-level': 'la cuerda no iba horizontal, unos 15 grados hacia arriba',
  'drag.mistake.read-too-near': 'se leyó demasiado cerca de la polea guía, a la mitad de la distancia',
} as const;
