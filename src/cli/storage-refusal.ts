import { FileFault } from './command.ts';

const WORDS: Readonly<Record<string, string>> = {
  damaged: 'it is damaged; nothing was changed in it. Put back a copy: handspike restore FILE',
  newer: 'it was written by a newer handspike; nothing was changed in it. Use that one',
  busy: 'a server uses it at this moment; stop that one first, or name another folder with --data',
  missing: 'there is nothing there',
  there: 'it is there already, and is not written over',
  EADDRINUSE: 'the port is taken; name another with --port',
  EACCES: 'it is not allowed here',
};

/** What kept the server or a copy from its work, in words; anything else is a fault of the program. */
export function storageRefusal(fault: unknown, name: string): FileFault {
  const code = (fault as { readonly code?: string }).code ?? '';
  const words = WORDS[code];
  if (words === undefined) throw fault;
  return new FileFault(`${name}: ${words}`);
}
