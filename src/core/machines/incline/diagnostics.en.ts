import { diagnostics as carriage } from '../../parts/carriage-diagnostics.en.ts';

/** English messages of the inclined plane. */
export const diagnostics = {
  ...carriage,
  'incline.beyond-the-board': {
    what: 'the slope is longer than its board',
    here: '{at} along the board; "{part}" is {length} long',
    why: 'the prop holds the board somewhere along its length',
    help: 'measure both again: the length along the board from its foot to the prop',
  },
  'incline.no-slope': {
    what: 'nothing says how steep the board is',
    here: 'needs a pin, a rise or an angle',
    why: 'the pull follows from the slope',
    help: 'add one of "propped at: hole 3", "rise: 30 cm" or "angle: 20 deg"',
  },
  'incline.two-slopes': {
    what: 'the slope of the board is stated twice',
    here: '"{first}" gives the slope as well',
    why: 'two ways to say one slope need not agree',
    help: 'keep "{first}" or "{second}", the one that was measured best',
  },
  'incline.level': {
    what: 'the board is level',
    here: '{angle} is no slope',
    why: 'on a level board nothing is raised, so there is no advantage to find',
    help: 'prop the board up, or make the machine "drag on the level"',
  },
  'incline.upright': {
    what: 'the board stands upright',
    here: '{angle} leaves nothing to lie on',
    why: 'a load rests on a slope only below 90 degrees',
    help: 'write the angle above the level, below 90 deg',
  },
  'incline.too-high': {
    what: 'the board is propped higher than it reaches',
    here: '{rise} high over {length} of board',
    why: 'the rise of a slope is shorter than its length',
    help: 'measure the height from the foot of the board, and the length along it',
  },
  'incline.length-unused': {
    what: 'a slope length is stated, but no rise goes with it',
    here: 'is not used',
    why: 'a slope length only means something together with "rise"',
    help: 'delete this line, or state the slope by "rise" and "slope length"',
  },
  'incline.nearly-level': {
    what: 'the board is nearly level',
    here: 'slope of {angle}; below {limit} the pull is badly known',
    why: 'one degree more or less changes so small a pull by a sixth and more',
    help: 'prop the board higher, or measure rise and length instead of the angle',
  },
  'incline.steep': {
    what: 'the board is very steep',
    here: 'slope of {angle}; above {limit} loads tip before they slide',
    why: 'the law is about a load that stays flat on the board',
    help: 'prop the board lower',
  },
  'incline.read-too-near': {
    what: 'it is read close to the guide pulley',
    here: 'the string leans {angle} there; more than {limit} changes fast',
    why: 'near a pulley that stands higher than the hook the pull grows with every centimetre',
    help: 'read farther from the pulley, or lower the pulley to the height of the hook',
  },
} as const;
