import { readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { rehearse } from '../../src/core/rehearse.ts';
import { talkSheets, toldTalk } from '../../src/documents/discussion/talk-told.ts';
import { altOf } from '../../src/documents/sheets/drawing-figure.ts';
import { discussionText } from '../../src/documents/text/discussion-text.ts';
import { demoPrepared } from './demo-prepared.ts';

const prepared = demoPrepared();
const rehearsal = rehearse(prepared, { groups: 6, mistakes: 4, seed: 3 });
const toldIn = (language: 'en' | 'es', names = false) =>
  toldTalk(language, prepared, rehearsal.review, { of: 'rehearsal', names });
const golden = (name: string, text: string): string => {
  const file = new URL(`./${name}.golden.txt`, import.meta.url);
  if (process.env.UPDATE_GOLDEN === '1') writeFileSync(file, text);
  return readFileSync(file, 'utf8');
};
/** What a person reads on a page, pictures by their words. */
const wordsOf = (html: string): string =>
  html
    .replace(/<style[\s\S]*?<\/style>/g, '')
    .replace(/<svg[\s\S]*?<\/svg>/g, (svg) => ` [${altOf(svg)}] `)
    .replace(/<\/(p|h1|h2|dt|dd|tr|li|figcaption|label)>/g, '\n')
    .replace(/<[^>]+>/g, ' ');

describe.each(['en', 'es'] as const)('the talk about a rehearsal in %s', (language) => {
  const told = toldIn(language);
  const { talk, about } = told;
  const sheets = talkSheets(language, told);

  it('has its questions, answers and notes as they were looked at', () => {
    const text = discussionText(language, talk, about);
    expect(text).toBe(golden(`discussion.${language}`, text));
  });

  it('shows each question on the wall, and its notes only to whoever leads it', () => {
    const wall = wordsOf(sheets.wall);
    const notes = wordsOf(sheets.notes);
    expect(talk.pages.length).toBeGreaterThan(5);
    for (const { ask, notes: own } of talk.pages) {
      expect(wall).toContain(ask.replaceAll('"', '&quot;'));
      expect(notes).toContain(ask.replaceAll('"', '&quot;'));
      expect(notes).toContain(own.back.replaceAll('"', '&quot;'));
      expect(wall).not.toContain(own.idea.replaceAll('"', '&quot;'));
    }
  });

  it('names no group unless that is wished', () => {
    const named = discussionText(language, toldIn(language, true).talk, about);
    const group = language === 'en' ? /\bgroup [A-F]\b/i : /\bgrupo [A-F]\b/i;
    expect(discussionText(language, talk, about)).not.toMatch(group);
    expect(wordsOf(sheets.wall)).not.toMatch(group);
    expect(named).toMatch(group);
  });

  it('covers the answer to its great question: the asking picture tells no joules', () => {
    const saved = talk.pages.find(({ kind }) => kind === 'saved');
    const alts = (parts: NonNullable<typeof saved>['shown']) =>
      parts.flatMap((part) => (part.part === 'figure' ? [altOf(part.svg)] : [])).join(' ');
    expect(alts(saved?.shown ?? [])).not.toMatch(/\d J\b/);
    expect(alts(saved?.answer ?? [])).toMatch(/\d J\b/);
  });
});

it('says what was written as its language writes numbers', () => {
  const answers = (language: 'en' | 'es') =>
    toldIn(language)
      .talk.pages.filter(({ kind }) => kind === 'surprised')
      .flatMap(({ answer }) => answer.flatMap((part) => (part.part === 'line' ? [part.text] : [])))
      .join(' ');
  expect(answers('en')).toMatch(/: \d+\.\d/);
  expect(answers('es')).toMatch(/: \d+,\d/);
  expect(answers('es')).not.toMatch(/\d\.\d/);
});

it('a page of the talk is one file: no script, nothing fetched, ids once', () => {
  const told = { ...toldIn('en'), about: '<b>' };
  for (const html of Object.values(talkSheets('en', told))) {
    expect(html).not.toMatch(/<script|<link|<img|\ssrc=|\shref=|url\(|@import|<b>/);
    const ids = [...html.matchAll(/ id="([^"]+)"/g)].map((match) => match[1]);
    expect(new Set(ids).size).toBe(ids.length);
  }
});
