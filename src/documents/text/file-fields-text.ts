import type { Fields } from '../../core/description/fields.ts';
import { activityFields, tableFields } from '../../core/files/activity-fields.ts';
import { groupLanguageField } from '../../core/files/group-words.ts';
import { kitFields } from '../../core/files/kit-fields.ts';
import {
  adultFields,
  breakFields,
  classFields,
  closedFields,
  copiesField,
  wishFields,
} from '../../core/files/period-fields.ts';
import { taskFields } from '../../core/files/titles.ts';
import { visitFields } from '../../core/files/visit-file.ts';
import type { Language } from '../sentences/language.ts';
import { sentence } from '../sentences/sentence.ts';
import { fieldTable } from './fields-text.ts';

/** What stands under a key of a file: fields of its own, or a list of blocks with these fields. */
interface FileWords {
  readonly fields: Fields;
  readonly lists: readonly { readonly key: string; readonly meaning: string; readonly fields: Fields }[];
  /** Keys with a word or several, and what they look like. */
  readonly words: Fields;
}

const words = (meaning: string, example: string): Fields[string] => ({ type: 'marks', meaning, example });

/** The heads of the three files and of a table, by the name that one asks for. */
const FILES: Readonly<Record<'kit' | 'activity' | 'table' | 'visit', FileWords>> = {
  kit: { fields: kitFields, lists: [], words: {} },
  activity: {
    fields: activityFields,
    lists: [{ key: 'while waiting', meaning: 'activity.field.while-waiting', fields: taskFields }],
    words: {},
  },
  table: { fields: tableFields, lists: [], words: {} },
  visit: {
    fields: visitFields,
    words: {
      'group labels': words('visit.field.group-labels', 'red, blue'),
      missing: words('visit.field.missing', 'amber, teal'),
      closed: words('visit.field.closed', '4, 5'),
      apart: words('visit.field.apart', 'A, B'),
      together: words('visit.field.together', 'C, D'),
      beside: words('visit.field.beside', '1, 2, 3'),
    },
    lists: [
      {
        key: 'copies',
        meaning: 'visit.field.copies',
        fields: { '"2"': copiesField },
      },
      {
        key: 'group languages',
        meaning: 'visit.field.group-languages',
        fields: { F: groupLanguageField },
      },
      { key: 'closed', meaning: 'visit.field.closed', fields: closedFields },
      { key: 'adults', meaning: 'visit.field.adults', fields: adultFields },
      { key: 'breaks', meaning: 'visit.field.breaks', fields: breakFields },
      { key: 'wishes', meaning: 'visit.field.wishes', fields: wishFields },
      { key: 'classes', meaning: 'visit.field.classes', fields: classFields },
    ],
  },
};

export const filesWithFields: readonly string[] = Object.keys(FILES);

/** What may be written in a file's own lines, and below its keys; `null` where nothing has that name. */
export function fileFieldsText(language: Language, name: string): string | null {
  const found = Object.hasOwn(FILES, name) ? FILES[name as keyof typeof FILES] : undefined;
  if (found === undefined) return null;
  return [
    sentence(language, `fields.file.${name}`),
    ...fieldTable(language, { ...found.fields, ...found.words }),
    ...found.lists.flatMap(({ key, meaning, fields }) => [
      '',
      sentence(language, 'fields.below', { key, meaning: sentence(language, meaning) }),
      ...fieldTable(language, fields),
    ]),
  ].join('\n');
}
