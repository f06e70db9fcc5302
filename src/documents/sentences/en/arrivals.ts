/** The trial reading of a table on arrival: what to do when it lies outside its good range. */
export const arrivals = {
  'arrival.row': 'Ring the row of this reading on the key that re-keys itself.',
  'arrival.outside.zero-in-place': 'Set the pointer of {scale} to 0 as it hangs.',
  'arrival.outside.zero-hook-down': 'Set the pointer of {scale} to 0, hook down.',
  'arrival.outside.zero-level': 'Set the pointer of {scale} to 0, lying level.',
  'arrival.outside.zero-along-the-slope': 'Set the pointer of {scale} to 0 along the slope.',
  'arrival.outside.zero-upside-down': 'Set the pointer of {scale} to 0, upside down.',
  'arrival.outside.zero-angle': 'Set the pointer of {scale} to 0 at its angle.',
  'arrival.outside.check': 'Check holes, load and parts against the card.',
  'arrival.outside.again': 'Take the reading once more.',
  'arrival.outside.row': 'Ring the row of the new reading instead.',
  'arrival.outside.close': 'Close the table below {from} or above {to}.',
  'arrival.followed': 'Follows the arrival reading of setup {setup}: {reading}.',
} as const;
