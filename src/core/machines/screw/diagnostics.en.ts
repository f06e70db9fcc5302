/** English of the screw's diagnostics: headline, what stands after the caret, why, and what can be done. */
export const diagnostics = {
  'screw.no-diameter': {
    what: 'the screw has no diameter',
    here: 'neither a thread name nor a diameter is written',
    why: 'the lead angle, and with it the friction, depends on how thick the screw is',
    help: 'write "thread: M8" or "diameter: 8 mm"',
  },
  'screw.no-pitch': {
    what: 'the screw has no pitch',
    here: 'neither a thread name, a pitch nor threads per inch is written',
    why: 'the travel of one turn follows from the pitch',
    help: 'write "thread: M8", "pitch: 1.25 mm" or "threads per inch: 13"',
  },
  'screw.unknown-thread': {
    what: 'this is no thread name',
    here: 'no standard thread is called "{thread}"',
    why: 'a thread name stands for a diameter and a pitch in a standard table',
    help: 'write a name like M8, M10x1.25 or 1/2-13, or write diameter and pitch',
  },
  'screw.said-twice': {
    what: 'the thread is written twice, with two meanings',
    here: '{written} here, {named} by "{other}"',
    why: 'two values for one measure leave open which one the key is for',
    help: 'keep one of the two',
  },
  'screw.not-standard': {
    what: 'no standard thread has this diameter and pitch',
    here: 'a pitch of {pitch} on {diameter}; nearest by pitch alone: {nearest}',
    why: 'most screws in a kit are bought ones, so a strange pitch is more often a slip of the ruler',
    help: 'measure over ten threads and divide by ten, or leave it if the screw is home-made',
  },
  'screw.mean-diameter': {
    what: 'the mean diameter is not inside the thread',
    here: '{mean}, but the thread goes from its root to {diameter}',
    why: 'the threads touch half-way between root and outside',
    help: 'leave the mean diameter out, or measure it again',
  },
  'screw.pitch-too-coarse': {
    what: 'the thread is deeper than the screw is thick',
    here: 'a pitch of {pitch} on a diameter of {diameter}',
    why: 'a thread of this shape would leave no core',
    help: 'check the units of pitch and diameter; threads per inch is not a pitch',
  },
  'screw.turns-and-travel': {
    what: 'both turns and travel are given',
    here: '{turns} turns, and a travel of {travel}',
    why: 'one of the two is set and the other is read',
    help: 'leave out the one that the group is to find',
  },
  'screw.steep': {
    what: 'the thread is steep',
    here: 'its lead angle is {lead}; up to {most} the law is tried',
    why: 'on a steep thread the tilt of the flank and the lead are no longer apart',
    help: 'write "form: square" if it is, or read turns and travel instead of the pull',
  },
  'screw.mostly-friction': {
    what: 'this pull is mostly friction',
    here: 'only {share} of the work reaches the load',
    why: 'friction of threads differs by a factor of two between screws that look alike',
    help: 'measure the pull once on this screw and write the thread friction that it gives',
  },
} as const;
