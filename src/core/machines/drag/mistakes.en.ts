/**
 * English for the usual mistakes: `.mistake` names one, `.try` is the one thing that a group is asked to do,
 * `.see` tells the teacher what probably happened and how to see it. Nobody is accused.
 */
export const mistakeSentences = {
  'drag.try.string-not-level': 'Hold the string level, then read once more.',
  'drag.see.string-not-level':
    'The string probably rose from the hook to the hand. Look at it from the side while they pull.',
  'drag.try.read-too-near': 'Read earlier, where the card says, once more.',
  'drag.see.read-too-near':
    'It was probably read close to the guide pulley, where the string pulls upward. Look where they stop to read.',
  'drag.mistake.left-empty': 'what carries the load was pulled empty',
  'drag.try.left-empty': 'Put the load on, then read once more.',
  'drag.see.left-empty': 'The load was probably left off. Look whether it stands beside the track.',
} as const;
