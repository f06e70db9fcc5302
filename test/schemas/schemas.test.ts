import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import type { Field } from '../../src/core/description/fields.ts';
import type { Diagnostic } from '../../src/core/diagnostics/diagnostic.ts';
import {
  activityFields,
  setupHeadFields,
  stageFields,
  tableFields,
} from '../../src/core/files/activity-fields.ts';
import { checkField } from '../../src/core/files/check-field.ts';
import { fieldSchema } from '../../src/core/files/field-schema.ts';
import type { FileKind } from '../../src/core/files/file-header.ts';
import { gravityField, placeFields } from '../../src/core/files/gravity-fields.ts';
import { kitFields, measurementFields, partFields } from '../../src/core/files/kit-fields.ts';
import {
  adultFields,
  breakFields,
  classFields,
  closedFields,
  copiesField,
  wishFields,
} from '../../src/core/files/period-fields.ts';
import { schemaOf } from '../../src/core/files/schema.ts';
import { taskFields } from '../../src/core/files/titles.ts';
import { visitFields } from '../../src/core/files/visit-file.ts';
import { vocabulary } from '../../src/core/words.ts';
import { sentence } from '../../src/documents/sentences/sentence.ts';
import { schemaJson } from '../../src/documents/text/schema-json.ts';

const english = (key: string) => sentence('en', key);
const kinds: readonly FileKind[] = ['kit', 'activity', 'visit'];
const spoilt = new URL('../diagnostics/spoilt/', import.meta.url);
const examples = new URL('../../examples/', import.meta.url);

const ajv = new Ajv2020({ allErrors: true, strict: true, allowUnionTypes: true });
const validators = Object.fromEntries(
  kinds.map((kind) => [kind, ajv.compile(schemaOf(kind, vocabulary, english))]),
);
const kindOf = (name: string): FileKind => name.replace('.yaml', '').split('.').at(-1) as FileKind;

/** What the schema has against a file, as an editor would find it. */
function complaints(name: string, text: string): readonly string[] {
  const validate = validators[kindOf(name)];
  if (validate === undefined) throw new RangeError(`no schema for "${name}"`);
  validate(parse(text));
  return (validate.errors ?? []).map((error) => `${error.instancePath} ${error.message}`);
}

const read = (folder: URL, name: string) => readFileSync(new URL(name, folder), 'utf8');
const yamlIn = (folder: URL): readonly string[] =>
  existsSync(folder)
    ? readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) =>
        /\.(kit|activity|visit)\.yaml$/.test(name),
      )
    : [];

describe('the published schemas', () => {
  it.each(kinds)('of the %s file is what the fields say today', (kind) => {
    const url = new URL(`../../schemas/${kind}.schema.json`, import.meta.url);
    const now = schemaJson('en', kind, vocabulary);
    if (process.env.UPDATE_SCHEMAS === '1') writeFileSync(url, now);
    expect(readFileSync(url, 'utf8')).toBe(now);
  });

  it.each(yamlIn(spoilt).filter((name) => name.startsWith('sound')))('accepts %s', (name) => {
    expect(complaints(name, read(spoilt, name))).toEqual([]);
  });

  it.each(yamlIn(examples))('accepts the example %s', (name) => {
    expect(complaints(name, read(examples, name))).toEqual([]);
  });

  it('finds a misspelt key, a missing unit and a wrong first line, as the check does', () => {
    const kit = (line: string, part: string) =>
      `${line}\nserial: A\nname: B\nparts:\n  brick:\n    part: weight\n    ${part}\n`;
    const count = (text: string) => complaints('x.kit.yaml', text).length;
    expect(count(kit('handspike: kit 1', 'of: 200 g'))).toBe(0);
    expect(count(kit('handspike: kit 1', 'off: 200 g'))).toBeGreaterThan(0);
    expect(count(kit('handspike: kit 1', 'of: 200'))).toBeGreaterThan(0);
    expect(count(kit('handspike: kit 2', 'of: 200 g'))).toBeGreaterThan(0);
  });
});

const allFields: readonly (readonly [string, Field])[] = [
  kitFields,
  partFields,
  measurementFields,
  placeFields,
  gravityField,
  activityFields,
  tableFields,
  setupHeadFields,
  stageFields,
  visitFields,
  closedFields,
  adultFields,
  breakFields,
  wishFields,
  classFields,
  taskFields,
  { copies: copiesField },
  vocabulary.setupFields,
  ...vocabulary.partKinds.map(({ fields }) => fields),
  ...vocabulary.machines.map(({ fields }) => fields),
].flatMap((fields) => Object.entries(fields));

describe('every field', () => {
  it.each(allFields)('"%s" has an example that the check and its schema accept', (key, field) => {
    const found: Diagnostic[] = [];
    const context = { file: 'x', decimal: 'point', report: (each: Diagnostic) => found.push(each) } as const;
    const node = { kind: 'text', text: field.example, range: [0, 0], textFrom: 0 } as const;
    expect(checkField(node, key, field, { path: [key], id: `x/${key}` }, context)).not.toBeNull();
    expect(found).toEqual([]);
    const schema = fieldSchema(field, english) as { readonly examples: readonly unknown[] };
    expect(ajv.validate(schema, schema.examples[0])).toBe(true);
  });
});
