/** English text of the tackle's diagnostics, by code. */
export const diagnostics = {
  'tackle.no-tackle': {
    what: 'one part of line off the moving block is no tackle',
    here: 'the hand would lift the load by itself',
    why: 'the hauled part is the only one that pulls on the load',
    help: 'write 2 parts of line or more, or let the fall leave the fixed block',
  },
  'tackle.block-missing': {
    what: 'a block is missing',
    here: '{parts} parts of line need a {block} with {needed} sheaves or more',
    why: 'the line goes to and fro between the two blocks and passes a sheave at each turn',
    help: 'name the part that is the {block}, or write fewer parts of line',
  },
  'tackle.too-few-sheaves': {
    what: 'a block has too few sheaves for so many parts of line',
    here: '{parts} parts need {needed} in the {block}; "{part}" has {has}',
    why: 'the line goes to and fro between the two blocks and passes a sheave at each turn',
    help: 'these two blocks carry {most} parts of line at most; write that, or take a block with more sheaves',
  },
  'tackle.idle-block': {
    what: 'the moving block has nothing to do',
    here: 'with {parts} part of line the load hangs from the line itself; "{part}" is not used',
    why: 'a single fixed pulley only turns the pull into another direction',
    help: 'leave out the moving block, or write 2 parts of line',
  },
  'tackle.pull-direction': {
    what: "the line can't be pulled that way",
    here: 'a line off the {block} goes {goes}, not {pull}',
    why: 'the pull has to lead away from the last sheave, and nothing turns it on the way',
    help: 'leave the pull out, or add a guide pulley',
  },
  'tackle.lean-of-one-part': {
    what: "a single part of line can't lean",
    here: 'it would swing until it hangs upright, not lean by {lean}',
    why: 'one line holds a hanging load only from straight above',
    help: 'leave out the lean, or write 2 parts of line or more',
  },
  'tackle.leaning-parts': {
    what: 'the parts of line lean far',
    here: '{lean} of lean asks for {more} more pull than upright parts',
    why: 'past {most} a few degrees change the pull by more than the scale can tell from friction',
    help: 'hang the blocks further apart, or measure the lean with a protractor',
  },
} as const;
