import { FILE_KINDS, type FileKind } from '../engine/prepare-wire.ts';
import { BookText, type BookTextProps } from './book-text.tsx';
import { OneText } from './one-text.tsx';

export interface FileTextsProps extends BookTextProps {
  readonly write: (kind: FileKind, text: string, name?: string) => void;
}

/** The three files and the bench book as they stand, each with what is found in it, opened from a disk and saved to it. */
export const FileTexts = (props: FileTextsProps) => (
  <section class="files" aria-labelledby="files">
    <h2 id="files">{props.say('prepare.files')}</h2>
    <p class="hint">{props.say('prepare.drop')}</p>
    {FILE_KINDS.map((kind) => (
      <OneText
        key={kind}
        say={props.say}
        kind={kind}
        title={props.say(`prepare.${kind}`)}
        file={props.texts[kind]}
        findings={props.findings}
        accept=".yaml,.yml,text/plain"
        open={async (file) => props.write(kind, await file.text(), file.name)}
        write={(text) => props.write(kind, text)}
      />
    ))}
    <BookText {...props} />
  </section>
);
