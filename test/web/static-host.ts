import { readFileSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.ttf': 'font/ttf',
  '.wasm': 'application/wasm',
};

/** What a careful host allows: as much as the pages need, and less, where WebAssembly is forbidden too. */
export const STRICT = "default-src 'self'; object-src 'none'; base-uri 'none'";
export const WITH_TYPESETTER = `${STRICT}; script-src 'self' 'wasm-unsafe-eval'`;

/** A host that knows files and nothing else, with all pages below a path that isn't theirs. */
export async function staticHost(
  below: string,
  policy = WITH_TYPESETTER,
): Promise<{ address: string; stop: () => Promise<void> }> {
  const server = createServer((request, response) => {
    const path = new URL(request.url ?? '/', 'http://host').pathname;
    const file = join('dist', 'web', normalize(path.slice(below.length)));
    const isThere = path.startsWith(below) && statSync(file, { throwIfNoEntry: false })?.isFile() === true;
    if (!isThere) return void response.writeHead(404).end();
    response.writeHead(200, {
      'content-type': TYPES[extname(file)] ?? 'application/octet-stream',
      'content-security-policy': policy,
    });
    response.end(readFileSync(file));
  });
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  const { port } = server.address() as AddressInfo;
  return {
    address: `http://127.0.0.1:${port}${below}`,
    stop: () => new Promise((done) => server.close(() => done())),
  };
}
