import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { gzipSync } from 'node:zlib';

/** A file of the pages, held in memory. */
export interface PageFile {
  readonly type: string;
  readonly body: Buffer;
  readonly tag: string;
  /** Its name holds a hash of what is in it: it never changes. */
  readonly isForGood: boolean;
  /** Smaller where that pays; made once, when it is first asked for. */
  readonly zipped: () => Buffer | null;
}

/** By path, `/assets/...`; pages by their address. */
export type PageFiles = ReadonlyMap<string, PageFile>;

const TYPES: Readonly<Record<string, string>> = {
  html: 'text/html; charset=utf-8',
  js: 'text/javascript; charset=utf-8',
  css: 'text/css; charset=utf-8',
  svg: 'image/svg+xml; charset=utf-8',
  json: 'application/json; charset=utf-8',
  webmanifest: 'application/manifest+json; charset=utf-8',
  png: 'image/png',
  ico: 'image/x-icon',
  woff2: 'font/woff2',
  ttf: 'font/ttf',
  wasm: 'application/wasm',
  txt: 'text/plain; charset=utf-8',
};

const ZIPPED = /^(text|image\/svg|application\/(json|manifest)|font\/ttf)/;
export const PAGES = ['group', 'teacher', 'helper', 'chart', 'visits', 'prepare', 'discuss'] as const;

/**
 * Reads the built pages. `/group` is `group.html` where there is one and the first page otherwise; what
 * is no file of a known kind is left out.
 */
export function pageFiles(folder: string): PageFiles {
  const files = new Map<string, PageFile>();
  if (!existsSync(folder)) return files;
  for (const entry of readdirSync(folder, { recursive: true, withFileTypes: true })) {
    const path = join(entry.parentPath, entry.name);
    const type = TYPES[/\.(\w+)$/.exec(entry.name)?.[1] ?? ''];
    if (!entry.isFile() || type === undefined) continue;
    const address = `/${relative(folder, path).split(sep).join('/')}`;
    files.set(address, pageFile(readFileSync(path), type, address.startsWith('/assets/')));
  }
  const first = files.get('/index.html');
  if (first !== undefined) files.set('/', first);
  for (const page of PAGES) {
    const own = files.get(`/${page}.html`) ?? first;
    if (own !== undefined) files.set(`/${page}`, own);
  }
  return files;
}

function pageFile(body: Buffer, type: string, isForGood: boolean): PageFile {
  let zipped: Buffer | null | undefined;
  return {
    type,
    body,
    isForGood,
    tag: `"${createHash('sha256').update(body).digest('base64url').slice(0, 22)}"`,
    zipped: () => {
      if (zipped !== undefined) return zipped;
      const tried = ZIPPED.test(type) ? gzipSync(body, { level: 9 }) : null;
      zipped = tried !== null && tried.length < body.length ? tried : null;
      return zipped;
    },
  };
}
