import { describe, expect, it } from 'vitest';
import { demoPrepared } from '../../../test/documents/demo-prepared.ts';
import { measureNextAtTables } from '../../core/bench.ts';
import { nextText } from './next-text.ts';

describe('what to measure next, as text', () => {
  it('says before and after at every table, also where both end on the same graduations', () => {
    const prepared = demoPrepared();
    const tables = measureNextAtTables(prepared);
    const blocks = nextText('en', prepared, tables)
      .split(/\n\n/)
      .filter((block) => block.startsWith('Table'));
    expect(blocks).toHaveLength(tables.length);
    blocks.forEach((block, n) => {
      if (tables[n]?.next === null) expect(block).toContain('nothing short narrows');
      else expect(block).toMatch(/good .+, then|within .+, then within/);
    });
    // Table 4: three readings of C2 take a sixth from the doubt of C1, and its ends stay where they are.
    expect(blocks[3]).toContain('C1: 19 of 20 within 0.27 N, then within 0.22 N');
  });
});
