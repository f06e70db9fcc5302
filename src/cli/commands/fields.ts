import { nearestName } from '../../core/diagnostics/nearest-name.ts';
import { vocabulary } from '../../core/words.ts';
import { fieldsText, thingsWithFields } from '../../documents/text/fields-text.ts';
import { fileFieldsText, filesWithFields } from '../../documents/text/file-fields-text.ts';
import { readArguments } from '../arguments.ts';
import { type Command, EXIT, UsageFault } from '../command.ts';

export const fields: Command = {
  name: 'fields',
  usage: 'fields [FILE | MACHINE | KIND OF PART]',
  summary: 'list what may be written in a file, about a machine or a kind of part, with examples',
  options: ['FILE is kit, activity, table or visit', 'without a name, everything that can be asked for'],
  run: (args, terminal) => {
    const name = readArguments(args, {}).files.join(' ');
    const { machines, partKinds } = thingsWithFields(vocabulary);
    if (name === '') {
      terminal.print(
        `files: ${filesWithFields.join(', ')}\nmachines: ${machines.join(', ')}\nkinds of part: ${partKinds.join(', ')}`,
      );
      return EXIT.done;
    }
    const text = fileFieldsText('en', name) ?? fieldsText('en', vocabulary, name);
    if (text === null) {
      const nearest = nearestName(name, [...filesWithFields, ...machines, ...partKinds]);
      throw new UsageFault(
        `there is no file, machine or kind of part "${name}"${nearest === undefined ? '' : `; did you mean "${nearest}"?`}`,
      );
    }
    terminal.print(text);
    return EXIT.done;
  },
};
