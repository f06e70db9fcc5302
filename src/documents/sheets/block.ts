/**
 * What a sheet of paper is made of, before anybody sets it: plain data from which the typesetter makes
 * a page and a test can read every word. Lengths are millimetres on paper.
 */
export type Block =
  /** The head of a sheet: its name, a line about it, and facts beside it. */
  | {
      readonly block: 'title';
      /** A word and a mark that stand large before the name: "Table", "1". */
      readonly mark?: readonly [word: string, mark: string];
      readonly text: string;
      readonly about?: string;
      readonly facts: readonly (readonly [name: string, value: string])[];
    }
  /** A mark and a name as large as the sheet allows. */
  | {
      readonly block: 'sign';
      readonly word: string;
      readonly mark: string;
      readonly text: string;
      readonly about: string;
    }
  | { readonly block: 'heading'; readonly level: 2 | 3; readonly text: string }
  /** `headline` is large and strong, for the name on a tag. */
  | {
      readonly block: 'text';
      readonly text: string;
      readonly tone?: 'small' | 'large' | 'strong' | 'headline';
    }
  | { readonly block: 'list'; readonly items: readonly string[] }
  /** What is done, in order; the numbers are part of it. */
  | {
      readonly block: 'steps';
      readonly items: readonly string[];
      /** Where they are not 1, 2, 3: the numbers that they have in a list that stands elsewhere. */
      readonly numbers?: readonly number[];
    }
  /** Boxes to tick. */
  | { readonly block: 'ticks'; readonly items: readonly string[] }
  /** Framed, with a sign and a word: a warning is never told by colour. */
  | { readonly block: 'care'; readonly word: string; readonly items: readonly string[] }
  | Table
  /** A drawing or a strip; `alt` says the physics to whoever can't see it. */
  | {
      readonly block: 'figure';
      readonly svg: string;
      readonly alt: string;
      readonly width: number;
      readonly caption?: string;
      readonly isCentred?: true;
    }
  /** Side by side, by shares of the width. */
  | {
      readonly block: 'columns';
      readonly shares: readonly number[];
      readonly columns: readonly (readonly Block[])[];
    }
  /** Kept together on one page. */
  | { readonly block: 'together'; readonly blocks: readonly Block[] }
  /** Cut or laminated apart: a frame as wide as said, several in a row. */
  | {
      readonly block: 'tags';
      readonly width: number;
      readonly height: number;
      readonly tags: readonly (readonly Block[])[];
    }
  /** Cut in two along dashes: strips that lie beside a card, and what an adult keeps. */
  | { readonly block: 'slip'; readonly strips: readonly Strip[]; readonly adult: readonly Block[] }
  /** A line to write on, with its name before it. */
  | { readonly block: 'line'; readonly name: string }
  | { readonly block: 'page-break' }
  | { readonly block: 'space'; readonly millimetres: number };

/** A strip for whoever reads another language than the rest of its sheet. */
export interface Strip {
  /** BCP 47. */
  readonly language: string;
  readonly blocks: readonly Block[];
}

/** A table with a head that repeats; the first cell of a row heads it. */
export interface Table {
  readonly block: 'table';
  readonly head: readonly string[];
  readonly rows: readonly (readonly Cell[])[];
  /** Shares of the width; 0 is as wide as its words. */
  readonly widths: readonly number[];
  readonly align?: readonly ('left' | 'right' | 'center')[];
  /** Least height of a row: room to write in. */
  readonly rowHeight?: number;
  readonly size?: 'small';
}

/** Words, a picture, or a box to tick with its name for whoever hears the page. */
export type Cell =
  | string
  | {
      readonly text: string;
      readonly strong?: true;
      /** What counts most in its row. */
      readonly isLarge?: true;
      readonly note?: string;
    }
  | { readonly tick: string }
  | { readonly svg: string; readonly alt: string; readonly width: number };

/** One sheet, ready to be set: a file of its own, in one language, on one paper. */
export interface SheetOfPaper {
  /** Name of the file without ending: `card-1`, `answer-key`. */
  readonly name: string;
  readonly title: string;
  /** BCP 47. */
  readonly language: string;
  readonly paper: Paper | PosterPaper;
  /** Large type for what is read standing, sign size for what is read from the back of the room. */
  readonly size: 'usual' | 'large' | 'sign';
  /** As many sides as there may be: where words are long, they are set smaller until the sheet has no more. */
  readonly mostSides?: number;
  readonly isLandscape?: true;
  /** Small print at the foot of every page. */
  readonly foot: string;
  readonly blocks: readonly Block[];
}

export type Paper = 'a4' | 'us-letter';

/** Twice as large, for what is read from the back of the room. */
export type PosterPaper = 'a3' | 'us-tabloid';
