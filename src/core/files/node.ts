/**
 * A file as it was written: keys, lists and texts, each with its place. Nothing is a number yet: a
 * mark `007` is that text, and `300 g` becomes a quantity only where a field asks for one.
 */
export type Node = MapNode | ListNode | TextNode | EmptyNode;

/** Offsets into the text of the file, the second one behind the last character. */
export type Range = readonly [from: number, to: number];

export interface MapNode {
  readonly kind: 'map';
  readonly range: Range;
  readonly entries: readonly Entry[];
}

export interface Entry {
  readonly key: string;
  readonly keyRange: Range;
  readonly node: Node;
}

export interface ListNode {
  readonly kind: 'list';
  readonly range: Range;
  readonly items: readonly Node[];
}

export interface TextNode {
  readonly kind: 'text';
  readonly range: Range;
  readonly text: string;
  /** Offset of the text's first character in the file, where the two agree letter by letter. */
  readonly textFrom: number | null;
}

/** A key or a list dash with nothing behind it. */
export interface EmptyNode {
  readonly kind: 'empty';
  readonly range: Range;
}

export const entryOf = (map: MapNode, key: string): Entry | undefined =>
  map.entries.find((entry) => entry.key === key);

export const keysOf = (map: MapNode): readonly string[] => map.entries.map((entry) => entry.key);
