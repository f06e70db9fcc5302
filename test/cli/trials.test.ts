import { describe, expect, it } from 'vitest';
import { runCommand } from '../command-line.ts';
import { exampleIn, scratchFolder } from './scratch-folder.ts';

const scratch = scratchFolder();
const boathouse = exampleIn(scratch, 'brackwater');
const trials = (...args: string[]) => runCommand(['trials', ...args], { folder: boathouse });

interface Printed {
  readonly seed: number;
  readonly setups: readonly {
    readonly setup: string;
    readonly used: string;
    readonly good: { readonly from: number; readonly to: number } | null;
    readonly trials: { readonly expected: number; readonly fates: Readonly<Record<string, number>> } | null;
  }[];
}
const figures = (...args: string[]) => JSON.parse(trials(...args, '--json').out) as Printed;

describe('the command for trials', () => {
  it('says for every setup of the key which law its range comes from', () => {
    const key = JSON.parse(runCommand(['key', '--json'], { folder: boathouse }).out) as {
      readonly tables: readonly { readonly setups: readonly { readonly setup: string }[] }[];
    };
    const found = figures();
    expect(found.setups.map(({ setup }) => setup)).toEqual(
      key.tables.flatMap(({ setups }) => setups.map(({ setup }) => setup)),
    );
    for (const { used, good, trials: run } of found.setups) {
      expect(['linear', 'trials', 'neither']).toContain(used);
      expect(good === null).toBe(used === 'neither');
      const shares = Object.values(run?.fates ?? { none: 1 }).reduce((sum, each) => sum + each, 0);
      expect(shares).toBeCloseTo(1, 9);
    }
  });

  it('gives the same figures for the same seed, and others for another', () => {
    const mean = (seed: string) => figures('L1', '--seed', seed).setups[0]?.trials?.expected;
    expect(mean('5')).toBe(mean('5'));
    expect(mean('5')).not.toBe(mean('6'));
  });

  it('prints both ranges and the choice, in either language', () => {
    expect(trials('L1').out).toMatch(/linear law {2}good .*\n.*trials .*\n.*used: the linear law/);
    expect(trials('L1', '--language', 'es').out).toMatch(/ley lineal {2}bueno .*\n.*ensayos .*\n.*se usa:/);
  });

  it('does not let a linear range stand that is some graduations off, though u begins with a 1', () => {
    const ferry = exampleIn(scratch, 'second-kit');
    const { out } = runCommand(['trials', 'S1', '--json'], { folder: ferry });
    const [jack] = (JSON.parse(out) as Printed).setups;
    const grams = 9.80665e-3;
    expect(jack?.used).toBe('trials');
    // The same law with numpy, friction even over its range: 19 of 20 of what is on the scale is 90 to 470 g.
    expect(jack?.good?.from).toBeCloseTo(90 * grams, 9);
    expect(jack?.good?.to).toBeCloseTo(470 * grams, 9);
  });

  it('are run by "explain" where a setup is near a limit of the linear law, and nowhere else', () => {
    const explained = (setup: string) => runCommand(['explain', setup], { folder: boathouse }).out;
    const [, choice = ''] = /^ {2}(trials .*\n {2}used: .*)$/m.exec(trials('P1').out) ?? [];
    expect(choice).not.toBe('');
    expect(explained('P1')).toContain(choice);
    expect(explained('P1')).toContain('near: graduations that are coarser');
    expect(explained('L1')).not.toContain('trials');
  });

  it('refuses a setup that is not there and a seed that is no whole number, with what can be written', () => {
    expect(trials('L9')).toMatchObject({ code: 2, err: expect.stringContaining('did you mean') });
    expect(trials('--seed', 'x')).toMatchObject({ code: 2, err: expect.stringContaining('--seed 7') });
  });
});
