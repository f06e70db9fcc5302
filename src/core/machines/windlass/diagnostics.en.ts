/** English text of the windlass's diagnostics, by code. */
export const diagnostics = {
  'windlass.no-wheel': {
    what: 'the windlass has no wheel',
    here: '"{part}" has no wheel diameter',
    why: 'without the size of the wheel nothing can be said about the pull',
    help: 'give the wheel diameter in the kit, or turn it by its crank',
  },
  'windlass.no-crank': {
    what: 'the windlass has no crank',
    here: '"{part}" has no crank length',
    why: 'without the length of the crank nothing can be said about the pull',
    help: 'give the crank length in the kit, or turn it by its wheel',
  },
  'windlass.nothing-to-turn-it': {
    what: 'nothing turns this windlass',
    here: '"{part}" has neither a wheel diameter nor a crank length',
    why: 'the hand needs a wheel or a crank to turn the axle',
    help: 'measure the wheel across, or from the axle to the handle, and write it in the kit',
  },
  'windlass.wheel-or-crank': {
    what: 'it is not said what turns the windlass',
    here: '"{part}" has a wheel and a crank',
    why: 'the two have different arms, so the pull differs',
    help: 'write "turned by: wheel" or "turned by: crank"',
  },
  'windlass.wide-bearing': {
    what: 'the bearing is wider than the axle',
    here: '{bearing} across, on an axle of {axle}',
    why: 'the journal is part of the axle or runs inside it, so it is not wider',
    help: 'look whether one of the two is a radius, and write both as diameters',
  },
  'windlass.stiff-line': {
    what: 'the line is thick for this axle',
    here: 'an axle of {axle} bends a line of {line} closer than {times} times its thickness',
    why: 'the stiffness of the line is not reckoned with, and here it counts',
    help: 'take a thinner line, or a thicker axle',
  },
  'windlass.costs-force': {
    what: 'this windlass asks for more than the load',
    here: 'the pull has an arm of {pull}, the load one of {load}',
    why: 'a small wheel on a big axle gains travel and costs force',
    help: 'fine if that is to be shown; if not, look whether the diameters are exchanged',
  },
} as const;
