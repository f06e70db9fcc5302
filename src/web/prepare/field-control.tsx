import { useEffect, useState } from 'preact/hooks';
import type { Edit, FieldView } from '../engine/prepare-wire.ts';

export interface FieldControlProps {
  readonly field: FieldView;
  /** The words of the field as the language says them; left out: as the file does. */
  readonly said?: readonly string[];
  readonly turn: number;
  readonly edit: (edit: Edit) => void;
  readonly unwritten: string;
}

export const placeOf = (field: FieldView | undefined): string => `${field?.file} ${field?.path.join(' ')}`;

export const idOf = (field: FieldView): string => placeOf(field).replaceAll(/[^\w-]/g, '-');

/** What is being typed stays as it is typed, whatever the engine makes of it meanwhile. */
export function FieldControl({ field, said = field.words, turn, edit, unwritten }: FieldControlProps) {
  const { file, path, and, name, value, words, example } = field;
  const [draft, setDraft] = useState<string | null>(null);
  useEffect(() => setDraft(null), [turn]);
  const id = idOf(field);
  const write = (text: string): void =>
    edit({ file, path, value: text, ...(and && { and: and.map((each) => ({ ...each, value: text })) }) });
  return words.length > 0 ? (
    <select
      id={id}
      value={value}
      data-field={name}
      aria-describedby={`${id}-says`}
      onChange={(event) => write(event.currentTarget.value)}
    >
      {[...new Set(['', value, ...words])].map((word) => (
        <option key={word} value={word}>
          {word === '' ? unwritten : (said[words.indexOf(word)] ?? word)}
        </option>
      ))}
    </select>
  ) : (
    <input
      id={id}
      value={draft ?? value}
      data-field={name}
      placeholder={example}
      autocomplete="off"
      spellcheck={false}
      aria-describedby={`${id}-says`}
      onInput={(event) => {
        setDraft(event.currentTarget.value);
        // A field that is emptied on the way to something else is not taken out of the file.
        if (event.currentTarget.value.trim() !== '') write(event.currentTarget.value);
      }}
      onBlur={() => {
        if (draft?.trim() === '') write('');
        setDraft(null);
      }}
    />
  );
}
