import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readKitFile } from './files/kit-file.ts';
import { simpleMachines } from './machines/list.ts';
import { prepare } from './prepare.ts';
import { startTable } from './start-table.ts';
import { vocabulary } from './words.ts';

const KITS = ['examples/second-kit/ferry.kit.yaml', 'examples/brackwater/boathouse.kit.yaml'];

const kitOf = (text: string) => readKitFile({ name: 'kit.yaml', text }, vocabulary).kit;

test.each(KITS)('every machine of %s starts with a setup that its files prepare without a fault', (path) => {
  const text = readFileSync(path, 'utf8');
  const kit = kitOf(text);
  if (kit === null) throw new Error('the kit of an example can be read');
  for (const { name } of simpleMachines) {
    const start = startTable(kit, name);
    const lines = Object.entries(start?.fields ?? {}).map(([field, value]) => `        ${field}: ${value}\n`);
    const kindOf = (mark: string) => kit.parts.find((part) => part.mark === mark)?.kind;
    const roles = Object.entries(start?.parts ?? {});
    const activity = `handspike: activity 1\ntitle: A\ntables:\n  - table: first\n    machine: ${name}\n    roles:\n${roles
      .map(([slot, mark]) => `      ${slot}: ${kindOf(mark)}\n`)
      .join('')}    setups:\n      - setup: first setup\n${lines.join('')}`;
    const visit = `handspike: visit 1\nkit: kit.yaml\nactivity: a.yaml\nroles:\n  first:\n${roles
      .map(([slot, mark]) => `    ${slot}: ${mark}\n`)
      .join('')}`;
    const { tables, diagnostics } = prepare({
      kit: { name: 'kit.yaml', text },
      activity: { name: 'a.yaml', text: activity },
      visit: { name: 'v.yaml', text: visit },
    });
    expect([name, start?.isClear]).toEqual([name, true]);
    expect([name, tables[0]?.setups.length]).toEqual([name, 1]);
    expect([name, diagnostics.filter(({ severity }) => severity === 'error')]).toEqual([name, []]);
  }
});

test('a kit without the parts that a machine needs starts no table of it', () => {
  const kit = kitOf(
    'handspike: kit 1\nserial: "1"\nname: A\nparts:\n  W1:\n    part: weight\n    of: 1 kg\n',
  );
  if (kit === null) throw new Error('a kit of one weight can be read');
  expect(startTable(kit, 'lever')).toBeNull();
  expect(startTable(kit, 'no such machine')).toBeNull();
});
