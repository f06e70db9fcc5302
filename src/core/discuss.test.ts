import { describe, expect, it } from 'vitest';
import { demoPrepared } from '../../test/documents/demo-prepared.ts';
import { isNotDefined } from './description/not-defined.ts';
import { type Discussion, discuss } from './discuss.ts';
import type { FoundFor, QuestionKind, QuestionOf } from './discussion/question.ts';
import { classSummary } from './readings/class-summary.ts';
import { rehearse } from './rehearse.ts';
import { review } from './review.ts';

const prepared = demoPrepared();
const rehearsal = rehearse(prepared, { groups: 6, mistakes: 4, seed: 1 });
const talk = (rows: readonly string[], names = false, of = prepared): Discussion =>
  discuss(of, review(of, { name: 'class.csv', text: ['group,setup,reading,note', ...rows].join('\n') }), {
    of: 'class',
    names,
  });
const talkOf = (discussion: Discussion, kind: QuestionKind) => {
  const found = discussion.questions.find((each) => each.kind === kind);
  if (found === undefined) throw new Error(`no question ${kind}`);
  return found.found;
};
function foundAt<K extends QuestionKind>(discussion: Discussion, kind: K): FoundFor[K] {
  const found = talkOf(discussion, kind) as QuestionOf<K>['found'];
  if (isNotDefined(found)) throw new Error(`${kind} is not defined: ${found.because}`);
  return found as FoundFor[K];
}
const whyNot = (discussion: Discussion, kind: QuestionKind): string | null => {
  const found = talkOf(discussion, kind);
  return isNotDefined(found) ? found.because : null;
};

