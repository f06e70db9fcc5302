/** English text of the compound machine's diagnostics, by code. */
export const diagnostics = {
  'compound.too-few-stages': {
    what: 'a compound machine has two stages or more',
    here: 'this one has {stages}',
    why: 'with a single stage it is that machine itself',
    help: 'add the next stage, or name the machine of the stage for the table',
  },
  'compound.unknown-stage': {
    what: 'no such machine',
    here: 'stage {stage} is a "{machine}"',
    why: 'a stage is one of the machines that stand alone',
    help: 'name one of the machines of the list that the help prints',
  },
  'compound.link-turns': {
    what: 'the link between two stages has to be turned',
    here: 'stage {stage} is not pulled straight up, and stage {next} takes its load as one that hangs',
    why: 'a straight line would pull on stage {next} another way than a hanging load does',
    help: 'lead the link over a free-running pulley so that it pulls straight down on stage {next}; that pulley is not counted',
  },
  'compound.passes-nothing-on': {
    what: 'a stage passes nothing on',
    here: 'stage {stage}, "{machine}", does not take up the pull of the stage before it',
    why: 'its own pull does not depend on a load, or its load is not raised',
    help: 'make it the first stage, where its resistance is the load, or leave it out',
  },
} as const;
