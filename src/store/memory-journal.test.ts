import { describe, expect, it } from 'vitest';
import { journalContract } from './journal-contract.ts';
import { memoryJournal } from './memory-journal.ts';

describe('a journal in memory', () => {
  it.each(journalContract)('$what', async ({ faults }) => {
    expect(await faults(memoryJournal())).toEqual([]);
  });
});
