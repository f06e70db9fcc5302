import { appendFileSync, existsSync, renameSync, statSync } from 'node:fs';

const MOST_BYTES = 5 * 1024 * 1024;

/** Lines in a file that is put aside when it is full; the one put aside before goes. */
export function rollingLog(file: string): { readonly write: (line: string) => void } {
  let size = existsSync(file) ? statSync(file).size : 0;
  return {
    write: (line) => {
      try {
        if (size > MOST_BYTES) {
          renameSync(file, `${file}.old`);
          size = 0;
        }
        appendFileSync(file, line);
        size += line.length;
      } catch {
        // A disk that is full must not stop the server; what could not be stored is refused aloud.
      }
    },
  };
}
