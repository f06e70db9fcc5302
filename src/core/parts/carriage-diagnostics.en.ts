/** English messages about what a load rides on and about the string that pulls it. */
export const diagnostics = {
  'carriage.axle-too-thick': {
    what: 'the axle is thicker than its wheel',
    here: 'axle of {axle} in a wheel of {wheel}',
    why: 'the axle goes through the wheel, so it has to be the thinner of the two',
    help: 'measure both diameters again; a radius may have been written for one of them',
  },
  'carriage.two-rollings': {
    what: 'the rolling of the wheels is stated twice',
    here: '"{part}" has a rolling arm of {arm} as well',
    why: 'a rolling arm and a rolling coefficient are two ways to write the same thing',
    help: 'keep the one that was measured and delete the other',
  },
  'carriage.faces-unused': {
    what: 'faces are named, but nothing rubs on them',
    here: 'the load rides on "{part}" ({kind})',
    why: 'only a block on its bare base rubs; wheels and rollers have their own drag',
    help: 'delete this line, or put a block where the load rides',
  },
  'string.no-pulley': {
    what: 'there is no guide pulley here',
    here: '"{field}" is about a guide pulley',
    why: 'without a guide pulley the hand pulls straight at the load',
    help: 'name one with "guide pulley:", or delete this line',
  },
  'string.two-leans': {
    what: 'the lean of the string is stated twice',
    here: 'a pulley above the hook gives the lean as well',
    why: 'the height of the pulley and the place of reading already settle the angle',
    help: 'keep either "string leans" or "pulley above the hook" with "read at"',
  },
  'string.no-distance': {
    what: 'the string comes from above, but from how far is not said',
    here: 'needs the distance at which the scale is read',
    why: 'the nearer the load comes to the pulley, the steeper the string pulls',
    help: 'add "read at: 40 cm", the distance from the hook to the pulley at the reading',
  },
  'string.two-directions': {
    what: 'the string leaves the guide pulley in two directions',
    here: '"after the pulley" says it as well',
    why: 'a string leaves a pulley one way',
    help: 'keep either "after the pulley" or "string leaves at"',
  },
  'string.leans-too-far': {
    what: 'the string pulls away from the surface',
    here: '{lean} leaves no pull along it',
    why: 'a string square to the surface, or leaning backwards, does not pull the load on',
    help: 'write an angle between -90 deg and 90 deg; along the surface is 0 deg',
  },
} as const;
