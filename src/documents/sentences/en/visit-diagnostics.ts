/** English messages about kit, activity and visit when they come together. */
export const visitDiagnostics = {
  'unknown-table': {
    what: 'an unknown table',
    here: 'the activity has no table "{written}"',
    why: 'the visit says which part plays which role at each table of the activity',
    help: '[write "{nearest}"|its tables are {known}]',
  },
  'unknown-part': {
    what: 'an unknown part',
    here: 'the kit has no part with the mark "{written}"',
    why: 'a part is known by the mark that is on it',
    help: '[write "{nearest}"|write one of {known}]',
  },
  'part-missing-today': {
    what: 'this part is missing today',
    here: '"{part}" stands under "missing"',
    why: 'what is not there can not be put on a table',
    help: 'name another part, or delete it from "missing"',
  },
  'part-of-other-kind': {
    what: 'this part can not play that role',
    here: '"{part}" is a {is}; "{role}" asks for a {wanted}',
    why: 'another size may stand in for a part, another kind of part may not',
    help: 'name a {wanted}: {known}',
  },
  substitute: {
    what: 'a substitute',
    here: '"{part}"[ ({has})|] stands in where "{asks}" is asked for',
    why: 'the activity was made for the part that it asks for; the key follows the part that is there',
    help: 'nothing, if this is meant; print the key and the pages anew',
  },
  'no-part-fits': {
    what: 'the kit has nothing that fits',
    here: 'nothing fits "{role}" of table "{table}"',
    why: '[what fits is missing today: {lost}|the kit has other sizes: {others}|the kit has no {kind} for this machine]',
    help: '[put in a substitute, in the visit file: "roles:", below it "{table}:", below it "{role}: {first}"|add the part to the kit file, or leave the table out]',
  },
  'several-parts-fit': {
    what: 'several parts fit',
    here: 'which one is "{role}" of table "{table}"?',
    why: 'no two parts are quite alike, and the key holds for one of them: {fitting}',
    help: 'in the visit file write "roles:", below it "{table}:", below it "{role}: {first}"',
  },
  'part-at-two-tables': {
    what: 'one part at two tables',
    here: '"{part}" stands at table "{other}" already',
    why: 'the tables run at the same time',
    help: 'name another part for one of them, or run the two tables one after the other',
  },
  'part-twice': {
    what: 'one part in two places',
    here: '"{part}" would be "{role}" here, and is "{other}" already',
    why: 'a part can not be in two places of one setup',
    help: 'name another part for one of the two roles in the visit file',
  },
  'mark-of-a-part': {
    what: 'the mark of a part for a setup',
    here: 'the kit has a part "{mark}"',
    why: 'what is uncertain about the two is told apart by their marks',
    help: 'give the setup another mark',
  },
  'arrival-unknown-setup': {
    what: 'an unknown setup',
    here: 'the activity has no setup "{written}"',
    why: 'an arrival reading re-keys the table that its setup stands on',
    help: '[write "{nearest}"|its setups are {known}]',
  },
  'arrival-not-a-reading': {
    what: 'this is no reading',
    here: '"{written}" is not a number with a unit of that instrument',
    why: 'a scale has newtons beside grams, so a number alone could mean either',
    help: 'write what the instrument showed, with its unit: {example}',
  },
  'arrival-no-figure': {
    what: 'nothing here is read as one figure',
    here: 'setup "{setup}" has no one figure today',
    why: 'only a single figure tells how a table has travelled; a band, an order or a rest on the stop does not',
    help: '[take the arrival reading at setup {check}|take no arrival reading at this table]',
  },
  'arrival-second': {
    what: 'a second arrival reading at one table',
    here: 'setup "{other}" of the same table has one already',
    why: 'one trial reading re-keys a table, and the first one written holds',
    help: 'delete one of the two',
  },
  'arrival-look-again': {
    what: 'look again at this table',
    here: 'reads {reading}; anything from {from} to {to} could be',
    why: 'so far off, something is wrong at the table, and no key is made to follow it',
    help: 'check holes and parts, set any pointer to 0 anew, read once more; else close the table',
  },
} as const;
