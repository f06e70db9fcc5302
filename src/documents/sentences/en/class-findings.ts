/**
 * English about what tables and groups have in common, and about the test that tells causes apart. A habit
 * is said of readings, never of pupils.
 */
export const classFindings = {
  'review.tables': 'What whole tables say:',
  'review.groups': 'What comes again and again:',
  'review.by-station': '{verdict}, by the station as it stands: {range}',
  'review.counted-by-station': 'Judged by a station as it stands, and not by its card: {count} (see below).',
  'review.station': 'judged against the station as it stands now: {range}',
  'finding.same mistake': 'Table {table}: {groups} of {of} groups found what this would leave: {cause}.',
  'finding.off the list':
    'Table {table}: the readings agree with one another ({groups} groups), but not with the card, and nothing on the list explains it.',
  'finding.off the list.alone':
    'Table {table}: what one group found there fits neither the card nor anything on the list.',
  'finding.figure': '{setup}: {found} is found, {expected} was expected.',
  'finding.behind.station': 'Perhaps the station has changed ({percent} %).',
  'finding.behind.station.from': 'Perhaps the station has changed, from group {group} on ({percent} %).',
  'finding.behind.card': 'Perhaps the card leads everybody there ({percent} %).',
  'finding.behind.card.from': 'Perhaps the card leads everybody there, from group {group} on ({percent} %).',
  'finding.behind.kit':
    'Probably the apparatus is not as the kit file says ({percent} %): measure it once more and write it there.',
  'finding.behind.kit.from':
    'Probably the apparatus is not as the kit file says, from group {group} on ({percent} %): measure it once more and write it there.',
  'finding.test.zero-again':
    'To tell: look at the zero of the scale as it hangs, and read {setup} by its card.',
  'finding.test.look-at-load': 'To tell: look at the mark on the load of {setup}, and read it by its card.',
  'finding.test.look-at-signs':
    'To tell: look which setup stands at which sign, and read {setup} by its card.',
  'finding.test.set-up-again':
    'To tell: leave the station as it stands, go through the card of {setup} yourself, and read it.',
  'finding.test.shows': '{ifStation} says that the station has changed, {ifCard} that it is sound.',
  'finding.habit': 'Group {group}, at {setups}: probably the same each time: {cause}.',
  'test.tells': 'To tell them apart: {test}.',
  'test.read-again': 'read {setup} once more',
  'test.zero-again': 'set the scale to 0 as it hangs, and read {setup} once more',
  'test.other-way': 'read {setup} {how}',
  'test.partner': 'read {setup} too',
  'test.other-load': 'hang {load} at {setup} and read it',
  'test.count-again': 'count holes, parts or turns at {setup} against the card',
  'test.look-at-unit': 'ask where the pointer stood at {setup}, and beside which numbers',
  'test.check-card': 'go through the card of {setup} step by step',
  'test.shows': '{figure} fits "{cause}"',
} as const;
