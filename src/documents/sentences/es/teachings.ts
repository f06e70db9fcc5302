/** Spanish of what to teach in the time there is. */
export const teachings = {
  'teach.head': 'Qué enseñar en {count} clases ({lengths}):',
  'teach.head.one': 'Qué enseñar en una clase de {length}:',
  'teach.class': 'Clase {class}.',
  'teach.kind.own-tables': 'Cada clase tiene sus mesas, y todos los grupos las hacen todas.',
  'teach.kind.carried-over': 'La rotación se interrumpe con el timbre y sigue en la clase siguiente.',
  'teach.kind.shared-out': 'Los grupos se reparten lo que no todos pueden hacer.',
  'teach.all-tables': 'todas las mesas',
  'teach.tables': 'mesas {tables}',
  'teach.route': 'Grupo {group}: {routes}',
  'teach.period': 'Clase {period}: {tables}; el último grupo termina a las {ends}',
  'teach.period.after': 'Clase {period}: {tables}; el último grupo termina a los {ends}',
  'teach.period.nothing': 'Clase {period}: no queda nada por hacer',
  'teach.left-out': 'Se quitan para todos: {tables}',
  'teach.not-done': 'No hacen la mesa {table}: grupo {groups}',
  'teach.all-in': 'No se quita nada',
  'teach.nothing': 'No cabe nada: ninguna mesa tiene tiempo para todos los grupos.',
  'teach.cut-short':
    'La búsqueda terminó antes de probar todas las combinaciones de mesas: otra podría quitar menos.',
} as const;
