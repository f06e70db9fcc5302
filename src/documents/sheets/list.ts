import type { SheetKind } from './paper-job.ts';

/** Every kind of sheet, in the order in which a teacher picks them up. */
export const sheetKinds: readonly SheetKind[] = [];
