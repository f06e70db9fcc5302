import type { Prepared } from '../../src/core/prepare.ts';
import { demoPrepared } from './demo-prepared.ts';

/** Titles of 34 characters, the longest that a card has to hold. */
const TITLE = /^( {4}title: ).*$/gm;
const LONG_TITLES = [
  'The long oar that lifts the anchor',
  'Hauling the dinghy up the slipways',
  'Blocks and falls behind the shed 3',
  'The capstan with its two long bars',
  'The spindle of the old bench vices',
  'The thole and the chock in a plank',
  'Dinghy and ramp and oar in one row',
];

const EXTRA_TABLES = [8, 9]
  .map(
    (table) => `
  - table: "${table}"
    title: The spindle of the bench vice no ${table}
    machine: screw
    roles:
      screw: screw
    setups:
      - setup: Q${table}a
        watch: turns
        travel: 7.0 mm
      - setup: Q${table}b
        watch: travel
        turns: 8
`,
  )
  .join('');

const EXTRA_SCREWS = [8, 9]
  .map(
    (table) => `
  bench vice spindle from the shed ${table}:
    part: screw
    thread: M12
    lever arm: 8.0 cm
`,
  )
  .join('');

/**
 * The demo grown to what paper has to hold at the most: nine tables, twelve groups, titles of 34
 * characters, a kit and an activity with long names, and a scale and a bar with long marks.
 */
export const crowdedPrepared = (): Prepared =>
  demoPrepared((text, file) => {
    switch (file) {
      case 'kit': {
        const renamed = text
          .replace(
            'Brackwater Boathouse, red kit',
            'Brackwater Boathouse and Slipway, long red kit of the upper shed',
          )
          .replace(/^ {2}amber:/m, '  amber scale of the upper boat shed:')
          .replace(/^ {2}oar:/m, '  ash oar loom from the whaling boat:');
        return renamed + EXTRA_SCREWS;
      }
      case 'activity': {
        let n = 0;
        const titled = text.replace(TITLE, (_, head: string) => {
          n += 1;
          return `${head}${LONG_TITLES[n - 1] ?? ''}`;
        });
        return (
          titled.replace('title: Harbour day', 'title: Harbour day with the third and fourth year classes') +
          EXTRA_TABLES
        );
      }
      case 'visit':
        return text
          .replace(/^groups:.*$/m, 'groups: 12')
          .replace(
            /^roles:$/m,
            'roles:\n  "5": { screw: spindle }\n  "8": { screw: bench vice spindle from the shed 8 }\n  "9": { screw: bench vice spindle from the shed 9 }',
          );
    }
  });
