import { describe, expect, it } from 'vitest';
import { readTable } from '../../../test/reference/read-reference.ts';
import { cautionRow, cautionRows } from './cautions.ts';

describe('cautions, against the reference table', () => {
  const { rows } = readTable<{ rows: { topic: string; source: string }[] }>('safety_cautions');

  it('has each caution of the table and no other', () => {
    expect(cautionRows.map((row) => row.name)).toEqual(rows.map((row) => row.topic));
  });

  it.each(rows)('$topic is marked as from memory where its source is', ({ topic, source }) => {
    const row = cautionRow(`caution.${topic.replaceAll(' ', '-')}`);
    expect(row?.provenance).toBe(source.includes('(memory)') ? 'memory' : 'read');
    expect(row?.source).not.toBe('');
  });
});
