/** Spanish messages about levers that can't be built or read. */
export const diagnostics = {
  'lever.off-the-bar': {
    what: 'este lugar no está en la barra',
    here: '{at} desde el extremo izquierdo; "{part}" mide {length}',
    why: 'los lugares son distancias desde el extremo izquierdo de la barra',
    help: 'elige un lugar entre 0 y {length}, o pon en el archivo del kit la longitud correcta de la barra',
  },
  'lever.load-on-the-fulcrum': {
    what: 'la carga cuelga del fulcro',
    here: 'el fulcro también está aquí, a {at} del extremo izquierdo',
    why: 'una carga sin brazo no gira nada, así que el dinamómetro no la notaría',
    help: 'pasa la carga, o el pasador, a otro agujero',
  },
  'lever.pull-on-the-fulcrum': {
    what: 'el esfuerzo actúa en el fulcro',
    here: 'el fulcro también está aquí, a {at} del extremo izquierdo',
    why: 'un esfuerzo sin brazo no gira nada, por grande que sea',
    help: 'pasa el dinamómetro, o el pasador, a otro agujero',
  },
  'lever.pull-lowers': {
    what: 'este esfuerzo baja la carga',
    here: 'un esfuerzo inclinado {lean} gira aquí la barra al revés',
    why: 'el gancho y las dos inclinaciones juntas ponen la línea del esfuerzo al otro lado del pasador',
    help: 'inclina menos el esfuerzo, o engancha el dinamómetro más lejos del pasador',
  },
  'lever.unstable': {
    what: 'la barra se vuelca',
    here: 'los ganchos están {above} por encima de la línea del pasador (por debajo: negativo)',
    why: 'lo que tira hacia abajo por encima del pasador, o hacia arriba por debajo, gira la barra tanto más cuanto más ha girado',
    help: 'da la vuelta a la barra, para que sus agujeros queden al otro lado del pasador o en línea con él',
  },
  'lever.short-arm': {
    what: 'un brazo muy corto',
    here: 'el brazo mide {arm}',
    why: 'un gancho no se coloca con más precisión que unos milímetros, y la lectura sigue al brazo',
    help: 'usa un agujero a {least} o más del pasador',
  },
} as const;
