import type { live as english } from '../en/live.ts';

/** La clase mientras está en las mesas: lo que se le dice a un grupo de una lectura, y lo que cambió en el plan. */
export const live: Readonly<Record<keyof typeof english, string>> = {
  'live.again': 'Léanlo una vez más.',
  'live.unreadable': 'Esto no se pudo leer como un número. Miren el instrumento y escríbanlo una vez más.',
  'live.plan.route': 'El grupo {group} va ahora {route}.',
  'live.plan.no-route': 'Al grupo {group} ya no le queda ninguna mesa.',
  'live.plan.unknown': 'No se encontró un plan nuevo; sigue valiendo el de antes.',
  'live.fault': 'Algo de esta visita no se pudo calcular: {what}. Todas las lecturas se conservan.',
  'live.arrival.follows': 'La clave de esta mesa sigue esta lectura.',
};
