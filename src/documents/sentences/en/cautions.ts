/**
 * The usual cautions in own words; who says so stands in the sources. Beside each form for adults stands
 * one for the card (`.pupil`): the same caution in short sentences, as far as it is the pupil's to keep.
 */
export const cautions: Readonly<Record<string, string>> = {
  'caution.eye-protection':
    'Wear safety glasses whenever a spring, an elastic cord or a thin wire is stretched, or a mass swings near the face.',
  'caution.falling-loads': 'Keep loads low, with a tray or a sand box below them and never a foot.',
  'caution.strings-across-walkways': 'Mark a line that is stretched across a path, or close the path.',
  'caution.small-pupils-and-strong-scales':
    'Small children should not pull with more than about 10 N on a spring scale.',
  'caution.fingers':
    'Keep fingers out of the gap of a lever, a wedge or a press, and away from a running tackle.',
  'caution.hammers-and-mallets':
    'Strike only with an adult at the wedge. Check the head before use. Hold the wedge with a holder, not with fingers. One strikes; the others stand further off than an arm and the handle reach.',
  'caution.elastic-cords':
    'Stretch a cord no further than its mark, aim it at nobody, and let it back by hand.',
  'caution.heavy-load-moves':
    'Rehearse without the load. Nobody stands below it or downhill of it, and one person gives the signals. To lower it, hold it by a line with turns round a post.',
  'caution.lift-limits':
    'Work out the lift, or the push and pull, before a planned move. Children are not a workforce.',
  'caution.eye-protection.pupil': 'Wear safety glasses.',
  'caution.falling-loads.pupil': 'Keep the load low. Keep your feet out from under it.',
  'caution.strings-across-walkways.pupil': 'Keep tight lines off the paths.',
  'caution.small-pupils-and-strong-scales.pupil': 'Pull no harder than about 10 N.',
  'caution.fingers.pupil': 'Keep your fingers out of gaps and off moving lines.',
  'caution.hammers-and-mallets.pupil':
    'Strike only with an adult at the wedge. Look at the head of the mallet first. Hold the wedge with its holder, not with your fingers. One of you strikes. The others stand well back.',
  'caution.elastic-cords.pupil':
    'Stretch a cord no further than its mark. Aim it at no one. Let it back by hand.',
  'caution.heavy-load-moves.pupil':
    'Try the move first with no load. Stand to the side of the load, not below it. Let one person give the signs. Lower it on a line wound round a post.',
  'caution.lift-limits.pupil': 'Leave heavy lifts to adults.',
};
