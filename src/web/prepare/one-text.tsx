import { useRef } from 'preact/hooks';
import type { SourceText } from '../../core/files/source-text.ts';
import { saveFile } from '../device/save-file.ts';
import type { FindingView, TextKind } from '../engine/prepare-wire.ts';
import type { PrepareSay } from '../words/prepare-words.ts';

export interface OneTextProps {
  readonly say: PrepareSay;
  readonly findings: readonly FindingView[];
  readonly kind: TextKind;
  readonly title: string;
  readonly file: SourceText;
  readonly accept: string;
  readonly open: (file: File) => void;
  /** Left out where nothing is written by hand. */
  readonly write?: (text: string) => void;
}

/** A text that is opened from a disk and saved to it, with what is found in it. */
export function OneText({ say, kind, title, file, findings, accept, open, write }: OneTextProps) {
  const { name, text } = file;
  const field = useRef<HTMLTextAreaElement>(null);
  const found = findings.filter((each) => each.file === kind);
  return (
    <details open={found.some(({ severity }) => severity === 'error')} data-file={kind}>
      <summary>
        <b>{title}</b>
        {name !== '' && ` ${name}. ${say('prepare.found', { file: name, count: found.length })}`}
      </summary>
      <div class="acts">
        <label class="open">
          {say('prepare.open', { file: title })}
          <input
            type="file"
            accept={accept}
            onChange={(event) => {
              const [chosen] = event.currentTarget.files ?? [];
              if (chosen !== undefined) open(chosen);
            }}
          />
        </label>
        {name !== '' && (
          <button type="button" onClick={() => saveFile(name, text, 'text/plain')}>
            {say('prepare.save', { file: name })}
          </button>
        )}
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
        readOnly={write === undefined}
        onInput={(event) => write?.(event.currentTarget.value)}
        onDragOver={(event) => event.preventDefault()}
        onDrop={(event) => {
          const dropped = event.dataTransfer?.files[0];
          if (dropped === undefined) return;
          event.preventDefault();
          open(dropped);
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
