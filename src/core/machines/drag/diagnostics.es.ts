import { diagnostics as carriage } from '../../parts/carriage-diagnostics.es.ts';

/** Spanish messages of dragging and rolling on the level. */
export const diagnostics = {
  ...carriage,
  'drag.leans-much': {
    what: 'la cuerda levanta casi tanto como arrastra',
    here: 'se inclina {angle} sobre el suelo; más de {limit} vuelca o levanta la carga',
    why: 'la ley vale para una carga que queda plana sobre el suelo',
    help: 'tira más bajo, a la altura del gancho',
  },
} as const;
