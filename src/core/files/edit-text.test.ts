import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { valueAt, withValue } from './edit-text.ts';
import { readYaml } from './yaml-tree.ts';

const edited = (text: string, path: readonly (string | number)[], value: string) =>
  withValue(readYaml({ name: 'kit', text }).source, path, value);

const KIT = `# ours
serial: BB-03
parts:
  W100: { part: weight, of: 100 g ± 0.5 g } # lead
  amber:
    part: spring scale   # bent
    range: 5 N

  # the last
  bar:
    part: bar
`;

describe('one value of a file is written anew', () => {
  test('and nothing else changes, comments included', () => {
    expect(edited(KIT, ['parts', 'W100', 'of'], '200 g')).toBe(KIT.replace('100 g ± 0.5 g', '200 g'));
    expect(edited(KIT, ['parts', 'amber', 'part'], 'ruler')).toBe(KIT.replace('spring scale', 'ruler'));
  });

  test('a key that was not there is added where its neighbours stand', () => {
    expect(edited(KIT, ['parts', 'amber', 'mass'], '40 g')).toBe(
      KIT.replace('    range: 5 N\n', '    range: 5 N\n    mass: 40 g\n'),
    );
    expect(edited(KIT, ['parts', 'W100', 'box'], 'tin')).toBe(KIT.replace(' }', ', box: tin }'));
  });

  test('an empty value takes the key out, and the rest can still be read', () => {
    expect(edited(KIT, ['parts', 'amber', 'range'], '')).toBe(KIT.replace('    range: 5 N\n', ''));
    expect(edited(KIT, ['parts', 'W100', 'of'], '')).toBe(KIT.replace(', of: 100 g ± 0.5 g', ''));
    expect(edited('a:\n  - setup: L1\n    lift: 5 cm\n', ['a', 0, 'lift'], '')).toBe('a:\n  - setup: L1\n');
  });

  test('a path that leads nowhere, or a file that is broken, is left alone', () => {
    expect(edited(KIT, ['parts', 'nobody', 'of'], '1')).toBeNull();
    expect(edited(KIT, ['parts', 0, 'of'], '1')).toBeNull();
    expect(edited(KIT, ['serial', 'of'], '1')).toBeNull();
    expect(edited('a: [', ['a'], '1')).toBeNull();
  });

  test('whatever is written is read back letter by letter', () => {
    const written = fc
      .string({ unit: 'grapheme-ascii', minLength: 1, maxLength: 20 })
      .map((text) => text.trim())
      .filter((text) => text !== '');
    fc.assert(
      fc.property(written, fc.constantFrom('W100', 'amber', 'bar'), (value, part) => {
        const text = edited(KIT, ['parts', part, 'note'], value) ?? '';
        const again = edited(text, ['parts', part, 'note'], `${value}x`) ?? '';
        expect(valueAt(readYaml({ name: 'kit', text }).root, ['parts', part, 'note'])).toBe(value);
        expect(valueAt(readYaml({ name: 'kit', text: again }).root, ['parts', part, 'note'])).toBe(
          `${value}x`,
        );
      }),
    );
  });
});
