/**
 * Things that a setup needs beside the parts that its slots name: what holds, carries, measures and
 * protects. No reckoning asks for them, so no kit file has to list them; but nobody can build without.
 */
export const EQUIPMENT = [
  'pin stand',
  'axle stand',
  'frame',
  'prop',
  'prop with pins',
  'nut',
  'face',
  'stop',
  'two blocks',
  'string',
  'line',
  'tray',
  'ruler',
  'angle gauge',
  'pencil',
  'wedge holder',
  'glasses',
] as const;

/** The code of such a thing; its name in words belongs to the sheets. */
export type Equipment = (typeof EQUIPMENT)[number];
