import { diagnostics as carriage } from '../../parts/carriage-diagnostics.en.ts';

/** English messages of dragging and rolling on the level. */
export const diagnostics = {
  ...carriage,
  'drag.leans-much': {
    what: 'the string lifts nearly as much as it drags',
    here: 'leans {angle} above the floor; more than {limit} tips or lifts the load',
    why: 'the law is about a load that stays flat on the floor',
    help: 'pull lower, level with the hook',
  },
} as const;