describe('the talk at the end', () => {
  const discussion = discuss(prepared, rehearsal.review, { of: 'rehearsal', names: false });

  it('asks of everything that a class found, with the very figures of the review', () => {
    expect(discussion.summary).toEqual(classSummary(rehearsal.review));
    const { setups } = foundAt(discussion, 'saved');
    for (const { setup, work } of setups)
      expect(work).toEqual(discussion.summary.setups.find((each) => each.setup === setup)?.work);
    for (const { setup, force } of foundAt(discussion, 'traded').setups)
      expect(force).toEqual(discussion.summary.setups.find((each) => each.setup === setup)?.advantage);
  });

  it('says of every question either what the numbers tell or why they tell nothing', () => {
    const without = discussion.questions.flatMap(({ kind, found }) => (isNotDefined(found) ? [kind] : []));
    expect(without).toEqual(['guess']);
    expect(whyNot(discussion, 'guess')).toBe('discuss.no-guesses');
  });

  it('puts no sentence beside its own machine', () => {
    const { machines } = foundAt(discussion, 'machines');
    expect(machines.map(({ machine }) => machine)).toContain('lever');
    expect(new Set(machines.map(({ place }) => place)).size).toBe(machines.length);
    for (const [n, { place }] of machines.entries()) expect(place).not.toBe(n);
  });

  it('shows the account of a setup where the pull is lighter and the loss stands out', () => {
    const { shown, setups } = foundAt(discussion, 'saved');
    const at = setups.find(({ setup }) => setup === shown);
    expect(at?.saves).toBe('no');
    expect(at === undefined || isNotDefined(at.advantage) ? 0 : at.advantage.from).toBeGreaterThan(1);
  });

  it('takes the rest from the class and its causes from the measures, largest first', () => {
    const { shown, setups } = foundAt(discussion, 'rest');
    // The bare block on the slipway rubs most.
    expect(shown).toBe('S3');
    for (const { causes, work } of setups) {
      expect(causes.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
      expect(work.restFigure.value).toBeCloseTo(work.rest, 9);
      expect(work.restFigure.value).toBeGreaterThan(work.restFigure.u);
      expect([...causes].sort((a, b) => b.share - a.share)).toEqual(causes);
    }
  });

  it('gives a longer way to whichever of two partners asks for less', () => {
    for (const { pull, way } of foundAt(discussion, 'traded').pairs)
      if (pull.from > 1.2) expect(way).toBeGreaterThanOrEqual(1);
  });

  it('holds the weightiest questions where the time is short', () => {
    expect(discussion.minutes).toBe(10);
    expect(discussion.inFive).toEqual(['traded', 'saved']);
    expect(discussion.within).toEqual(['machines', 'traded', 'saved', 'surprised', 'limits']);
  });
});

describe('a talk without numbers', () => {
  it('still has machines to match, and says why the others can not be asked', () => {
    const silent = talk([]);
    expect(whyNot(silent, 'machines')).toBeNull();
    expect(whyNot(silent, 'traded')).toBe('discuss.nothing-pulled');
    expect(whyNot(silent, 'saved')).toBe('discuss.no-account');
    expect(whyNot(silent, 'rest')).toBe('discuss.no-rest');
    expect(whyNot(silent, 'surprised')).toBe('discuss.nothing-read');
    expect(whyNot(silent, 'ease')).toBe('discuss.nothing-felt');
    expect(silent.groups).toBe(0);
  });

  it('has no account where each setup was read once', () => {
    expect(whyNot(talk(['A,L1,2.2', 'A,L2,4.3']), 'saved')).toBe('discuss.no-account');
  });

  it('finds no surprise where all lie in the good range', () => {
    const found = talk(['A,L1,2.2', 'B,L1,2.2', 'C,L1,2.3']);
    expect(whyNot(found, 'surprised')).toBe('discuss.no-surprise');
  });
});

describe('numbers that surprised', () => {
  const rows = ['A,L1,2.2', 'B,L1,2.2', 'C,L1,225', 'D,L1,2.3', 'A,L2,4.3', 'B,L2,4.4', 'C,L2,4.3'];

  it('name no group unless the teacher says so', () => {
    const [number] = foundAt(talk(rows), 'surprised').numbers;
    expect(number).toMatchObject({ setup: 'L1', written: ['225'], code: 'reading.in-grams', groups: null });
    const [named] = foundAt(talk(rows, true), 'surprised').numbers;
    expect(named?.groups).toEqual(['C']);
  });

  it('are laid beside how many were good', () => {
    const { read, good } = foundAt(talk(rows), 'surprised');
    expect([read, good]).toEqual([7, 6]);
  });
});

describe('a guess before the pull', () => {
  const guessed = (rows: readonly string[]) =>
    discuss(
      prepared,
      review(prepared, { name: 'class.csv', text: ['group,setup,reading,guess', ...rows].join('\n') }),
      { of: 'class', names: false },
    );

  it('stands beside what was read, in its own unit, and a guess in words is no number', () => {
    const { setups, orders } = foundAt(
      guessed(['A,L1,2.2,3 N', 'B,L1,2.2,5', 'C,L1,2.3,lots', 'A,L2,4.3,2', 'B,L2,4.4,6', 'C,L2,4.3,']),
      'guess',
    );
    expect(setups.map(({ setup, count, from, to }) => [setup, count, from, to])).toEqual([
      ['L1', 2, 3, 5],
      ['L2', 2, 2, 6],
    ]);
    // L2 asks for more: A guessed the other way round.
    expect(orders).toEqual([{ more: 'L2', less: 'L1', right: 1, of: 2 }]);
  });
});

describe('what the kit can not show', () => {
  it('is told by kind, with the setups', () => {
    const found = foundAt(talk(['A,L1,2.2', 'B,L1,2.2', 'C,L1,2.3', 'D,L1,2.2']), 'limits');
    const of = (limit: string) => found.find((each) => each.limit === limit)?.setups;
    expect(of('open')).toEqual(['L1']);
    expect(of('held')).toEqual(['C3']);
    expect(of('counted')).toEqual(['P1', 'P2']);
    expect(of('felt')).toEqual(['G1', 'G2']);
    expect(of('few')).not.toContain('L1');
    expect(of('few')).toContain('L2');
  });
});

describe('the youngest', () => {
  it('begin with what felt easier', () => {
    const young = demoPrepared((text, file) =>
      file === 'activity' ? text.replace('age: 9..11', 'age: 7..8') : text,
    );
    const found = talk(['A,G1,1', 'A,G2,2', 'B,G1,1', 'B,G2,2'], false, young);
    expect(found.questions[0]?.kind).toBe('ease');
    expect(found.inFive).toContain('ease');
  });
});
