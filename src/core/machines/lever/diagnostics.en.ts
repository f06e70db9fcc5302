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
  'lever.pull-lowers': {
    what: 'this pull lowers the load',
    here: 'a pull that leans {lean} turns the bar the other way here',
    why: 'the hook, the lean and the tilt together put the line of pull on the wrong side of the pin',
    help: 'lean the pull less, or hook the scale further from the pin',
  },
  'lever.unstable': {
    what: 'the bar tips over',
    here: 'the hooks sit {above} above the line through the pin (below: negative)',
    why: 'what pulls down above the pin, or up below it, turns the bar further the more it has turned',
    help: 'turn the bar over, so that its holes lie on the other side of the pin, or in line with it',
  },
  'lever.short-arm': {
    what: 'a very short arm',
    here: 'the arm is {arm}',
    why: 'a hook sits no better than some millimetres, and the reading follows the arm',
    help: 'use a hole at least {least} from the pin',
  },
} as const;
