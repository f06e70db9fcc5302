import type { Path } from './context.ts';
import { asScalar, nodeAt } from './edit-text.ts';
import type { MapNode, Node, Range } from './node.ts';
import type { YamlTree } from './yaml-tree.ts';

/**
 * The tree of a file after one of its texts is written anew, without reading the file again: the new
 * text in its place, and all that stands behind it moved. `null` where the file has to be read: keys at
 * the top say how the rest is read, a value of several lines ends where only a reader knows, and a file
 * with faults has to tell them again.
 */
export function withValueInTree(tree: YamlTree, path: Path, value: string): YamlTree | null {
  const { source, root, diagnostics } = tree;
  if (root === null || diagnostics.length > 0 || path.length < 2) return null;
  const node = nodeAt(root, path);
  const written = value.trim();
  if (node?.kind !== 'text' || written === '' || /[\n\r]/.test(source.text.slice(...node.range))) return null;
  const scalar = asScalar(written);
  const [from, to] = node.range;
  const quote = scalar === written ? 0 : 1;
  const isAsWritten = scalar.slice(quote, quote + written.length) === written;
  const textFrom = isAsWritten ? from + quote : null;
  const fresh: Node = { kind: 'text', range: [from, from + scalar.length], text: written, textFrom };
  const moved = movedTree(root, node, fresh, scalar.length - (to - from)) as MapNode;
  const text = source.text.slice(0, from) + scalar + source.text.slice(to);
  return { source: { ...source, text, root: moved }, root: moved, diagnostics };
}

function movedTree(root: Node, old: Node, fresh: Node, by: number): Node {
  const end = old.range[1];
  const at = (offset: number): number => (offset >= end ? offset + by : offset);
  const range = ([from, to]: Range): Range => [at(from), at(to)];
  const walk = (node: Node): Node => {
    if (node === old) return fresh;
    // What ends before it stays as it is, to the object.
    if (node.range[1] < old.range[0]) return node;
    if (node.kind === 'text')
      return {
        ...node,
        range: range(node.range),
        textFrom: node.textFrom === null ? null : at(node.textFrom),
      };
    if (node.kind === 'list') return { ...node, range: range(node.range), items: node.items.map(walk) };
    if (node.kind === 'empty') return { ...node, range: range(node.range) };
    return {
      ...node,
      range: range(node.range),
      entries: node.entries.map((entry) => ({
        ...entry,
        keyRange: range(entry.keyRange),
        node: walk(entry.node),
      })),
    };
  };
  return walk(root);
}
