import { describe, expect, it } from 'vitest';
import type { Judgement, LikelyCause } from '../../core/readings/judgement.ts';
import { languageTags } from '../sentences/language.ts';
import { likelyCauses, queriedText } from './queried-text.ts';

const cause = (code: string, probability: number, more: Partial<LikelyCause> = {}): LikelyCause => ({
  code,
  kind: 'doing',
  probability,
  wouldShow: 1,
  ofStation: 0,
  ...more,
});
const judged = (causes: readonly LikelyCause[], verdict: Judgement['verdict'] = 'look again'): Judgement => ({
  reading: { group: 'A', setup: 'L1', written: '1.2', note: '', line: 2 },
  meaning: { kind: 'number', number: 1.2, unit: null },
  verdict,
  because: null,
  value: 1.2,
  good: { from: 2, to: 2.4 },
  causes,
  tie: null,
  station: null,
});
const unexplained = cause('unexplained', 0.55, { kind: 'unexplained', wouldShow: null });
const otherWeight = cause('load.other-weight', 0.4, { facts: { hung: 'W300', belongs: 'W500' } });

describe.each(languageTags)('what is said of a queried reading in %s', (language) => {
  it('names the weight to the teacher, and nothing of the kind to the group', () => {
    const said = queriedText(language, judged([otherWeight]));
    expect(said?.toTeacher).toMatch(/W300.*W500/);
    expect(said?.toGroup).not.toMatch(/W300|W500/);
  });

  it('leaves the teacher a cause to look for, where nothing on the list explains the number best', () => {
    const said = queriedText(language, judged([unexplained, otherWeight]));
    const [alone, known] = [[unexplained], [otherWeight]].map((each) => queriedText(language, judged(each)));
    expect(said).toEqual({ toGroup: alone?.toGroup, toTeacher: known?.toTeacher });
    expect(alone?.toTeacher).not.toBe(known?.toTeacher);
  });

  it('sends nobody after a cause that is hardly probable beside "nothing explains it"', () => {
    const hardly = cause('load.other-weight', 0.14, { facts: { hung: 'W300', belongs: 'W500' } });
    const alone = queriedText(language, judged([unexplained]));
    expect(queriedText(language, judged([unexplained, hardly]))).toEqual(alone);
  });

  it('is nothing where the reading is not queried, however likely a cause is', () => {
    for (const verdict of ['good', 'a little off', 'no reading', 'unreadable', 'not judged'] as const)
      expect(queriedText(language, judged([otherWeight], verdict))).toBeNull();
  });
});

describe('causes that are worth saying', () => {
  it('are those of one in ten and more, without the good one', () => {
    const found = likelyCauses(
      judged([cause('good', 0.3, { kind: 'good' }), unexplained, cause('scale.carried', 0.09)]),
    );
    expect(found).toEqual([unexplained]);
  });
});
