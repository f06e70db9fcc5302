import { describe, expect, it } from 'vitest';
import { demoPrepared } from '../../../test/documents/demo-prepared.ts';
import { review } from '../../core/review.ts';
import { classSummaryText } from './class-summary-text.ts';
import { wrapped } from './columns.ts';

const prepared = demoPrepared();
const said = (...rows: readonly string[]): string =>
  classSummaryText(
    'en',
    review(prepared, { name: 'class.csv', text: ['group,setup,reading', ...rows].join('\n') }),
  )
    .map((line) => line.trim())
    .join(' ');

describe('what the class found', () => {
  it('says nothing of a file in which no number stands', () => {
    expect(said('A,L1,', 'A,L2,-')).toBe('');
  });

  it('says nothing of chance where one group alone was there', () => {
    const text = said('A,L1,2.2', 'A,L2,4.4', 'A,S1,0.6', 'A,S2,1.1');
    expect(text).toContain('L2 against L1 and S2 against S1: it takes three readings that count at both.');
    expect(text).not.toContain('chance');
  });

  it('never says that less than nothing went in more than came out', () => {
    const text = said('A,L1,2.1', 'B,L1,2.1', 'C,L1,2.1', 'D,L1,2.1');
    expect(text).toContain('In and out are alike, as far as the readings can tell.');
    expect(text).not.toMatch(/[-−]\d/);
  });

  it('says a scatter below a graduation as such, not as none', () => {
    expect(said('A,L1,2.2', 'B,L1,2.2', 'C,L1,2.2')).toMatch(/L1\s+3 of 3\s+2\.2 N\s+< 0\.1 N/);
  });
});

describe('lines of text', () => {
  it('keep a number and its unit together, and what a no-break space joins', () => {
    expect(wrapped('as much in 13 %).', 14)).toEqual(['as much in', '13 %).']);
    expect(wrapped('scatter 2.3 ± 0.1 N', 16)).toEqual(['scatter', '2.3 ± 0.1 N']);
    expect(wrapped('group 1\u00a01.9', 8)).toEqual(['group', '1 1.9']);
  });
});
