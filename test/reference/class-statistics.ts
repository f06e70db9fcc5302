import { readFileSync } from 'node:fs';

/** Figures of median, MAD, sign test and concordance by numpy and scipy; `class-statistics.py` writes them. */
interface ClassStatistics {
  readonly few: readonly {
    readonly n: number;
    readonly factor: number;
    readonly share: number;
    readonly medianU: number;
  }[];
  readonly centres: readonly {
    readonly values: readonly number[];
    readonly median: number;
    readonly mad: number;
  }[];
  readonly intervals: readonly {
    readonly values: readonly number[];
    readonly from: number;
    readonly to: number;
  }[];
  readonly signs: readonly { readonly less: number; readonly more: number; readonly p: number }[];
  readonly agreements: readonly {
    readonly orders: readonly (readonly number[])[];
    readonly w: number;
    readonly exact: number;
  }[];
  readonly friedman: {
    readonly orders: readonly (readonly number[])[];
    readonly w: number;
    readonly p: number;
  };
}

export const classStatistics = JSON.parse(
  readFileSync(new URL('./class-statistics.json', import.meta.url), 'utf8'),
) as ClassStatistics;
