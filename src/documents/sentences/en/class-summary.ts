/** English about what a class found: figures from its own numbers, never about anybody. */
export const classSummary = {
  'summary.title': 'What the class found, by its own numbers (in brackets: 19 of 20):',
  'summary.column.setup': 'setup',
  'summary.column.count': 'counted',
  'summary.column.middle': 'middle',
  'summary.column.scatter': 'scatter',
  'summary.column.pull': 'pull at the hook',
  'summary.column.advantage': 'load over pull',
  'summary.column.efficiency': 'work out of work in',
  'summary.count': '{count} of {of}',
  'summary.range': '{value} ({from} to {to})',
  'summary.percent': '{value} % ({from} to {to} %)',
  'summary.not-said': 'Not said of {setups}: {because}.',
  'summary.left-out': 'Left out, since a mistake is more probable than a good reading:',
  'summary.left-out.station': 'Left out, since the station is probably not as its card says:',
  'summary.left-out.one': '{readings} ({cause})',
  'summary.left-out.groups': 'groups {readings} ({cause})',
  'summary.without-number': 'Without a number: {setups}.',
  'summary.hand':
    'Readings of this class scatter by {share} % of themselves, by all its pulls together; the key assumes {assumed} %.',
  'summary.how':
    'Middle: the median. Scatter: 1.4826 times the median distance from it, made right for few readings. What is not known of load, scale and lengths is in the brackets, and so is rounding to a graduation.',
  'summary.pairs': 'Partners side by side:',
  'summary.pair': '{more} asks for {ratio} times what {less} asks for; the key has {expected}.',
  'summary.pair.without-key': '{more} asks for {ratio} times what {less} asks for.',
  'summary.pair.not-said': '{pairs}: {because}.',
  'summary.pair.against': '{more} against {less}',
  'summary.pair.groups':
    'Of {groups} groups that read both, {more} found it so, {less} the other way round, {same} no difference (chance alone does as much in {percent} %).',
  'summary.pair.few-groups': 'Groups that read both: {groups}; that found it so: {more}.',
  'summary.felt': 'How easy it felt:',
  'summary.felt.order': 'Table {table}, from the easiest, with mean places: {order}.',
  'summary.felt.pair':
    'Of {groups} groups, {less} found {first} easier, {more} found {second} easier, {same} no difference (chance alone does as much in {percent} %).',
  'summary.felt.few': '{first} easier: {less}; {second} easier: {more}; no difference: {same}.',
  'summary.felt.agreement':
    '{groups} groups agree with W = {w} (0 not at all, 1 all the same; chance alone brings as much in {percent} %).',
  'summary.felt.none': 'No group put all of them in order, or nobody made a difference.',
  'summary.felt.incomplete': 'Groups that left one out: {count}.',
  'summary.felt.as-key': 'The key expects the same order.',
  'summary.felt.not-as-key': 'The key expects another order: {order}.',
  'summary.work': 'Where the work went:',
  'summary.work.at': '{setup}, for {travel} of pull: the pull gave {pulled} J, the load took {out} J.',
  'summary.work.helped':
    '{setup}, for {travel} of pull: the pull gave {pulled} J and sinking parts {helped} J, the load took {out} J.',
  'summary.work.lost': '{rest} J more went in than came out.',
  'summary.work.won': '{rest} J more came out than went in, by these numbers.',
  'summary.work.alike': 'In and out are alike, as far as the readings can tell.',
  'summary.saved': 'Did the machine save work?',
  'summary.saved.no': 'No, at {setups}: more work went in than came out (surer than 19 of 20).',
  'summary.saved.open':
    'At {setups} the numbers leave it open: in and out are too close together for what the readings can tell.',
  'summary.saved.yes':
    'At {setups} the middle of the readings asks for more work out than in. No machine does that: read once more before the class talks about it.',
  'summary.saved.least':
    'Least sure is {setup}: by its readings alone, "no work was saved" has a probability of {percent} %.',
  'summary.saved.nothing':
    'Nothing can be said yet: it takes three readings of a setup that is pulled and moves.',
  'summary.saved.force':
    'What was saved is pull: the load is up to {advantage} times the pull ({setup}), over a longer way.',
  'summary.surprising':
    'Surprising: by itself, more work out than in. Worth a second look together, with the scale in hand:',
  'summary.surprising.one': '{setup}: {written} makes {percent} % (± {u} %); groups: {groups}',
  'summary.surprising.station': 'Not listed, since the station is probably not as its card says: {count}.',
  'summary.too-few': 'it takes {least} readings that count, and there are fewer',
  'summary.not-pulled': 'no pull is read there',
  'summary.held-still': 'held still, anything in a band is right, and nothing moves',
  'summary.scale-pulls': "the scale's own weight moves it, so that what it shows is not the machine's pull",
  'summary.no-figure': 'the pull is not on the scale there',
  'summary.nothing-read': 'nothing was read that counts',
  'summary.pair-too-few': 'it takes three readings that count at both',
  'summary.pair-of-nothing': 'one of them asks for nothing',
} as const;
