/** What a request has to look like; the same schemas check it and describe it in /openapi.json. */
export type JsonSchema = Readonly<Record<string, unknown>>;

const text = (maxLength: number, minLength = 1): JsonSchema => ({ type: 'string', minLength, maxLength });
const orNull = (schema: JsonSchema): JsonSchema => ({ anyOf: [schema, { type: 'null' }] });
const one = (value: string): JsonSchema => ({ type: 'string', const: value });
const yesOrNo: JsonSchema = { type: 'boolean' };
const whole = (minimum: number, maximum: number): JsonSchema => ({ type: 'integer', minimum, maximum });

export const strict = (
  properties: Readonly<Record<string, JsonSchema>>,
  optional: readonly string[] = [],
): JsonSchema => ({
  type: 'object',
  properties,
  required: Object.keys(properties).filter((name) => !optional.includes(name)),
  additionalProperties: false,
});

/** Marks and labels from the files, and names that devices made. */
const mark = text(60);
const deviceName: JsonSchema = { type: 'string', pattern: '^[A-Za-z0-9_-]{1,64}$' };
const id: JsonSchema = { type: 'string', pattern: '^[A-Za-z0-9_-]{1,64}\\.[0-9]{1,9}$' };
/** Milliseconds since 1970; a clock may be wrong by years, but not by ages. */
const clock: JsonSchema = { type: 'number', minimum: -1e14, maximum: 1e14 };
/** As a group writes a reading, whatever it writes. */
const written = text(200, 0);

const seatOf = {
  teacher: strict({ kind: one('teacher') }),
  helper: strict({ kind: one('helper'), table: orNull(mark) }),
  group: strict({ kind: one('group'), group: mark }),
};

const happenings: readonly JsonSchema[] = [
  strict({
    kind: one('reading'),
    group: mark,
    setup: mark,
    written,
    ease: orNull(whole(1, 20)),
    turns: orNull(text(60, 0)),
    note: orNull(text(500, 0)),
  }),
  strict({ kind: one('correction'), of: id, written }),
  strict({ kind: one('void'), of: id }),
  strict({ kind: one('restore'), of: id }),
  strict({ kind: one('arrived'), group: mark, table: mark }),
  strict({ kind: one('done'), group: mark, table: mark }),
  strict({ kind: one('begun') }),
  strict({ kind: one('signal'), round: whole(1, 100) }),
  strict({ kind: one('paused') }),
  strict({ kind: one('resumed') }),
  strict({ kind: one('late'), group: mark, minutes: { type: 'number', minimum: 0, maximum: 600 } }),
  strict({ kind: one('closed'), table: mark }),
  strict({ kind: one('opened'), table: mark }),
  strict({ kind: one('arrival'), setup: mark, written }),
  strict({ kind: one('handed'), group: mark }),
  strict({ kind: one('freed'), group: mark, from: deviceName }),
  strict({ kind: one('recalled'), of: id }),
  strict({ kind: one('telling'), much: { type: 'string', enum: ['nothing', 'again', 'try'] } }),
  strict({
    kind: one('wall'),
    shows: orNull(strict({ question: text(40), isOpen: yesOrNo, names: yesOrNo })),
  }),
];

/** Chosen by its `kind`, so that what is wrong is told of that kind alone. */
const chosenByKind = (schemas: readonly JsonSchema[]): JsonSchema => ({
  type: 'object',
  required: ['kind'],
  discriminator: { propertyName: 'kind' },
  oneOf: schemas,
});

export const entrySchema = strict({
  id,
  visit: text(40),
  device: deviceName,
  sequence: whole(1, 999_999_999),
  made: clock,
  seat: chosenByKind(Object.values(seatOf)),
  what: chosenByKind(happenings),
});

export const MOST_ENTRIES = 50;

export const entriesSchema = strict({
  sent: clock,
  entries: { type: 'array', maxItems: MOST_ENTRIES, items: entrySchema },
});

export const joinSchema = strict({
  code: text(40),
  device: deviceName,
  seat: chosenByKind([seatOf.group, seatOf.helper]),
});

export const codeSchema = strict({ code: text(40) });

export const asSchema = strict(
  { as: { type: 'string', enum: ['group', 'helper', 'teacher'] }, visit: text(40) },
  ['as', 'visit'],
);

const source = strict({ name: text(200), text: text(400_000) });

export const openSchema = strict(
  {
    label: orNull(mark),
    language: orNull(text(10)),
    files: strict({ kit: source, activity: source, visit: orNull(source), bench: orNull(source) }, ['bench']),
  },
  ['label', 'language'],
);

export const doorSchema = strict({ for: { type: 'string', enum: ['group', 'helper'] } }, ['for']);

export const visitSchema = strict({ visit: text(40) });
