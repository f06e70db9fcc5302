/**
 * Spanish about what tables and groups have in common, and about the test that tells causes apart. A habit
 * is said of readings, never of pupils.
 */
export const classFindings = {
  'review.tables': 'Lo que dicen mesas enteras:',
  'review.groups': 'Lo que se repite:',
  'review.by-station': '{verdict}, según la estación como está: {range}',
  'review.counted-by-station':
    'Juzgadas según una estación como está, y no según su tarjeta: {count} (mira abajo).',
  'review.station': 'juzgada con la estación como está ahora: {range}',
  'finding.same mistake':
    'Mesa {table}: {groups} de {of} grupos encontraron lo que se muestra cuando pasa esto: {cause}.',
  'finding.off the list':
    'Mesa {table}: las lecturas concuerdan entre sí ({groups} grupos), pero no con la tarjeta, y nada de la lista lo explica.',
  'finding.off the list.alone':
    'Mesa {table}: lo que encontró un grupo allí no encaja ni con la tarjeta ni con nada de la lista.',
  'finding.figure': '{setup}: se encuentra {found}, se esperaba {expected}.',
  'finding.behind.station': 'Quizá la estación ha cambiado ({percent} %).',
  'finding.behind.station.from': 'Quizá la estación ha cambiado, desde el grupo {group} ({percent} %).',
  'finding.behind.card': 'Quizá la tarjeta lleva a todos ahí ({percent} %).',
  'finding.behind.card.from': 'Quizá la tarjeta lleva a todos ahí, desde el grupo {group} ({percent} %).',
  'finding.behind.kit':
    'Probablemente el aparato no es como dice el archivo del kit ({percent} %): mídelo otra vez y escríbelo ahí.',
  'finding.behind.kit.from':
    'Probablemente el aparato no es como dice el archivo del kit, desde el grupo {group} ({percent} %): mídelo otra vez y escríbelo ahí.',
  'finding.test.zero-again':
    'Para saberlo: mira el cero del dinamómetro tal como cuelga, y lee {setup} según su tarjeta.',
  'finding.test.look-at-load':
    'Para saberlo: mira la marca de la carga de {setup}, y léelo según su tarjeta.',
  'finding.test.look-at-signs':
    'Para saberlo: mira qué montaje está en qué letrero, y lee {setup} según su tarjeta.',
  'finding.test.set-up-again':
    'Para saberlo: deja la estación como está, sigue tú la tarjeta de {setup}, y léelo.',
  'finding.test.shows': '{ifStation} dice que la estación ha cambiado, {ifCard} que está bien.',
  'finding.habit': 'Grupo {group}, en {setups}: probablemente cada vez lo mismo: {cause}.',
  'test.tells': 'Para distinguirlas: {test}.',
  'test.read-again': 'lee {setup} una vez más',
  'test.zero-again': 'pon el dinamómetro a 0 tal como cuelga, y lee {setup} una vez más',
  'test.other-way': 'lee {setup} {how}',
  'test.partner': 'lee también {setup}',
  'test.other-load': 'cuelga {load} en {setup} y léelo',
  'test.count-again': 'cuenta agujeros, tramos o vueltas en {setup} según la tarjeta',
  'test.look-at-unit': 'pregunta dónde estaba el indicador en {setup}, y al lado de qué números',
  'test.check-card': 'sigue la tarjeta de {setup} paso a paso',
  'test.shows': '{figure} encaja con «{cause}»',
} as const;
