import { describe, expect, it } from 'vitest';
import type { Place } from '../diagnostics/diagnostic.ts';
import { locate } from './locate.ts';
import { readYaml } from './yaml-tree.ts';

const text = 'handspike: kit 1\nparts:\n  öl "7":\n    of: 300 kg\n  list:\n    - one\n    - two\r\n';
const { source } = readYaml({ name: 'a.kit.yaml', text });
const at = (path: Place['path'], on: Place['on'], span?: Place['span']) =>
  locate([source], { file: 'a.kit.yaml', path, on, ...(span ? { span } : {}) });

describe('a place in the data', () => {
  it('is found as line and column of its value', () => {
    expect(at(['parts', 'öl "7"', 'of'], 'value')).toEqual({
      file: 'a.kit.yaml',
      line: 4,
      column: 9,
      lineText: '    of: 300 kg',
      length: 6,
    });
  });

  it('is narrowed to a span within the value', () => {
    expect(at(['parts', 'öl "7"', 'of'], 'value', [4, 6])).toMatchObject({ line: 4, column: 13, length: 2 });
  });

  it('is found at the key, and as an item of a list', () => {
    expect(at(['parts', 'öl "7"'], 'key')).toMatchObject({ line: 3, column: 3, length: 6 });
    expect(at(['parts', 'list', 1], 'value')).toMatchObject({ line: 7, column: 7, lineText: '    - two' });
  });

  it('ends at what holds it where it was never written', () => {
    expect(at(['parts', 'öl "7"', 'note'], 'value')).toMatchObject({ line: 3, column: 3, length: 6 });
    expect(at(['title'], 'value')).toMatchObject({ line: 1, column: 1 });
  });

  it('is nowhere in a file that is not there', () => {
    expect(locate([], { file: 'b.yaml', path: [], on: 'key' })).toBeNull();
  });
});
