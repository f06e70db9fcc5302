import { describe, expect, it } from 'vitest';
import { entryOf, type MapNode } from './node.ts';
import { readYaml } from './yaml-tree.ts';

const read = (text: string) => readYaml({ name: 'a.yaml', text });
const codes = (text: string) => read(text).diagnostics.map((each) => each.code);
const textIn = (map: MapNode | null, key: string) => {
  const node = map === null ? undefined : entryOf(map, key)?.node;
  return node?.kind === 'text' ? node.text : node?.kind;
};

describe('a file as a tree', () => {
  it('keeps every value as it was written, marks and yes or no included', () => {
    const { root } = read('a: 007\nb: yes\nc: 1e3\nd: ~\ne: "300 g"\nf: 1_000\n');
    expect(['a', 'b', 'c', 'd', 'e', 'f'].map((key) => textIn(root, key))).toEqual([
      '007',
      'yes',
      '1e3',
      '~',
      '300 g',
      '1_000',
    ]);
  });

  it('knows where a value stands, also inside quotation marks', () => {
    const { root } = read('a: "300 g"\n');
    const node = root === null ? undefined : entryOf(root, 'a')?.node;
    expect(node).toMatchObject({ kind: 'text', textFrom: 4 });
  });

  it('tells an empty value from an empty text', () => {
    const { root } = read('a:\nb: ""\n');
    expect(textIn(root, 'a')).toBe('empty');
    expect(textIn(root, 'b')).toBe('');
  });

  it('tells all faults of the syntax at once, one a line', () => {
    expect(codes('a: %x\nb: `y`\nc: @z\n')).toEqual([
      'syntax.special-sign',
      'syntax.special-sign',
      'syntax.special-sign',
    ]);
  });

  it('keeps the first of two equal keys and says so', () => {
    const { root, diagnostics } = read('a: 1\na: 2\n');
    expect(textIn(root, 'a')).toBe('1');
    expect(diagnostics).toMatchObject([{ code: 'syntax.key-twice', at: { span: [5, 6] } }]);
  });

  it('refuses flow style in a file with decimal commas, and takes it in one with points', () => {
    expect(codes('decimal: comma\na: {load: 1,5 N}\n')).toEqual(['syntax.flow-with-commas']);
    expect(codes('decimal: comma\na: [1, 2]\n')).toEqual(['syntax.flow-with-commas']);
    expect(codes('decimal: point\na: {load: 1.5 N}\n')).toEqual([]);
  });

  it('does not follow anchors, aliases, tags and merge keys', () => {
    expect(codes('a: &x 1\nb: *x\n<<: *x\nc: !t 1\n')).toEqual([
      'syntax.anchor',
      'syntax.alias',
      'syntax.merge-key',
      'syntax.tag',
    ]);
  });

  it('stops before a depth that would exhaust the parser', () => {
    expect(codes(`a: ${'['.repeat(100_000)}`)).toEqual(['syntax.too-deep']);
    expect(codes('- '.repeat(100_000))).toEqual(['syntax.too-deep']);
    expect(codes('? '.repeat(100_000))).toEqual(['syntax.too-deep']);
  });

  it('takes line ends of every system, and a mark of the byte order', () => {
    expect(textIn(read('a: 1\r\nb: 2\r\n').root, 'b')).toBe('2');
    expect(textIn(read('\ufeffa: 1\n').root, 'a')).toBe('1');
  });
});
