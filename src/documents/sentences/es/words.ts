/**
 * Spanish for words that the files and the model use as names, where a sentence says them as words; and
 * units that are words and no symbols.
 */
export const words = {
  'word.lever': 'palanca',
  'word.inclined plane': 'plano inclinado',
  'word.drag on the level': 'arrastrar y rodar',
  'word.tackle': 'polipasto',
  'word.windlass': 'torno',
  'word.screw': 'tornillo',
  'word.wedge': 'cuña',
  'word.compound': 'máquina compuesta',
  'word.fixed block': 'bloque fijo',
  'word.moving block': 'bloque móvil',
  'word.length': 'longitud',
  'word.mass': 'masa',
  'word.force': 'fuerza',
  'word.angle': 'ángulo',
  'word.time': 'tiempo',
  'word.ratio': 'razón',
  'word.stiffness': 'rigidez',
  'word.acceleration': 'aceleración',
  'word.up': 'hacia arriba',
  'word.down': 'hacia abajo',
  'word.level': 'en horizontal',
  'word.down or level': 'hacia abajo o en horizontal',
  'word.table': 'mesa',
  'word.setup': 'montaje',
  'unit.turns': 'vueltas',
} as const;
