import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { advise } from '../../core/advise.ts';
import { isError } from '../../core/diagnostics/diagnostic.ts';
import { prepare } from '../../core/prepare.ts';
import { pairStart } from './pair-start.ts';
import type { Texts } from './prepare-wire.ts';
import { tableStart } from './table-start.ts';
import { withEdits } from './with-edits.ts';

/** By kit and machine: so many of 100 groups at least, at a ratio of at least so much. */
const kits = {
  'second-kit/ferry.kit.yaml': {
    lever: [95, 1.5],
    'inclined plane': [95, 1.5],
    tackle: [95, 1.5],
    wedge: [95, 1.5],
  },
  'brackwater/boathouse.kit.yaml': {
    lever: [95, 1.5],
    'inclined plane': [95, 1.5],
    // Two carts: nothing in this kit differs more on a scale that reads both.
    'drag on the level': [75, 1.2],
    tackle: [95, 1.5],
    wedge: [95, 1.5],
  },
} as const;

/** A kit with nothing on its tables yet, and one table of a machine as it is proposed. */
function begun(kit: string, machine: string): Texts {
  const texts: Texts = {
    kit: {
      name: 'a.kit.yaml',
      text: readFileSync(`examples/${kit}`, 'utf8').replace(/^bench book:.*$/m, ''),
    },
    activity: { name: 'a.activity.yaml', text: 'handspike: activity 1\ntitle: A day\n' },
    visit: { name: 'a.visit.yaml', text: 'handspike: visit 1\nkit: a.kit.yaml\nactivity: a.activity.yaml\n' },
  };
  const started = tableStart({ texts, machine, mark: '1', title: 'X' });
  const made = started === null ? null : withEdits(texts, [started.edit]);
  if (made === null) throw new Error(`no table with a ${machine}`);
  return made;
}

describe('a partner for the first setup of a table', () => {
  for (const [kit, machines] of Object.entries(kits))
    for (const [machine, [groups, ratio]] of Object.entries(machines))
      it(`shows a class the difference: ${machine} of ${kit}`, () => {
        const found = pairStart({ texts: begun(kit, machine), table: '1' });
        expect(found).not.toBeNull();
        if (found === null) return;
        const prepared = prepare({ ...found.texts });
        expect(prepared.diagnostics.filter(isError)).toEqual([]);
        const [table] = prepared.tables;
        expect(table?.setups.map(({ setup }) => setup.mark).sort()).toEqual([found.more, found.less].sort());
        // Said of the files as they are written now, by the advice itself.
        const [pair] = advise(prepared, { tables: ['1'] })[0]?.pairs ?? [];
        expect(pair?.now.chance?.more).toBe(found.more);
        expect(found.of100).toBeGreaterThanOrEqual(groups);
        expect(pair?.now.chance?.ratio).toBeGreaterThanOrEqual(ratio);
        expect(Math.abs(100 * (pair?.now.chance?.once.order ?? 0) - found.of100)).toBeLessThan(3);
      });

  it('is none where the kit has nothing else to turn a windlass by', () => {
    expect(pairStart({ texts: begun('second-kit/ferry.kit.yaml', 'windlass'), table: '1' })).toBeNull();
  });

  it('is none at a table that has no setup, or where the files can not be read', () => {
    const texts = begun('second-kit/ferry.kit.yaml', 'lever');
    expect(pairStart({ texts, table: '7' })).toBeNull();
    const broken = { ...texts, activity: { ...texts.activity, text: 'tables: [' } };
    expect(pairStart({ texts: broken, table: '1' })).toBeNull();
  });
});
