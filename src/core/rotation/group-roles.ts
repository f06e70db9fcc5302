/** What somebody in a group does at a table. */
export type Duty = 'pull' | 'read' | 'write' | 'check';

/** One pupil's duties at a table, by number and never by name. */
export interface Seat {
  /** From 1. */
  readonly pupil: number;
  readonly duties: readonly Duty[];
}

/** How the four duties are shared out in a group of some size. */
export interface GroupRoles {
  /** Duties that one pupil does together. */
  readonly joined: readonly (readonly Duty[])[];
  /** Duties that several pupils do, each for herself. */
  readonly doubled: readonly Duty[];
  /** By step: who does what. The duties move on by one pupil after each. */
  readonly steps: readonly (readonly Seat[])[];
  /** So many steps until everybody has pulled. */
  readonly untilAllPull: number;
}

/** Common practice, no source: with few pupils who has a hand free checks, with many a second one reads for herself. */
const FEW: readonly (readonly (readonly Duty[])[])[] = [
  [],
  [['pull', 'read', 'write', 'check']],
  [
    ['pull', 'check'],
    ['read', 'write'],
  ],
  [['pull'], ['read'], ['write', 'check']],
  [['pull'], ['read'], ['write'], ['check']],
];
const MORE: readonly Duty[] = ['read', 'check', 'write'];

/**
 * Who pulls, reads, writes and checks at each of some tables. After each the duties move on, so that whoever pulled
 * reads next, and everybody has pulled after as many tables as the group has pupils. Where there are fewer tables, the
 * duties may move on after each setup instead: steps are either.
 *
 * @example groupRoles(3, 3).joined // => [['write', 'check']]
 * @example groupRoles(5, 7).doubled // => ['read']
 * @example groupRoles(4, 2).steps[1][0] // => { pupil: 1, duties: ['read'] }
 */
export function groupRoles(pupils: number, steps: number): GroupRoles {
  const seats = seatsOf(pupils);
  return {
    joined: seats.filter((duties) => duties.length > 1),
    doubled: [...new Set(seats.slice(FEW.length - 1).flat())],
    steps: Array.from({ length: steps }, (_, step) =>
      seats.map((_, n) => ({ pupil: n + 1, duties: seats[(n + step) % seats.length] ?? [] })),
    ),
    untilAllPull: pupils,
  };
}

const seatsOf = (pupils: number): readonly (readonly Duty[])[] =>
  FEW[pupils] ?? [
    ...(FEW.at(-1) ?? []),
    ...Array.from({ length: pupils - FEW.length + 1 }, (_, n) => [MORE[n % MORE.length] ?? 'read']),
  ];

/**
 * Who pulls at each of so many tables, by number.
 *
 * @example whoPulls(4, 5) // => [1, 4, 3, 2, 1]
 */
export const whoPulls = (pupils: number, tables: number): readonly number[] =>
  groupRoles(pupils, tables).steps.flatMap((seats) =>
    seats.flatMap(({ pupil, duties }) => (duties.includes('pull') ? [pupil] : [])),
  );
