/** What there is to say of a class's period, each kind of thing apart: terminal, page and paper say the same. */
export interface Saying {
  readonly about:
    | 'clash'
    | 'under way'
    | 'frame'
    | 'sure'
    | 'proof'
    | 'left out'
    | 'closed'
    | 'waits'
    | 'stands'
    | 'gains'
    | 'past'
    | 'assumed';
  /** Stands over a list; `null` where the lines stand for themselves. */
  readonly heading: string | null;
  readonly lines: readonly string[];
  /** After the list. */
  readonly foot: string | null;
}

/** Lines that stand for themselves. */
export const plain = (about: Saying['about'], lines: readonly string[]): Saying => ({
  about,
  heading: null,
  lines,
  foot: null,
});

/** Lines under a heading. */
export const listed = (
  about: Saying['about'],
  heading: string,
  lines: readonly string[],
  foot: string | null = null,
): Saying => ({ about, heading, lines, foot });
