/** What a written number can be a number of. Mass and force are never the same thing here. */
export type Dimension =
  | 'length'
  | 'mass'
  | 'force'
  | 'angle'
  | 'time'
  | 'ratio'
  | 'stiffness'
  | 'acceleration';
