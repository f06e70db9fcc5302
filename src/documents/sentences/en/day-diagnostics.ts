/** English messages about what the files say of the period. */
export const dayDiagnostics = {
  'not-a-clock-time': {
    what: 'this is no time of the day',
    here: '"{written}" is not read as a clock',
    why: 'a period starts by the clock on the wall',
    help: 'write hours and minutes of a 24-hour clock, as 09:15 or 13:40',
  },
  'not-a-time': {
    what: 'this is no time of the period',
    here: '"{written}" is neither a clock time nor minutes',
    why: 'times are read off the clock, or counted from the start of the period',
    help: 'write a clock time as 09:40, or minutes from the start as 25 min',
  },
  'clock-without-start': {
    what: 'a clock time, and nobody says when the period starts',
    here: 'how far into the period is that?',
    why: 'the plan counts from the start of the period',
    help: 'add a line as "starts: "09:15"", or write minutes from the start as 25 min',
  },
  'ends-before-it-begins': {
    what: 'it ends before it begins',
    here: 'this is not later than its beginning',
    why: 'what is closed or away is so from one time to a later one',
    help: 'exchange the two, or leave this one out',
  },
  'outside-the-period': {
    what: 'a time outside the period',
    here: 'nobody is at the tables then',
    why: 'it changes nothing in the plan',
    help: 'write a time between the start and the end of the period',
  },
  'no-time-for-tables': {
    what: 'no time is left for the tables',
    here: 'introduction and talk at the end take {talks}',
    why: 'groups are at tables between the two',
    help: 'make the period longer, or the talks in the activity file shorter',
  },
  'after-itself': {
    what: 'a table after itself',
    here: 'table "{table}" would have to be done before itself',
    why: 'a group does a table once',
    help: 'write the tables that come before it, or leave "after" out',
  },
  'adult-twice': {
    what: 'one label for two adults',
    here: 'there is an adult "{label}" already',
    why: 'the plan sends an adult to a table by the label alone',
    help: 'give one of them another label',
  },
  'helpers-and-adults': {
    what: 'helpers and adults do not agree',
    here: '{helpers} helpers, but under "adults" stand {adults}',
    why: 'the list says who may stand at tables, so the count is not used',
    help: 'leave "helpers" out, or write as many as the list has',
  },
  'fewer-pupils-than-groups': {
    what: 'fewer pupils than groups',
    here: '{pupils} pupils in {groups} groups',
    why: 'the plan has a route for each group, also for one in which nobody is',
    help: 'write {pupils} groups at most, or how many pupils really come',
  },
  'two-groups-wanted': {
    what: 'one group alone',
    here: 'group "{group}" is {key} from whom, or with whom?',
    why: '"{key}" is said of two groups or more',
    help: 'write the groups side by side, as "A, B"',
  },
  'wish-says-nothing': {
    what: 'a wish that says nothing',
    here: 'what is wished?',
    why: 'for whom it is, is no wish yet',
    help: 'add one of {known}',
  },
  'wish-half-said': {
    what: 'half of a wish',
    here: '"{key}" goes together with "{other}"',
    why: 'neither says anything alone',
    help: 'add a line "{other}:" to the same block',
  },
  'unknown-class': {
    what: 'an unknown class',
    here: 'no class is called "{written}"',
    why: 'a wish is for a class that stands under "classes"',
    help: '[write "{nearest}"|write one of {known}|leave "class" out, or list the classes under "classes"]',
  },
  'class-twice': {
    what: 'one label for two classes',
    here: 'there is a class "{label}" already',
    why: 'a plan is of one class, known by its label',
    help: 'give one of them another label',
  },
  'classes-overlap': {
    what: 'two classes at one time',
    here: '"{other}" is still at the tables when "{class}" comes',
    why: 'the kit has each table once, and every table is put back between two classes',
    help: 'let it start later, or make the period before it shorter',
  },
} as const;
