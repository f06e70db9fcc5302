/** English messages about levers that can't be built or read. */
export const diagnostics = {
  'lever.off-the-bar': {
    what: 'this place is not on the bar',
    here: '{at} from the left end; "{part}" is {length} long',
    why: 'places are distances from the left end of the bar',
    help: 'choose a place between 0 and {length}, or give the bar its right length in the kit file',
  },
  'lever.load-on-the-fulcrum': {
    what: 'the load hangs on the fulcrum',
    here: 'the fulcrum is here too, {at} from the left end',
    why: 'a load without an arm turns nothing, so the scale would read nothing of it',
    help: 'move the load, or the pin, to another hole',
  },
  'lever.pull-on-the-fulcrum': {
    what: 'the pull acts on the fulcrum',
    here: 'the fulcrum is here too, {at} from the left end',
    why: 'a pull without an arm turns nothing, however hard it is',
    help: 'move the scale, or the pin, to another hole',
  },
  'lever.unstable': {
    what: 'the holes lie above the pin: the bar tips over',
    here: 'hooks hang {above} above the line through the pin',
    why: 'a bar whose loads hang above its pin flips to one side and does not come back',
    help: 'turn the bar over, so that its holes lie on or below the line through the pin',
  },
  'lever.short-arm': {
    what: 'a very short arm',
    here: 'the arm is {arm}',
    why: 'a hook sits no better than some millimetres, and the reading follows the arm',
    help: 'use a hole at least {least} from the pin',
  },
} as const;
