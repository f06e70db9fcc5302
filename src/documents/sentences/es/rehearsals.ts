/** Spanish around a rehearsal: a class that never was, for the night before. */
export const rehearsals = {
  'rehearsal.title':
    '{groups} grupos que nunca existieron, y entre ellos {mistakes} errores (semilla {seed})',
  'rehearsal.task':
    'Toma la clave de respuestas. Busca las lecturas que mirarías otra vez y decide qué dirías en la mesa. Después mira las respuestas.',
  'rehearsal.some-unseen':
    'Un error puede seguir: una costumbre de un grupo, o una estación tal como la dejó el grupo anterior.',
  'rehearsal.column.setup': 'montaje',
  'rehearsal.column.unit': 'marcas',
  'rehearsal.how-to-answer': 'Las respuestas: la misma orden con --answers.',
  'rehearsal.answers': 'Qué pasó y qué decir',
  'rehearsal.answer': '{n}. {where}: {cause}.',
  'rehearsal.where.station': 'Mesa {table}, desde el grupo {group}',
  'rehearsal.where': 'Mesa {table}, grupo {group}',
  'rehearsal.answer.wrote': 'Se ve en {readings}.',
  'rehearsal.answer.say': 'Al grupo: {text}',
  'rehearsal.answer.see': 'Para ti: {text}',
  'rehearsal.answer.program': 'El programa: {thinks}.',
  'rehearsal.thinks.first.one': 'lo nombra primero',
  'rehearsal.thinks.first': 'lo nombra primero en {of} de {all} lecturas',
  'rehearsal.thinks.second.one': 'lo tiene entre los dos primeros',
  'rehearsal.thinks.second': 'lo tiene entre los dos primeros en {of} de {all} lecturas',
  'rehearsal.thinks.other.one': 'pide mirar otra vez y nombra antes otra cosa: {causes}',
  'rehearsal.thinks.other': 'pide mirar otra vez {of} de {all} lecturas y nombra antes otra cosa: {causes}',
  'rehearsal.thinks.not-seen': 'no lo ve: los números son los que podría dar una buena lectura',
  'rehearsal.thinks.station':
    'dice que la estación ha cambiado, y juzga a estos grupos por la estación tal como está',
  'rehearsal.sound': 'Buenas lecturas que el programa habría mirado otra vez: {readings}.',
  'rehearsal.sound.none': 'Ninguna buena lectura se miró otra vez.',
  'rehearsal.fewer': 'Solo cupieron {count} de {wished} errores: estos montajes no dan para más.',
  'rehearsal.sheet': 'Ensayo',
  'rehearsal.sheet.about': 'para adultos, la noche de antes: estos grupos nunca existieron',
  'rehearsal.sheet.answers-behind': 'Lo que pasó está en la página siguiente. No mires todavía.',
  'rehearsal.sheet.where': 'dónde y qué se escribió',
  'rehearsal.sheet.happened': 'qué pasó',
  'rehearsal.sheet.group': 'al grupo',
  'rehearsal.sheet.teacher': 'para ti: cómo verlo',
} as const;
