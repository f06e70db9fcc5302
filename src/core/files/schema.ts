import { activityFields, setupHeadFields, stageFields, tableFields } from './activity-fields.ts';
import { type Describe, fieldSchema, type JsonSchema, mapSchema, TEXT, wordsSchema } from './field-schema.ts';
import { type FileKind, VERSION } from './file-header.ts';
import { placeFields } from './gravity-fields.ts';
import { groupLanguageField } from './group-words.ts';
import { kitFields, measurementFields, partFields } from './kit-fields.ts';
import { daySchemas, whileWaitingSchema } from './period-schema.ts';
import { visitFields } from './visit-file.ts';
import { COMPOUND, type MachineWords, slotsOf, type Vocabulary } from './vocabulary.ts';

/** The published schema of a kind of file, from the same fields that the check uses. */
export function schemaOf(kind: FileKind, vocabulary: Vocabulary, describe: Describe): JsonSchema {
  const schema = { kit: kitSchema, activity: activitySchema, visit: visitSchema }[kind];
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    $id: `urn:handspike:${kind}:${VERSION[kind]}`,
    title: `handspike: ${kind} ${VERSION[kind]}`,
    description: describe(`file.${kind}`),
    ...schema(vocabulary, describe),
  };
}

const versionSchema = (kind: FileKind, describe: Describe): JsonSchema => ({
  description: describe('file.field.version'),
  const: `${kind} ${VERSION[kind]}`,
});

const placeSchema = (describe: Describe): JsonSchema => ({
  description: describe('file.field.place'),
  ...mapSchema(placeFields, describe),
});

function kitSchema(vocabulary: Vocabulary, describe: Describe): JsonSchema {
  const machines = vocabulary.machines.map((machine) => machine.name);
  const parts = vocabulary.partKinds.map(({ kind, meaning, fields }) => {
    const besides = {
      part: { description: describe('kit.field.part'), const: kind },
      fits: wordsSchema(describe('kit.field.fits'), machines),
    };
    const schema = mapSchema({ ...fields, ...partFields }, describe, besides, ['part']);
    return [defName('part', kind), { description: describe(meaning), ...schema }] as const;
  });
  return {
    ...mapSchema(
      kitFields,
      describe,
      {
        handspike: versionSchema('kit', describe),
        place: placeSchema(describe),
        parts: {
          description: describe('kit.field.parts'),
          type: 'object',
          additionalProperties: { anyOf: parts.map(([name]) => ref(name)) },
        },
        measured: {
          description: describe('kit.field.measured'),
          type: 'array',
          items: mapSchema(measurementFields, describe),
        },
      },
      ['handspike', 'parts'],
    ),
    $defs: Object.fromEntries(parts),
  };
}

function activitySchema(vocabulary: Vocabulary, describe: Describe): JsonSchema {
  const { machines } = vocabulary;
  const simple = machines.filter((machine) => machine.name !== COMPOUND);
  const defs: Record<string, JsonSchema> = {};
  for (const machine of machines) {
    defs[defName('table', machine.name)] = tableSchema(machine, describe);
    defs[defName('setup', machine.name)] = setupSchema(machine, simple, vocabulary, describe);
  }
  for (const { name, slots, fields } of simple) {
    const stage = mapSchema({ ...stageFields, ...fields }, describe, slotSchemas(slots, describe));
    defs[defName('stage', name)] = withMachine(stage, name);
  }
  return {
    ...mapSchema(
      activityFields,
      describe,
      {
        handspike: versionSchema('activity', describe),
        'while waiting': whileWaitingSchema(describe),
        tables: {
          description: describe('activity.field.tables'),
          type: 'array',
          items: { anyOf: machines.map((machine) => ref(defName('table', machine.name))) },
        },
      },
      ['handspike', 'tables'],
    ),
    $defs: defs,
  };
}

function tableSchema(machine: MachineWords, describe: Describe): JsonSchema {
  const schema = mapSchema(
    tableFields,
    describe,
    {
      roles: {
        description: describe('activity.field.roles'),
        type: 'object',
        additionalProperties: { description: describe('activity.field.role'), type: 'string' },
      },
      setups: {
        description: describe('activity.field.setups'),
        type: 'array',
        items: ref(defName('setup', machine.name)),
      },
    },
    ['setups'],
  );
  return withMachine(schema, machine.name);
}

function setupSchema(
  machine: MachineWords,
  simple: readonly MachineWords[],
  vocabulary: Vocabulary,
  describe: Describe,
): JsonSchema {
  const stages = {
    description: describe('activity.field.stages'),
    type: 'array',
    minItems: 2,
    items: { anyOf: simple.map((each) => ref(defName('stage', each.name))) },
  };
  return mapSchema(
    { ...setupHeadFields, ...vocabulary.setupFields, ...machine.fields },
    describe,
    {
      ...slotSchemas(slotsOf(vocabulary, machine), describe),
      ...(machine.name === COMPOUND ? { stages } : {}),
    },
    machine.name === COMPOUND ? ['stages'] : [],
  );
}

const slotSchemas = (
  slots: MachineWords['slots'],
  describe: Describe,
): { readonly [key: string]: JsonSchema } =>
  Object.fromEntries(
    Object.keys(slots).map((slot) => [slot, { description: describe('activity.field.slot'), type: TEXT }]),
  );

/** A table or stage is told from the others by the machine that it names. */
function withMachine(schema: JsonSchema, machine: string): JsonSchema {
  const properties = schema.properties as { readonly [key: string]: JsonSchema };
  const { description } = properties.machine ?? {};
  return { ...schema, properties: { ...properties, machine: { description, const: machine } } };
}

function visitSchema(_: Vocabulary, describe: Describe): JsonSchema {
  return mapSchema(
    visitFields,
    describe,
    {
      handspike: versionSchema('visit', describe),
      place: placeSchema(describe),
      roles: {
        description: describe('visit.field.roles'),
        type: 'object',
        additionalProperties: {
          type: 'object',
          additionalProperties: { description: describe('visit.field.role'), type: TEXT },
        },
      },
      missing: wordsSchema(describe('visit.field.missing')),
      'group labels': wordsSchema(describe('visit.field.group-labels')),
      'group languages': {
        description: describe('visit.field.group-languages'),
        type: 'object',
        additionalProperties: fieldSchema(groupLanguageField, describe),
      },
      arrival: {
        description: describe('visit.field.arrival'),
        type: 'object',
        additionalProperties: { description: describe('visit.field.arrival-reading'), type: TEXT },
      },
      ...daySchemas(describe),
    },
    ['handspike'],
  );
}

const defName = (what: string, name: string): string => `${what}-${name.replaceAll(' ', '-')}`;
const ref = (name: string): JsonSchema => ({ $ref: `#/$defs/${name}` });
