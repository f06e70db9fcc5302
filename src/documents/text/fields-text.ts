import type { Field, Fields } from '../../core/description/fields.ts';
import { machineWords, partKindNamed, type Vocabulary } from '../../core/files/vocabulary.ts';
import type { Slot } from '../../core/machines/machine.ts';
import type { Language } from '../sentences/language.ts';
import { sentence } from '../sentences/sentence.ts';
import { columns } from './columns.ts';

/** Everything that has fields of its own: machines for an activity, kinds of part for a kit. */
export const thingsWithFields = (vocabulary: Vocabulary) => ({
  machines: vocabulary.machines.map((machine) => machine.name),
  partKinds: vocabulary.partKinds.map((kind) => kind.kind),
});

/**
 * What may be written about a machine's setup or about a kind of part: each field with an example and
 * what it means, required ones marked. `null` where nothing has that name.
 */
export function fieldsText(language: Language, vocabulary: Vocabulary, name: string): string | null {
  const machine = machineWords(vocabulary, name);
  const part = partKindNamed(vocabulary, name);
  const blocks = [
    ...(part === undefined
      ? []
      : [sentence(language, 'fields.part', { name }), ...fieldTable(language, part.fields)]),
    ...(machine === undefined
      ? []
      : [
          ...(part === undefined ? [] : ['']),
          sentence(language, 'fields.machine', { name }),
          ...fieldTable(language, { ...machine.fields, ...vocabulary.setupFields }),
          '',
          sentence(language, 'fields.slots'),
          ...slotLines(language, { ...machine.slots, ...vocabulary.setupSlots }),
        ]),
  ];
  return blocks.length === 0 ? null : blocks.join('\n');
}

/** Fields with an example each, and what they mean. */
export const fieldTable = (language: Language, fields: Fields): readonly string[] =>
  columns(
    Object.entries(fields).map(([key, field]) => [
      `  ${key}: ${field.example}`,
      field.required ? sentence(language, 'fields.required') : '',
      `${sentence(language, field.meaning)}${choices(field)}`,
    ]),
    ['left', 'left', 'left'],
  );

const choices = (field: Field): string => (field.type === 'choice' ? ` (${field.of.join(' | ')})` : '');

const slotLines = (language: Language, slots: Readonly<Record<string, Slot>>): readonly string[] =>
  columns(
    Object.entries(slots).map(([slot, { kinds, optional }]) => [
      `  ${slot}`,
      optional ? '' : sentence(language, 'fields.required'),
      kinds.join(' | '),
    ]),
    ['left', 'left', 'left'],
  );
