import { join } from 'node:path';
import type { Serving } from '../server/serve.ts';
import type { VisitToOpen } from '../server/visits/visits.ts';
import { type Terminal, UsageFault } from './command.ts';
import { packageRoot } from './package-root.ts';
import { storageRefusal } from './storage-refusal.ts';
import { version } from './version.ts';

export interface ServingWishes {
  readonly folder: string;
  readonly visit: VisitToOpen | null;
  readonly port: number | null;
  readonly isOnNetwork: boolean;
  readonly isAfresh: boolean;
  readonly names: readonly string[];
  /** Ends as soon as it listens. */
  readonly isOnce: boolean;
}

/** Starts the server, says where it is, and stays until it is told to end. */
export async function serveUntilEnded(terminal: Terminal, wishes: ServingWishes): Promise<void> {
  // Loaded here, so that no other command waits for what a server needs.
  const { serve } = await import('../server/serve.ts');
  const built = join(packageRoot(), 'dist');
  const serving = await serve({
    ...wishes,
    pages: join(built, 'web'),
    deskScript: join(built, 'desk.js'),
    version: version(),
  }).catch((fault: unknown) => {
    throw storageRefusal(fault, wishes.folder);
  });
  if (serving.record === null) {
    await serving.stop();
    throw new UsageFault('no visit is open: name a visit file');
  }
  const picture = await serving.picture(terminal.strong('x') !== 'x');
  terminal.print(doorText(serving, picture, wishes.isOnNetwork));
  if (!wishes.isOnce) await endAsked();
  await serving.stop();
  if (!wishes.isOnce) terminal.tell('handspike: the server has ended; everything that was stored is kept.');
}

const endAsked = (): Promise<void> =>
  new Promise((resolve) => {
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => resolve());
  });

function doorText(serving: Serving, picture: string, isOnNetwork: boolean): string {
  const { record, title, entries, addresses, link, backup } = serving;
  if (record === null) return '';
  const [first = ''] = addresses;
  return [
    `${title} is open${entries === 0 ? '' : ` and goes on, with ${entries} entries so far`}.`,
    ...(backup === null
      ? []
      : [`The file was brought to a newer shape; as it was, it is kept in ${backup}.`]),
    '',
    `  teacher  ${link}`,
    '           lets in once; handspike link prints another',
    `  groups   ${first}/group#${record.code}    code ${spaced(record.code)}`,
    `  helpers  ${first}/helper#${record.helperCode}    code ${spaced(record.helperCode)}`,
    '           shows what is expected: for adults only',
    '',
    picture,
    isOnNetwork ? onNetworkText(addresses) : 'Only this machine reaches it; --lan opens it to the network.',
    'Ctrl-C ends it; nothing that was stored is lost by that.',
  ].join('\n');
}

const onNetworkText = (addresses: readonly string[]): string =>
  [
    'EVERYBODY ON THIS NETWORK can reach the door of this server, by plain http:',
    ...addresses.map((address) => `  ${address}`),
    'Without a code nobody gets further; what is sent can be read along by whoever listens on the network.',
  ].join('\n');

const spaced = (code: string): string =>
  code.match(code.length % 3 === 0 ? /.{3}/g : /.{1,5}/g)?.join(' ') ?? code;
