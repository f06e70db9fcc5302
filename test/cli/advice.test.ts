import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { run } from '../../src/cli/main.ts';

interface Said {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

/** The command without its bundle, on the hopeless day. */
async function advice(...args: string[]): Promise<Said> {
  let [out, err] = ['', ''];
  const code = await run(['advice', ...args], {
    folder: join(import.meta.dirname, '../advice'),
    print: (text) => {
      out += text;
    },
    tell: (text) => {
      err += text;
    },
    strong: (text) => text,
    progress: () => undefined,
  });
  return { code, out, err };
}

describe('handspike advice', () => {
  it('takes a table, or a setup that stands on it', async () => {
    const [table, setup] = [await advice('cart'), await advice('B2')];
    expect(table.code).toBe(0);
    expect(table.out).toContain('Table cart: The barrow on the level');
    expect(table.out).not.toContain('Table oar');
    expect(setup.out).toBe(table.out);
  });

  it('prints its figures as JSON, with what was wanted', async () => {
    const { out } = await advice('cart', '--json', '--ratio', '25 %', '--groups=0.9', '--seed', '7');
    expect(JSON.parse(out)).toMatchObject({
      handspike: 'advice 1',
      wanted: { ratio: 0.25, groups: 0.9 },
      seed: 7,
      tables: [{ table: 'cart', setups: [{ setup: 'B1' }, { setup: 'B2' }], pairs: [{ first: 'B1' }] }],
    });
  });

  it('prints it in Spanish', async () => {
    expect((await advice('cart', '--language', 'es')).out).toContain('B1 está en su tope');
  });

  it.each([
    [['carts'], 'did you mean "cart"'],
    [['--ratio', '150%'], '--ratio is a share between 0 and 100 %'],
    [['--groups', 'most'], 'for instance --groups 95%'],
    [['--seed', '1.5'], 'the seed is a whole number'],
  ])('refuses %j and says what to write', async (args, says) => {
    const { code, err, out } = await advice(...args);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(says);
  });
});
