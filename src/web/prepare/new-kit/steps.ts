import type { FindingView } from '../../engine/prepare-wire.ts';

export const STEPS = ['kit', 'parts', 'tables', 'visit', 'end'] as const;
export type Step = (typeof STEPS)[number];

export const isStep = (kept: unknown): kept is Step => STEPS.some((each) => each === kept);

/** At which step a finding is put right. */
export function stepOf({ file, path, code }: Pick<FindingView, 'file' | 'path' | 'code'>): Step {
  const [first] = path;
  switch (file) {
    case 'kit':
      return first === 'parts' || first === 'measured' ? 'parts' : 'kit';
    case 'bench':
      return 'parts';
    case 'activity':
      return first === 'tables' ? 'tables' : 'visit';
    case 'visit':
      return first === 'place' || code === 'no-gravity' ? 'kit' : first === 'roles' ? 'tables' : 'visit';
  }
}
