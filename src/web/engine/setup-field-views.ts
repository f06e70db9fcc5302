import type { Field, Fields } from '../../core/description/fields.ts';
import type { Activity, ActivitySetup, ActivityTable, StageWords } from '../../core/files/activity.ts';
import type { Path } from '../../core/files/context.ts';
import { nodeAt } from '../../core/files/edit-text.ts';
import type { Node } from '../../core/files/node.ts';
import { visitFields } from '../../core/files/visit-file.ts';
import { machineWords, partKindNamed } from '../../core/files/vocabulary.ts';
import type { Kit } from '../../core/kit/kit.ts';
import { vocabulary } from '../../core/words.ts';
import { sentence } from '../../documents/sentences/sentence.ts';
import type { FieldGroup, FieldView, FileKind } from './prepare-wire.ts';

export interface FieldsOf {
  readonly language: 'en' | 'es';
  readonly kit: Kit;
  readonly activity: Activity;
  readonly roots: Readonly<Record<FileKind, Node | null>>;
  /** Name of the visit file. */
  readonly visit: string;
  /** Marks of the parts that stand in the setup today. */
  readonly parts: readonly string[];
}

/** The other two files are opened, not named in a field. */
const { kit: _kit, activity: _activity, ...ofVisit } = visitFields;
const VISIT_FIELDS: Fields = {
  missing: { type: 'text', meaning: 'visit.field.missing', example: 'amber, teal' },
  ...ofVisit,
};

/**
 * All that may be changed at a setup, from the descriptions which the machine, every setup and the kinds
 * of part give of themselves: a machine that is new has its fields here without a word of this file.
 */
export function fieldGroups(of: FieldsOf, table: ActivityTable, setup: ActivitySetup): readonly FieldGroup[] {
  const stages = setup.stages.map(
    (stage): FieldGroup => ({
      heading: stage.machine,
      kind: null,
      fields: ownFields(of, stage, stage.machine),
    }),
  );
  return [
    {
      heading: setup.mark,
      kind: null,
      fields: [
        ...ownFields(of, setup, table.machine),
        ...views(of, 'activity', setup.path, vocabulary.setupFields),
      ],
    },
    ...stages,
    { heading: table.mark, kind: null, fields: roleFields(of, table, [setup, ...setup.stages]) },
    ...of.parts.flatMap((mark) => partGroup(of, mark)),
    { heading: of.visit, kind: null, fields: views(of, 'visit', [], VISIT_FIELDS) },
  ].filter(({ fields }) => fields.length > 0);
}

const ownFields = (of: FieldsOf, { path }: StageWords, machine: string): readonly FieldView[] =>
  views(of, 'activity', path, machineWords(vocabulary, machine)?.fields ?? {});

/** What has to stand there, in the activity's words: `weight of 500 g`. */
function roleFields(of: FieldsOf, table: ActivityTable, words: readonly StageWords[]): readonly FieldView[] {
  const roles = [...new Set(words.flatMap((each) => Object.values(each.roles)))];
  return views(
    of,
    'activity',
    [...table.path, 'roles'],
    Object.fromEntries(
      roles.map((role): [string, Field] => [
        role,
        { type: 'text', meaning: 'activity.field.roles', example: 'weight of 500 g' },
      ]),
    ),
  );
}

function partGroup(of: FieldsOf, mark: string): readonly FieldGroup[] {
  const part = of.kit.parts.find((each) => each.mark === mark);
  const kind = part === undefined ? undefined : partKindNamed(vocabulary, part.kind);
  if (kind === undefined) return [];
  return [{ heading: mark, kind: kind.kind, fields: views(of, 'kit', ['parts', mark], kind.fields) }];
}

function views(of: FieldsOf, file: FileKind, path: Path, fields: Fields): readonly FieldView[] {
  return Object.entries(fields).map(([name, field]) => ({
    file,
    path: [...path, name],
    name,
    value: writtenAt(nodeAt(of.roots[file], [...path, name])),
    meaning: sentence(of.language, field.meaning),
    example: field.example,
    words: field.type === 'choice' ? field.of : field.type === 'yes-no' ? ['yes', 'no'] : [],
  }));
}

/** A list is shown with commas, as it may be written too. */
const writtenAt = (node: Node | null): string =>
  node?.kind === 'text' ? node.text : node?.kind === 'list' ? node.items.map(writtenAt).join(', ') : '';
