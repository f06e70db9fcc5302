import { readFileSync } from 'node:fs';

/** An open shop whose soonest end is known: rows of lengths, one row a job. */
export interface KnownShop {
  readonly id: string;
  readonly rows: readonly (readonly number[])[];
  readonly soonest: number;
  readonly unit: string;
  readonly basis: string;
  readonly source: string;
  /** What Taillard's generator makes it from; `null` where it is none of his. */
  readonly seeds: { readonly size: number; readonly time: number; readonly machine: number } | null;
}

interface RawCase {
  readonly id: string;
  readonly kind: string;
  readonly basis: string;
  readonly source: { readonly title: string; readonly section: string };
  readonly inputs: {
    readonly n?: number;
    readonly time_seed?: number;
    readonly machine_seed?: number;
    readonly p_job_machine?: readonly (readonly number[])[];
  };
  readonly expected: { readonly optimum: { readonly value: number; readonly unit: string } };
}

/** Taillard (1993), and Gonzalez and Sahni (1976) for two machines, with optima that several solvers proved. */
export const knownShops: readonly KnownShop[] = (
  JSON.parse(readFileSync(new URL('./open-shop.json', import.meta.url), 'utf8')) as { readonly cases: readonly RawCase[] }
).cases.flatMap(({ id, kind, basis, source, inputs, expected }) =>
  kind === 'generator' || inputs.p_job_machine === undefined
    ? []
    : [
        {
          id,
          rows: inputs.p_job_machine,
          soonest: expected.optimum.value,
          unit: expected.optimum.unit,
          basis,
          source: `${source.title}, ${source.section}`,
          seeds:
            inputs.n === undefined || inputs.time_seed === undefined || inputs.machine_seed === undefined
              ? null
              : { size: inputs.n, time: inputs.time_seed, machine: inputs.machine_seed },
        },
      ],
);
