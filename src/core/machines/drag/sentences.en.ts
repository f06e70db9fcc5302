import { sentences as carriage } from '../../parts/carriage-sentences.en.ts';
import { mistakeSentences } from './mistakes.en.ts';

/** English sentences of dragging and rolling on the level; facts stand in braces. */
export const sentences = {
  ...mistakeSentences,
  ...carriage,
  'machine.drag on the level': 'Drag and rolling',
  'drag on the level.about': 'A load on the level. Rollers and wheels let a small pull move it.',
  'drag on the level.school': 'Rollers and wheels',
  'drag on the level.does': 'They roll where a bare base would rub.',
  'drag on the level.trades': 'Nothing: it takes rubbing away.',
  'drag on the level.pays': 'Rollers have to be carried round to the front.',
  'drag on the level.lives': 'Cart, train, log under a boat, office chair.',
  'drag.pull': 'pull in the string, moving on',
  'drag.let-back': 'pull in the string, letting it come back (below 0: it does not)',
  'drag.no-useful-work': 'nothing is raised on the level, so no useful work is done',
  'drag.step.set-wheels': 'Set the cart on the level with room in front.',
  'drag.step.set-bare-base': 'Set the block on the level with room in front.',
  'drag.step.lay-rollers': 'Lay the rollers side by side across the way.',
  'drag.step.pull-level': 'Pull the scale level and straight.',
  'drag.step.pull-level-hand': 'Pull the string level and straight.',
  'drag.reset.load': 'Put the load back in its tray.',
  'drag.reset.string': 'Lay the string straight.',
  'drag.reset.scale': 'Take the scale off the string.',
  'drag.reset.wheels': 'Put the cart back where it started.',
  'drag.reset.bare-base': 'Put the block back where it started.',
  'drag.reset.rollers': 'Put the plank back where it started.',
  'drag.mistake.string-not-level': 'the string was not level, about 15 degrees up',
  'drag.mistake.read-too-near': 'it was read too near the guide pulley, at half the distance',
} as const;
