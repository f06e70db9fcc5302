/** The usual cautions in own words; who says so stands in the sources. */
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
    'Check the head before use. Hold the wedge with a holder, not with fingers. One strikes; the others stand further off than an arm and the handle reach.',
  'caution.elastic-cords':
    'Stretch a cord no further than its mark, aim it at nobody, and let it back by hand.',
  'caution.heavy-load-moves':
    'Rehearse without the load. Nobody stands below it or downhill of it, and one person gives the signals. To lower it, hold it by a line with turns round a post.',
  'caution.lift-limits':
    'Work out the lift, or the push and pull, before a planned move. Children are not a workforce.',
};
