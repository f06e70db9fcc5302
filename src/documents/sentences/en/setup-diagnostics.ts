/** English messages about setups that can be built but not read, or that teach little. */
export const setupDiagnostics = {
  'no-such-hole': {
    what: 'there is no such hole',
    here: '"{part}" has {holes} holes',
    why: 'holes are counted from the left (lower) end, from 1',
    help: 'choose a hole that is there (the kit file says how many), or write a distance, as "35 cm"',
  },
  'pull-below-the-stop': {
    what: 'the pointer rests on its stop',
    here: 'it would show {shows}, and its stop is at {stop}',
    why: 'a pointer on its stop tells nothing: the value is lost, it is not zero',
    help: 'zero the scale as it hangs, use a scale with a lighter moving part, or a heavier load',
  },
  'scale-range': {
    what: "the pull is beyond the scale's range",
    here: '"{scale}" reads up to {range}; it would have to show {shows}',
    why: 'a pointer past its last mark tells nothing about the force',
    help: 'use a scale with a longer range, a lighter load, or a longer arm for the pull',
  },
  'scale-overload': {
    what: 'the pull would stretch the spring for good',
    here: '"{scale}" would have to show {shows}; it ends at {range}',
    why: 'a spring pulled beyond its limit stays longer and reads wrongly ever after',
    help: 'use a stronger scale or a lighter load before anybody pulls',
  },
  'moves-under-the-scale': {
    what: "the machine moves under the scale's own weight",
    here: '{needed} would do, and "{scale}" hangs on it with {weight}; it then shows {shows}',
    why: 'a scale that hangs upside down pulls with its whole weight, whatever the hand does',
    help: 'use a lighter scale or a heavier load, let the hand carry the scale, or pull over a guide pulley',
  },
  'may-move-under-the-scale': {
    what: "the machine may move under the scale's own weight",
    here: 'about {shows} shown; "{scale}" alone pulls with {weight}',
    why: 'a scale that hangs upside down pulls with its whole weight, whatever the hand does',
    help: 'use a lighter scale or a heavier load',
  },
  'scale-on-the-other-side': {
    what: 'the scale belongs on the other side',
    here: 'the machine raises the load by itself; {force} is needed to hold it back',
    why: 'the dead weight of the machine does more than the load asks for',
    help: 'hook the scale on the other side, move the fulcrum, or take a heavier load',
  },
  'few-graduations': {
    what: 'a reading of only a few graduations',
    here: 'it shows {shows}: {graduations} graduations of {graduation} on "{scale}"',
    why: 'one graduation is then a fifth of the reading or more, so partner setups look alike',
    help: 'use a scale with finer graduations, or a heavier load',
  },
  'range-says-nothing': {
    what: 'a good range that says nothing',
    here: 'good is {from} to {to}; "{scale}" ends at {range}',
    why: 'where nearly every reading is good, no reading can be found wrong',
    help: 'measure what "handspike key" names for this setup, or choose a setup that friction decides less',
  },
  'hand-limit': {
    what: 'a pull of more than the hand limit',
    here: 'the pull is {pull}; the limit is {limit}',
    why: 'small children should not pull with more than about 10 N on a spring scale',
    help: 'use a lighter load, or raise "hand limit" in the activity file if the pupils are older',
  },
  'no-reading': {
    what: 'there is nothing to read here',
    here: '{reason}',
    why: 'a setup that gives no number gives the group nothing to write',
    help: 'choose another way of reading, or change the setup',
  },
  'scale-hangs-against-the-pull': {
    what: 'the scale hangs against the pull',
    here: 'the pull here goes {pull}; a scale that hangs "{hangs}" pulls the other way',
    why: 'a hand that pulls down holds the scale upside down, one that lifts holds it hook down',
    help: 'leave "scale hangs" out: it then follows from the setup',
  },
  'last-digit-decides': {
    what: 'a value written too shortly',
    here: 'its last digit makes up to {percent} percent of the doubt of {setups}',
    why: 'without a ± a value counts as known to half its last digit: "1 in" is anything from 0.5 in to 1.5 in',
    help: 'write as many digits as were measured ("1.00 in"), or how well it is known ("1 in ± 0.02 in")',
  },
  'no-difference-to-see': {
    what: 'partner setups that look alike',
    here: '{first} reads {firstFrom} to {firstTo}, {second} reads {secondFrom} to {secondTo}',
    why: 'where the good ranges overlap, one reading each does not show the difference',
    help: 'choose loads, holes or heights that lie further apart, or let each group repeat its readings',
  },
} as const;
