/** English messages about the bench book of a kit. */
export const benchDiagnostics = {
  'bench-not-begun': {
    what: 'a bench book that nobody has begun',
    here: 'there is no line in "{book}" yet',
    why: 'without bench readings the key follows the kit file alone',
    help: 'nothing, or add the first reading, on the page for preparing or with "handspike bench --setup ... --reading ... --by ..."; is the name of the file right?',
  },
  'bench-no-columns': {
    what: 'this is no bench book',
    here: 'no column for: {lacking}',
    why: 'each line says on which day what was read, and of which kit',
    help: 'begin the file with a line of column names: {known}',
  },
  'bench-row': {
    what: 'a line that can not be taken apart',
    here: 'more cells than there are columns, or a quote that is not closed',
    why: 'a line of the bench book has one cell for each column',
    help: 'put what holds a comma between quotes ("2,2 N"), and close every quote',
  },
  'bench-other-kit': {
    what: 'a line about another kit',
    here: 'this is about "{written}", the kit file about "{serial}"',
    why: 'no two kits are quite alike, and each has a book of its own',
    help: 'move the line to the book of that kit, or replace it by a new line with the right serial',
  },
  'bench-replaces': {
    what: 'it replaces no line',
    here: '[line {written} is replaced by line {by} already|there is no line "{written}" above that can be replaced]',
    why: 'a correction is a new line that names the number of the one it stands for; both stay',
    help: 'write the line number of an earlier reading, or leave "replaces" blank',
  },
  'bench-unknown-what': {
    what: 'what was read?',
    here: '"{written}" is no setup, scale or part here',
    why: 'a bench reading is of a setup ("L1", "L1 lower"), a scale ("amber with W500", "amber turned over") or a measure of a part ("oar mass")',
    help: '[write "{nearest}"|the setups are {known}], or name in "activity" the file that it belongs to',
  },
  'bench-not-a-reading': {
    what: 'this is no reading',
    here: '"{written}" is not a number with a unit that fits',
    why: 'a scale has newtons beside grams, so a number alone could mean either',
    help: 'write what the instrument showed, with its unit, as "{example}"',
  },
  'bench-no-figure': {
    what: 'nothing is read there as one figure',
    here: '"{written}" has no one figure',
    why: 'only a single figure tells about the apparatus; a band, an order or a rest on the stop does not',
    help: 'take another setup, or read it "raise" or "lower"',
  },
  'bench-other-parts': {
    what: 'read with other parts than stand there now',
    here: 'setup {setup} has {today}, not {parts}',
    why: 'a reading tells about the parts that it was taken with; this one is not used',
    help: 'nothing, if other parts are meant to stand there now; else cast them in the visit file',
  },
  'bench-far': {
    what: 'a bench reading far from what the kit file says',
    here: 'reads {reading}; from {from} to {to} could be[; lines {others} are off in the same way|]',
    why: '[lines {others} agree with it: the ranges in the kit file are likelier wrong than the readings|such a one is a slip, or a part is not what the kit file says]; it is not used',
    help: '[widen the range in the kit file, or write a new line that replaces each of them, with "yes" under "use"; first look at line {others} again|read it once more; a new line with "yes" under "use" takes it in all the same]',
  },
  'bench-at-odds': {
    what: 'a bench reading at odds with the others',
    here: 'reads {reading}; the others make it {fitted}, {times} standard uncertainties off',
    why: 'the kit file alone would allow it, the other readings do not; it is not used',
    help: 'read it once more; a new line that replaces it, with "yes" or "no" under "use", settles it',
  },
} as const;
