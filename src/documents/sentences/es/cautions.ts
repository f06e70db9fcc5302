/** The usual cautions in Spanish, in own words; who says so stands in the sources. */
export const cautions: Readonly<Record<string, string>> = {
  'caution.eye-protection':
    'Usa gafas de seguridad siempre que se estire un muelle, una goma elástica o un alambre fino, o cuando una masa oscile cerca de la cara.',
  'caution.falling-loads':
    'Mantén las cargas a poca altura, con una bandeja o una caja de arena debajo y nunca un pie.',
  'caution.strings-across-walkways': 'Señala la cuerda tendida a través de un paso, o cierra el paso.',
  'caution.small-pupils-and-strong-scales':
    'Los niños pequeños no deben tirar de un dinamómetro con más de unos 10 N.',
  'caution.fingers':
    'No pongas los dedos en el hueco de una palanca, una cuña o una prensa, ni cerca de un polipasto en marcha.',
  'caution.hammers-and-mallets':
    'Golpea solo con una persona adulta junto a la cuña. Revisa la cabeza del mazo antes de usarlo. Sujeta la cuña con un soporte, no con los dedos. Golpea una sola persona; las demás se apartan más de un brazo y un mango.',
  'caution.elastic-cords':
    'Estira la goma solo hasta su marca, no apuntes a nadie y acompáñala con la mano al volver.',
  'caution.heavy-load-moves':
    'Ensaya sin la carga. Nadie se pone debajo de ella ni cuesta abajo, y una sola persona da las señales. Para bajarla, sujétala con una cuerda que dé vueltas a un poste.',
  'caution.lift-limits':
    'Calcula el levantamiento, o el empuje y el arrastre, antes de un traslado previsto. Los niños no son mano de obra.',
  'caution.eye-protection.pupil': 'Ponte las gafas de seguridad.',
  'caution.falling-loads.pupil': 'Deja la carga a poca altura. No pongas los pies debajo.',
  'caution.strings-across-walkways.pupil': 'No dejes cuerdas tensas en los pasos.',
  'caution.small-pupils-and-strong-scales.pupil': 'No tires con más de unos 10 N.',
  'caution.fingers.pupil': 'No pongas los dedos en huecos ni en cuerdas que se mueven.',
  'caution.hammers-and-mallets.pupil':
    'Golpea solo con un adulto junto a la cuña. Mira primero la cabeza del mazo. Sujeta la cuña con su soporte, no con los dedos. Golpea uno solo. Los otros se ponen lejos.',
  'caution.elastic-cords.pupil':
    'Estira la goma solo hasta su marca. No apuntes a nadie. Llévala con la mano al volver.',
  'caution.heavy-load-moves.pupil':
    'Prueba primero sin carga. Ponte a un lado de la carga, no debajo. Que uno solo dé las señales. Bájala con una cuerda que dé vueltas a un poste.',
  'caution.lift-limits.pupil': 'Deja las cargas pesadas a los adultos.',
};
