import type { ActivitySetup, ActivityTable } from '../../core/files/activity.ts';
import type { Path } from '../../core/files/context.ts';
import type { Prepared } from '../../core/prepare.ts';
import type { Alternative, ChangeMade } from '../../core/setups/alternative.ts';
import { asInFile } from '../../documents/text/advice-text.ts';
import type { Edit, Texts } from './prepare-wire.ts';
import { withEdits } from './with-edits.ts';

/**
 * The files with another way of setting up written into them; `null` where that can't be done without
 * changing a setup that the offer leaves as it is: then a person has to write it.
 */
export function withOffer(texts: Texts, prepared: Prepared, { changes }: Alternative): Texts | null {
  const tables = prepared.activity?.tables ?? [];
  const edits = changes.map((change) => editsOf(tables, { ...change, to: asInFile(prepared, change) }));
  const written = edits.filter((each) => each !== null);
  return written.length < edits.length ? null : withEdits(texts, written.flat());
}

function editsOf(tables: readonly ActivityTable[], change: ChangeMade): readonly Edit[] | null {
  const { at, kind, field, to } = change;
  const table = tables.find(({ setups }) => setups.some(({ mark }) => at.includes(mark)));
  if (table === undefined) return null;
  const changed = table.setups.filter(({ mark }) => at.includes(mark));
  if (kind !== 'part')
    return changed.map((setup) => ({
      file: 'activity',
      path: [...placeOf(setup, kind === 'setup field' ? null : change.stage), field],
      value: to,
    }));
  const roles = new Set(changed.map((setup) => (stageOf(setup, change.stage) ?? setup).roles[field]));
  const [role] = roles;
  if (roles.size !== 1 || role === undefined) return null;
  const plays = (setup: ActivitySetup): boolean =>
    [setup, ...setup.stages].some((each) => Object.values(each.roles).includes(role));
  // Whoever plays a role plays it at every setup of the table.
  if (table.setups.some((setup) => plays(setup) && !changed.includes(setup))) return null;
  return [{ file: 'visit', path: ['roles', table.mark, role], value: to }];
}

const stageOf = (setup: ActivitySetup, stage: number | null) =>
  stage === null ? null : (setup.stages[stage - 1] ?? null);

const placeOf = (setup: ActivitySetup, stage: number | null): Path => (stageOf(setup, stage) ?? setup).path;
