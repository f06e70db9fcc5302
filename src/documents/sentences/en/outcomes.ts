/** What a group will find, where it isn't simply a number; and why a range is what it is. */
export const outcomes = {
  'found.reading': '{expected}',
  'found.band': 'anywhere from {lower} to {upper}',
  'found.on its stop': 'on its stop',
  'found.on its stop.long':
    'on its stop: the pointer would have to show {shows}, below its stop at {stop}. The value is lost; it is not zero.',
  'found.off the scale': 'off the scale',
  'found.off the scale.long': 'off the scale: the pull would show {shows}, and the scale ends at {range}.',
  'found.off the scale.harms': 'A pull like that stretches its spring for good.',
  'found.moves under the scale': 'moves under the scale',
  'found.moves under the scale.long':
    "moves under the scale: {needed} would do, and the scale's own weight pulls with {weight}. The scale then shows about {shows}; a group will write {from} to {to}.",
  'found.scale on the other side': 'scale on the other side',
  'found.scale on the other side.long':
    'scale on the other side: it runs by itself and has to be held back with {force}.',
  'found.ease': 'number {order} of {of}, the easiest first',
  'found.ease.short': '{order} of {of}',
  'found.ease.note': 'the easiest first',
  'found.not-defined.short': 'not defined',
  'found.not-defined': 'not defined here, because {because}',
  'found.cut-at-own-weight': "The range ends at the scale's own weight: it can't pull with less.",
  'range.from-to': '{from} to {to}',
  'list.and': 'and',
  'list.and.before-i': 'and',
  'list.nothing': 'nothing',
  'not-defined.reason.unknown': 'it does not apply to this machine',
  'setup.no-balance': 'the machine finds no balance as it is set up',
  'setup.no-scale': 'no scale is hooked on',
  'setup.nothing-to-count': 'nothing is counted or measured along here',
  'setup.no-pull-needed': 'it needs no pull: it runs by itself',
  'setup.efficiency-only-raising': 'efficiency is for raising the load',
  'setup.runs-away': 'it runs away under the weight of the scale, so there is no steady pull to reckon with',
  'setup.held-by-the-scale': "the scale's own weight holds it, so nothing comes back",
  'setup.nothing-moves': 'nothing moves while it is held',
  'setup.does-not-come-back': 'it does not come back by itself',
  'difference.scale-shows-less':
    'the scale hangs {hangs} with its zero set {zeroed}, so its own moving part makes it show {shift} less than the pull',
  'difference.scale-shows-more':
    'the scale hangs {hangs} with its zero set {zeroed}, so its own moving part makes it show {shift} more than the pull',
  'setup.no-pull-to-feel': 'there is no pull to feel',
  'narrows.advice':
    'Measure the {what}: the good range would shrink from {from}–{to} to {closerFrom}–{closerTo}.',
  'narrows.little': 'No measurement would narrow this by a graduation; the largest doubt is the {what}.',
  'assumed.remark': '{what}: assumed ({source})',
} as const;
