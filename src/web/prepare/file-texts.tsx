import { useRef } from 'preact/hooks';
import { saveFile } from '../device/save-file.ts';
import { FILE_KINDS, type FileKind, type FindingView, type Texts } from '../engine/prepare-wire.ts';
import type { PrepareSay } from '../words/prepare-words.ts';

export interface FileTextsProps {
  readonly say: PrepareSay;
  readonly texts: Texts;
  readonly findings: readonly FindingView[];
  readonly write: (kind: FileKind, text: string, name?: string) => void;
}

/** The three files as they stand, each with what is found in it, opened from a disk and saved to it. */
export const FileTexts = (props: FileTextsProps) => (
  <section class="files" aria-labelledby="files">
    <h2 id="files">{props.say('prepare.files')}</h2>
    <p class="hint">{props.say('prepare.drop')}</p>
    {FILE_KINDS.map((kind) => (
      <OneText key={kind} kind={kind} {...props} />
    ))}
  </section>
);

function OneText({ say, texts, findings, write, kind }: FileTextsProps & { readonly kind: FileKind }) {
  const { name, text } = texts[kind];
  const field = useRef<HTMLTextAreaElement>(null);
  const found = findings.filter((each) => each.file === kind);
  const open = async (file: File | undefined): Promise<void> => {
    if (file !== undefined) write(kind, await file.text(), file.name);
  };
  return (
    <details open={found.some(({ severity }) => severity === 'error')} data-file={kind}>
      <summary>
        <b>{say(`prepare.${kind}`)}</b> {name}. {say('prepare.found', { file: name, count: found.length })}
      </summary>
      <div class="acts">
        <label class="open">
          {say('prepare.open', { file: say(`prepare.${kind}`) })}
          <input
            type="file"
            accept=".yaml,.yml,text/plain"
            onChange={(event) => void open(event.currentTarget.files?.[0])}
          />
        </label>
        <button type="button" onClick={() => saveFile(name, text, 'text/plain')}>
          {say('prepare.save', { file: name })}
        </button>
      </div>
      <ul class="found">
        {found.map((each) => (
          <li key={`${each.line} ${each.column} ${each.text}`}>
            <button type="button" class="plain" onClick={() => jump(field.current, each)}>
              {say('prepare.jump', { line: each.line, column: each.column })}
            </button>
            <pre>{each.text}</pre>
          </li>
        ))}
      </ul>
      <textarea
        ref={field}
        aria-label={say('prepare.text', { file: name })}
        value={text}
        rows={18}
        spellcheck={false}
        wrap="off"
        onInput={(event) => write(kind, event.currentTarget.value)}
        onDragOver={(event) => event.preventDefault()}
        onDrop={(event) => {
          const file = event.dataTransfer?.files[0];
          if (file === undefined) return;
          event.preventDefault();
          void open(file);
        }}
      />
    </details>
  );
}

function jump(field: HTMLTextAreaElement | null, { line, column }: FindingView): void {
  if (field === null) return;
  const lines = field.value.split('\n').slice(0, line - 1);
  const at = lines.reduce((sum, each) => sum + each.length + 1, 0) + column - 1;
  field.focus();
  field.setSelectionRange(at, at);
  const height = field.scrollHeight / Math.max(1, field.value.split('\n').length);
  field.scrollTop = Math.max(0, (line - 4) * height);
}
