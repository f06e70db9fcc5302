import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

const text = readFileSync(join(import.meta.dirname, '../../docs/security.md'), 'utf8');
const rows = text
  .split('\n')
  .filter((line) => /^\| [\d–]/.test(line))
  .map((line) => line.split(' | ').map((cell) => cell.replace(/^\| | \|$/g, '').trim()));

describe('docs/security.md', () => {
  it('has a row for each item, with what it asks, how it stands and its test', () => {
    expect(rows.length).toBeGreaterThan(40);
    for (const row of rows) expect(row.length, row.join(' | ')).toBe(4);
  });

  it.each(rows)(
    'item %s (%s) names a test that there is, or says that it is not met',
    (_item, _asks, how, test) => {
      const [, file = '', title = ''] = /^`([a-z-]+)`: (.*?)(?: \|)?$/.exec(test ?? '') ?? [];
      if (title === '') expect(how).toContain('**not met**');
      else {
        const source = readFileSync(join(import.meta.dirname, `${file}.test.ts`), 'utf8');
        expect(source.replaceAll("\\'", "'")).toContain(title);
      }
    },
  );
});
