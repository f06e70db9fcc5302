import type { Edit, FieldGroup, FieldView } from '../engine/prepare-wire.ts';
import type { PrepareSay } from '../words/prepare-words.ts';
import { FieldControl, idOf, placeOf } from './field-control.tsx';
import { useKeptNodes } from './kept-nodes.ts';

export interface FieldListProps {
  readonly say: PrepareSay;
  readonly setup: string;
  readonly groups: readonly FieldGroup[];
  readonly turn: number;
  readonly edit: (edit: Edit) => void;
}

/** All that may be changed at the setup in hand: its own fields, what its table needs, and each part in it. */
export function FieldList({ say, setup, groups, turn, edit }: FieldListProps) {
  const kept = useKeptNodes();
  return (
    <section class="fields" aria-labelledby="to-change">
      <h2 id="to-change">{say('prepare.change')}</h2>
      {groups.map((group) => {
        const written = group.fields.filter(({ value }) => value !== '');
        const rest = group.fields.filter(({ value }) => value === '');
        const show = (fields: readonly FieldView[]) =>
          fields.map((field) =>
            kept(placeOf(field), [field, turn], () => (
              <OneField key={placeOf(field)} say={say} field={field} turn={turn} edit={edit} />
            )),
          );
        return (
          <fieldset key={placeOf(group.fields[0])}>
            <legend>{headingOf(say, setup, group)}</legend>
            {show(written)}
            {rest.length > 0 && (
              <details>
                <summary>
                  {say('prepare.unwritten')}: {rest.map(({ name }) => name).join(', ')}
                </summary>
                {show(rest)}
              </details>
            )}
          </fieldset>
        );
      })}
    </section>
  );
}

function headingOf(say: PrepareSay, setup: string, { heading, kind, fields }: FieldGroup): string {
  if (kind !== null) return say('prepare.of-part', { mark: heading, kind });
  if (fields[0]?.file === 'visit') return say('prepare.of-visit', { mark: heading });
  if (heading === setup) return say('prepare.of-setup', { mark: heading });
  const isTable = fields[0]?.path.includes('roles') === true;
  return say(isTable ? 'prepare.of-table' : 'prepare.of-stage', { mark: heading });
}

interface OneFieldProps extends Pick<FieldListProps, 'say' | 'turn' | 'edit'> {
  readonly field: FieldView;
}

function OneField({ say, field, turn, edit }: OneFieldProps) {
  const { name, meaning } = field;
  const id = idOf(field);
  return (
    <p class="field">
      <label for={id}>{name}</label>
      <FieldControl field={field} turn={turn} edit={edit} unwritten={say('prepare.unwritten')} />
      <small id={`${id}-says`}>{meaning}</small>
    </p>
  );
}
