/** What a group will find, where it isn't simply a number; and why a range is what it is. */
export const outcomes = {
  'outcome.reading': '{expected}',
  'outcome.band': 'anywhere from {lower} to {upper}',
  'outcome.on its stop': 'on its stop',
  'outcome.on its stop.long':
    'on its stop: the pointer would have to show {shows}, below its stop at {stop}. The value is lost; it is not zero.',
  'outcome.off the scale': 'off the scale',
  'outcome.off the scale.long': 'off the scale: the pull would show {shows}, and the scale ends at {range}.',
  'outcome.off the scale.harms': 'A pull like that stretches its spring for good.',
  'outcome.moves under the scale': 'moves under the scale',
  'outcome.moves under the scale.long':
    "moves under the scale: {needed} would do, and the scale's own weight pulls with {weight}. The scale then shows about {shows}; a group will write {from} to {to}.",
  'outcome.scale on the other side': 'scale on the other side',
  'outcome.scale on the other side.long':
    'scale on the other side: it runs by itself and has to be held back with {force}.',
  'outcome.ease': 'number {order} of {of}, the easiest first',
  'outcome.ease.short': '{order} of {of}',
  'outcome.not-defined': 'not defined here, because {because}',
  'outcome.cut-at-own-weight': "The range ends at the scale's own weight: it can't pull with less.",
  'range.from-to': '{from} to {to}',
  'list.and': 'and',
  'list.nothing': 'nothing',
  'not-defined.reason.unknown': 'it does not apply to this machine',
  'textbook.friction': 'the schoolbook leaves friction out',
  'narrows.advice':
    'Measure the {what}: the good range would shrink from {from}–{to} to {closerFrom}–{closerTo}.',
  'assumed.remark': '{what}: assumed ({source})',
} as const;
