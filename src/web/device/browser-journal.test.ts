import 'fake-indexeddb/auto';
import { describe, expect, it } from 'vitest';
import { journalContract } from '../../store/journal-contract.ts';
import { browserJournal } from './browser-journal.ts';

let count = 0;

describe("a journal in the browser's database", () => {
  it.each(journalContract)('$what', async ({ faults }) => {
    count += 1;
    const journal = await browserJournal(`visits-${count}`);
    expect(await faults(journal)).toEqual([]);
    await journal.close();
  });
});
