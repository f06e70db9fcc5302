import type { TalkPart } from '../../documents/discussion/talk-page.ts';
import { Picture } from '../prepare/picture.tsx';
import { RowsTable } from '../prepare/rows-table.tsx';

/** A line, a picture or a table of the talk, as they stand on its pages of paper too. */
export function TalkPartView({ part }: { readonly part: TalkPart }) {
  switch (part.part) {
    case 'line':
      return <p>{part.text}</p>;
    case 'figure':
      return (
        <figure>
          <figcaption>{part.caption}</figcaption>
          <Picture svg={part.svg} />
        </figure>
      );
    case 'table':
      return (
        // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls sideways has to be reached by keyboard
        <section class="wide" tabIndex={0} aria-label={part.head.join(', ')}>
          <RowsTable look="talk" head={part.head} rows={part.rows} />
        </section>
      );
  }
}

/** Several of them, one under the other. */
export const TalkParts = ({ parts }: { readonly parts: readonly TalkPart[] }) => (
  <>
    {parts.map((part) => (
      <TalkPartView key={nameOf(part)} part={part} />
    ))}
  </>
);

const nameOf = (part: TalkPart): string => {
  switch (part.part) {
    case 'line':
      return part.text;
    case 'figure':
      return part.caption;
    case 'table':
      return part.head.join(', ');
  }
};
