import { nearestName } from '../../core/diagnostics/nearest-name.ts';
import { vocabulary } from '../../core/words.ts';
import { fieldsText, thingsWithFields } from '../../documents/text/fields-text.ts';
import { readArguments } from '../arguments.ts';
import { type Command, EXIT, UsageFault } from '../command.ts';

export const fields: Command = {
  name: 'fields',
  usage: 'fields [MACHINE | KIND OF PART]',
  summary: 'list what may be written about a machine or a kind of part, with examples',
  options: ['without a name, the machines and the kinds of part that there are'],
  run: (args, terminal) => {
    const name = readArguments(args, {}).files.join(' ');
    const { machines, partKinds } = thingsWithFields(vocabulary);
    if (name === '') {
      terminal.print(`machines: ${machines.join(', ')}\nkinds of part: ${partKinds.join(', ')}`);
      return EXIT.done;
    }
    const text = fieldsText('en', vocabulary, name);
    if (text === null) {
      const nearest = nearestName(name, [...machines, ...partKinds]);
      throw new UsageFault(
        `there is no machine or kind of part "${name}"${nearest === undefined ? '' : `; did you mean "${nearest}"?`}`,
      );
    }
    terminal.print(text);
    return EXIT.done;
  },
};
