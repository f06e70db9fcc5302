/** Every shape that the file has had, in order; what stands here is never changed, only added to. */
export const MIGRATIONS: readonly string[] = [
  `
  CREATE TABLE visit (
    visit TEXT PRIMARY KEY,
    opened INTEGER NOT NULL,
    closed INTEGER,
    code TEXT NOT NULL,
    kit TEXT NOT NULL,
    activity TEXT NOT NULL,
    visit_file TEXT NOT NULL,
    bench TEXT
  ) STRICT, WITHOUT ROWID;
  CREATE UNIQUE INDEX open_code ON visit (code) WHERE closed IS NULL;

  CREATE TABLE entry (
    visit TEXT NOT NULL,
    position INTEGER NOT NULL,
    id TEXT NOT NULL,
    device TEXT NOT NULL,
    sequence INTEGER NOT NULL,
    made REAL NOT NULL,
    received REAL NOT NULL,
    behind REAL NOT NULL,
    seat TEXT NOT NULL,
    what TEXT NOT NULL,
    PRIMARY KEY (visit, position)
  ) STRICT, WITHOUT ROWID;
  CREATE UNIQUE INDEX entry_once ON entry (visit, id);

  CREATE TABLE pass (
    secret_hash TEXT PRIMARY KEY,
    visit TEXT NOT NULL,
    seat TEXT NOT NULL,
    device TEXT NOT NULL,
    given INTEGER NOT NULL
  ) STRICT, WITHOUT ROWID;
  `,
  `
  ALTER TABLE visit ADD COLUMN helper_code TEXT NOT NULL DEFAULT '';
  ALTER TABLE visit ADD COLUMN label TEXT;
  ALTER TABLE visit ADD COLUMN language TEXT;
  CREATE UNIQUE INDEX open_helper_code ON visit (helper_code) WHERE closed IS NULL AND helper_code <> '';
  CREATE INDEX pass_of_visit ON pass (visit);

  CREATE TABLE link (
    secret_hash TEXT PRIMARY KEY,
    made INTEGER NOT NULL,
    used INTEGER
  ) STRICT, WITHOUT ROWID;
  `,
];
