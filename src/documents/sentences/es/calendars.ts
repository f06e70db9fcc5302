/** Spanish of a period in a calendar. */
export const calendars = {
  'calendar.class': 'Clase {class}: {what}',
  'calendar.introduction': 'Introducción',
  'calendar.talk': 'Conversación final',
  'calendar.break': 'Descanso',
  'calendar.group': 'grupo {group}',
  'calendar.stay': 'Grupo {group}: mesa {table}',
  'calendar.wait': 'Grupo {group}: mientras espera',
  'calendar.setup': 'Más por descubrir: montaje {setup} en la mesa {table}',
  'calendar.stand': 'Mesa {table}: aquí está {adult}',
} as const;
