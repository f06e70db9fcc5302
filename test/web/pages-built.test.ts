import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { beforeAll, describe, expect, test } from 'vitest';
import { buildPagesWhereStale } from './built-pages.ts';

const WEB = join('dist', 'web');
const read = (path: string): string => readFileSync(join(WEB, path), 'utf8');
const pages = (): readonly string[] => readdirSync(WEB).filter((name) => name.endsWith('.html'));

/** All scripts that a page loads before anything is done on it, with what they import in turn. */
function scriptsOf(page: string): ReadonlySet<string> {
  const found = new Set<string>();
  const follow = (path: string): void => {
    if (found.has(path)) return;
    found.add(path);
    for (const [, other = ''] of read(path).matchAll(/["'`]\.\/([\w-]+\.js)["'`]/g))
      follow(`assets/${other}`);
  };
  for (const [, path = ''] of read(page).matchAll(/(?:src|href)="\.?\/(assets\/[^"]+\.js)"/g)) follow(path);
  return found;
}

const zipped = (page: string): number =>
  [...scriptsOf(page)].reduce((sum, path) => sum + gzipSync(readFileSync(join(WEB, path))).length, 0);

beforeAll(buildPagesWhereStale);

describe('the pages as they are built', () => {
  test("the group's page loads at most 60 kB of script, zipped; every other at most 200 kB", () => {
    expect(scriptsOf('group.html').size).toBeGreaterThan(0);
    expect(zipped('group.html')).toBeLessThanOrEqual(60_000);
    for (const page of pages()) expect([page, zipped(page) <= 200_000]).toEqual([page, true]);
  });

  test.each([
    ['prepare.html', 'engine-thread-'],
    ['discuss.html', 'talk-thread-'],
  ])('what %s loads first has no engine in it, and %s is at most 300 kB, zipped', (page, thread) => {
    const [engine = ''] = readdirSync(join(WEB, 'assets')).filter((name) => name.startsWith(thread));
    expect(zipped(page)).toBeLessThanOrEqual(60_000);
    expect(scriptsOf(page)).not.toContain(`assets/${engine}`);
    const size = gzipSync(readFileSync(join(WEB, 'assets', engine))).length;
    expect(size).toBeGreaterThan(50_000);
    expect(size).toBeLessThanOrEqual(300_000);
  });

  test('no page has script or style in it, and nothing comes from elsewhere', () => {
    for (const page of pages()) {
      const markup = read(page);
      expect(markup).not.toMatch(/<script(?![^>]*\ssrc=)|<style|\sstyle=|\son\w+=/);
      // Two pages work under any path: they find their files beside themselves.
      const elsewhere = /^(prepare|discuss)\.html$/.test(page)
        ? /(?:src|href)="(?!\.\/)[^"]*"/g
        : /(?:src|href)="(?!\/)[^"]*"/g;
      expect([...markup.matchAll(elsewhere)]).toEqual([]);
    }
    const styles = readdirSync(join(WEB, 'assets')).filter((name) => name.endsWith('.css'));
    for (const style of styles) expect(read(`assets/${style}`)).not.toMatch(/url\(["']?(?!\.\/[\w-]+\.ttf)/);
  });

  test('the font comes along, with its licence and those of the packages', () => {
    const fonts = readdirSync(join(WEB, 'assets')).filter((name) => name.endsWith('.ttf'));
    expect(fonts.length).toBe(2);
    const notices = read('third-party-notices.txt');
    for (const name of ['preact', 'idb', 'yaml', 'SIL OPEN FONT LICENSE']) expect(notices).toContain(name);
  });

  test('the worker knows every file that it has to keep, and none of the engines', () => {
    const worker = read('service-worker.js');
    const ofGroup = [...scriptsOf('index.html'), ...scriptsOf('group.html')];
    expect(ofGroup.filter((path) => !worker.includes(`/${path}`))).toEqual([]);
    const engines = /^(engine-thread|study-thread|talk-thread|paper-thread|typst_ts|prepare|discuss|teacher)/;
    const kept = readdirSync(join(WEB, 'assets')).filter((name) => worker.includes(`/assets/${name}`));
    expect(kept.filter((name) => engines.test(name))).toEqual([]);
    expect(kept.filter((name) => /\.(css|ttf)$/.test(name)).length).toBeGreaterThanOrEqual(4);
    expect(worker).not.toContain('__FILES__');
  });
});
