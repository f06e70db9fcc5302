import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import Papa from 'papaparse';
import { describe, expect, it, test } from 'vitest';
import { runCommand } from '../command-line.ts';
import { exampleIn, scratchFolder } from './scratch-folder.ts';

const scratch = scratchFolder();

interface SetupFigures {
  readonly setup: string;
  readonly outcome: { readonly kind: string; readonly good?: { readonly from: number; readonly to: number } };
  readonly textbook: { readonly value?: number; readonly unit?: string };
  readonly assumed: readonly unknown[];
  readonly marks: null | {
    readonly unit: string;
    readonly from: number;
    readonly to: number;
    readonly expected?: number;
    readonly lower?: number;
    readonly upper?: number;
  };
  readonly table?: string;
  readonly working?: unknown;
}

/** What a person reads on a page: no styles, no marks of the language, no drawings. */
const wordsOf = (html: string): string =>
  html
    .replace(/<style[\s\S]*?<\/style>/g, ' ')
    .replace(/<[^>]+>/g, ' ')
    .replace(/\s+/g, ' ');

/** The row of a setup in the HTML key: from its heading to the next one. */
function keyRow(html: string, mark: string): string {
  const from = html.indexOf(`<th scope="row"><b>${mark}</b>`);
  if (from < 0) throw new Error(`no row for ${mark}`);
  return html.slice(from, html.indexOf('</tr>', from));
}

describe.each(['brackwater', 'second-kit', 'smallest'])('the figures of examples/%s', (example) => {
  const folder = exampleIn(scratch, example);
  const at = (...args: string[]) => runCommand(args, { folder });
  const json = JSON.parse(at('key', '--json').out) as {
    readonly tables: readonly { readonly table: string; readonly setups: readonly SetupFigures[] }[];
  };
  const setups = json.tables.flatMap(({ table, setups: each }) => each.map((setup) => ({ ...setup, table })));
  const csv = Papa.parse<Readonly<Record<string, string>>>(at('key', '--csv').out, {
    header: true,
    skipEmptyLines: true,
  });
  const text = at('key').out;
  at('pages', '--to', 'pages');
  const page = (name: string): string => readFileSync(join(folder, 'pages', name), 'utf8');
  const html = page('answer-key.html');

  it('are those of the tables that the files have', () => {
    expect(setups.length).toBeGreaterThan(1);
    expect(csv.errors).toEqual([]);
    expect(csv.data.map((row) => [row.table, row.setup])).toEqual(
      setups.map(({ table, setup }) => [table, setup]),
    );
  });

  test.each(setups)('of $setup are the same as JSON and as comma-separated values', (setup) => {
    const row = csv.data.find(({ setup: mark }) => mark === setup.setup) ?? {};
    expect(row.outcome).toBe(setup.outcome.kind);
    expect(row.assumed).toBe(String(setup.assumed.length));
    const { marks, textbook } = setup;
    if (textbook.value !== undefined) {
      expect(Number(row.textbook) / textbook.value).toBeCloseTo(1, 3);
      expect(row['textbook unit']).toBe(textbook.unit);
    }
    // The limits are whole graduations: printed with as many decimals as a mark has.
    const step = 10 ** -(/\.(\d+)/.exec(row.from ?? '')?.[1]?.length ?? 0);
    for (const end of ['from', 'to'] as const)
      if (marks === null) expect(row[end]).toBe('');
      else expect(Math.abs(Number(row[end]) - marks[end])).toBeLessThan(step * 0.51);
    if (marks?.expected !== undefined)
      expect(Math.abs(Number(row.expected) - marks.expected)).toBeLessThanOrEqual(
        (marks.to - marks.from) / 2,
      );
    if (marks?.lower !== undefined) expect(Number(row.lower)).toBeLessThanOrEqual(Number(row.upper));
  });

  test.each(setups)('of $setup are the same as JSON and when they are explained', (setup) => {
    const explained = JSON.parse(at('explain', setup.setup, '--json').out) as {
      readonly setups: readonly SetupFigures[];
    };
    const { working, ...figures } = explained.setups[0] ?? setup;
    expect(figures).toEqual(setup);
    expect(working).toBeDefined();
  });

  test.each(setups)('of $setup are the same good range in text, in HTML and as values', (setup) => {
    const row = csv.data.find(({ setup: mark }) => mark === setup.setup);
    const words = wordsOf(keyRow(html, setup.setup));
    const line = text.split('\n').find((each) => each.startsWith(`  ${setup.setup} `)) ?? '';
    if (setup.marks === null) return expect(row?.from).toBe('');
    const range = `${row?.from} to ${row?.to}`;
    expect(line).toContain(range);
    expect(words).toContain(range);
    if (row?.['from N'] !== '') {
      expect(line).toContain(`${row?.['from gf']} to ${row?.['to gf']} g`);
      expect(words).toContain(`${row?.['from gf']} to ${row?.['to gf']} g`);
    }
    const { lower, upper, expected } = row ?? {};
    const band = lower === upper ? lower : `${lower}–${upper}`;
    expect(words).toContain(setup.outcome.kind === 'band' ? band : `expected ${expected}`);
  });

  const names = readdirSync(join(folder, 'pages'));

  it('make a page a table, the key and the rotation', () => {
    expect(names).toHaveLength(json.tables.length + 2);
    expect(names).toEqual(expect.arrayContaining(['answer-key.html', 'rotation.html']));
  });

  test.each(names)('on %s ask no other host and need no other file', (name) => {
    const written = page(name);
    // The name of SVG's own language is the only address: nothing is fetched for it.
    expect(written.replaceAll('xmlns="http://www.w3.org/2000/svg"', '')).not.toMatch(
      /(https?:|ftp:|\/\/)\w/i,
    );
    expect(written).not.toMatch(
      /<(script|link|iframe|img|object|embed|base)\b|@import|\bsrc=|\burl\((?!['"]?#)/i,
    );
    expect(written).not.toMatch(/\bhref="(?!#)/);
    expect(written).toMatch(/^<!doctype html>/i);
    expect(written).toContain('<meta charset="utf-8">');
  });

  test.each(names.filter((name) => /^table-/.test(name)))('on %s give nothing away', (name) => {
    const written = page(name);
    // How far the strip goes is printed on the scale itself.
    const words = wordsOf(written).replaceAll(/The scale runs from \S+ to \S+/g, '');
    const here = setups.filter(({ setup }) => words.includes(`Setup ${setup}`));
    expect(here.length).toBeGreaterThan(0);
    expect(words).not.toMatch(/expected|good range|schoolbook|answer|hatched/i);
    for (const { setup, outcome } of here) {
      const row = csv.data.find(({ setup: mark }) => mark === setup) ?? {};
      if (row.from !== '') {
        expect(words).not.toContain(`${row.from} to ${row.to}`);
        // Neither in the drawings nor in any attribute: the figures as they were computed.
        const figures = JSON.stringify(outcome).match(/\d\.\d{4,}/g) ?? [];
        for (const figure of figures) expect(written).not.toContain(figure.slice(0, 6));
      }
    }
  });
});
