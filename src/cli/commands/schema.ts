import { vocabulary } from '../../core/words.ts';
import { schemaJson } from '../../documents/text/schema-json.ts';
import { readArguments } from '../arguments.ts';
import { type Command, EXIT, UsageFault } from '../command.ts';

const KINDS = ['kit', 'activity', 'visit'] as const;

export const schema: Command = {
  name: 'schema',
  usage: 'schema kit|activity|visit',
  summary: 'print the JSON Schema of a file, for editors that check while one types',
  options: [],
  run: (args, terminal) => {
    const { files } = readArguments(args, {});
    const kind = KINDS.find((each) => each === files[0]);
    if (kind === undefined || files.length > 1)
      throw new UsageFault('say which schema: kit, activity or visit');
    terminal.print(schemaJson('en', kind, vocabulary));
    return EXIT.done;
  },
};
