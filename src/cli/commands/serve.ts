import type { VisitToOpen } from '../../server/visits/visits.ts';
import { readArguments } from '../arguments.ts';
import { type Command, EXIT, type Terminal, UsageFault } from '../command.ts';
import { DATA_OPTION, dataFolder } from '../data-folder.ts';
import { preparationFiles } from '../files.ts';
import { serveUntilEnded } from '../serving.ts';

export const serve: Command = {
  name: 'serve',
  usage: 'serve [VISIT | KIT ACTIVITY] [--port PORT] [--lan] [--data FOLDER]',
  summary: 'open a visit for a class: readings on any device, judged as they come',
  options: [
    '--port PORT     where it listens (else 8377, or one of the next)',
    '--lan           for everybody on the network, and not only for this machine',
    DATA_OPTION,
    "--class LABEL   which of the visit's classes, where it has several",
    '--name NAME     another name by which this machine is known on the network',
    '--afresh        not go on with a visit that is open, but close it and open it anew',
    '--once          end as soon as it listens',
  ],
  run: async (args, terminal) => {
    const found = readArguments(args, {
      port: 'text',
      lan: 'switch',
      data: 'text',
      class: 'text',
      name: 'text',
      afresh: 'switch',
      once: 'switch',
    });
    const name = found.text('name');
    await serveUntilEnded(terminal, {
      folder: dataFolder(terminal, found.text('data')),
      visit: visitNamed(terminal, found.files, found.text('class')),
      port: portIn(found.text('port')),
      isOnNetwork: found.isOn('lan'),
      isAfresh: found.isOn('afresh'),
      names: name === null ? [] : [name],
      isOnce: found.isOn('once'),
    });
    return EXIT.done;
  },
};

/** With no file named and none in the folder, whatever is open goes on. */
function visitNamed(terminal: Terminal, names: readonly string[], label: string | null): VisitToOpen | null {
  try {
    return { files: preparationFiles(terminal.folder, names), label, language: null };
  } catch (fault) {
    if (names.length === 0 && fault instanceof UsageFault) return null;
    throw fault;
  }
}

/** @example portIn('8080') // => 8080 */
export function portIn(text: string | null): number | null {
  if (text === null) return null;
  const port = Number(text);
  if (!/^\d{1,5}$/.test(text) || port > 65_535)
    throw new UsageFault(`--port wants a number up to 65535, and not "${text}"`);
  return port;
}
