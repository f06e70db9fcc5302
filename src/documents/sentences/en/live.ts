/** English for the class while it is at the tables: what a group is told of a reading, and what has moved in the plan. */
export const live = {
  'live.again': 'Read it once more.',
  'live.unreadable': 'This could not be read as a number. Look at the instrument and write it once more.',
  'live.plan.route': 'Group {group} now goes {route}.',
  'live.plan.no-route': 'Group {group} has no table left to go to.',
  'live.plan.unknown': 'No new plan was found; the plan before still stands.',
  'live.fault': 'Something in this visit could not be worked out: {what}. All readings are kept.',
  'live.arrival.follows': 'The key of this table follows this reading.',
} as const;
