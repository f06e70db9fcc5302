import type { ComponentChildren } from 'preact';
import type { Block, Cell, SheetOfPaper } from '../../documents/sheets/block.ts';
import { Picture } from './picture.tsx';

export interface PaperSheetProps {
  readonly sheet: SheetOfPaper;
  /** What is covered until it is asked for is behind the first page break, under this name. */
  readonly cover?: string | undefined;
}

/** A sheet of paper on the screen: the blocks that the typesetter sets, in their order; printed, they are pages. */
export function PaperSheet({ sheet, cover }: PaperSheetProps) {
  const turn = cover === undefined ? -1 : sheet.blocks.findIndex(({ block }) => block === 'page-break');
  const [open, covered] =
    turn === -1 ? [sheet.blocks, []] : [sheet.blocks.slice(0, turn), sheet.blocks.slice(turn + 1)];
  return (
    <article
      class={`paper ${sheet.size} ${sheet.isLandscape === true ? 'lying' : ''}`}
      lang={sheet.language}
      aria-label={sheet.title}
      data-sheet={sheet.name}
    >
      <Blocks blocks={open} />
      {covered.length > 0 && (
        <details>
          <summary>{cover}</summary>
          <Blocks blocks={covered} />
        </details>
      )}
      <p class="foot">{sheet.foot}</p>
    </article>
  );
}

/** Blocks have no names of their own; a sheet is never changed, only made anew. */
const Blocks = ({ blocks }: { readonly blocks: readonly Block[] }) => (
  <>{blocks.map((block, n) => keyed(n, <OneBlock block={block} />))}</>
);

function OneBlock({ block }: { readonly block: Block }) {
  switch (block.block) {
    case 'title':
      return (
        <header class="paper-title">
          {block.mark !== undefined && <Mark mark={block.mark} />}
          <div>
            <h3>{block.text}</h3>
            {block.about !== undefined && <p>{block.about}</p>}
          </div>
          {block.facts.length > 0 && (
            <dl>
              {block.facts.map(([name, value]) => (
                <div key={name}>
                  <dt>{name}</dt>
                  <dd>{value}</dd>
                </div>
              ))}
            </dl>
          )}
        </header>
      );
    case 'sign':
      return (
        <header class="paper-title sign">
          <Mark mark={[block.word, block.mark]} />
          <div>
            <h3>{block.text}</h3>
            <p>{block.about}</p>
          </div>
        </header>
      );
    case 'heading':
      return block.level === 2 ? <h4>{block.text}</h4> : <h5>{block.text}</h5>;
    case 'text':
      return <p class={block.tone}>{block.text}</p>;
    case 'list':
      return <Items items={block.items} name="dots" />;
    case 'ticks':
      return <Items items={block.items} name="ticks" />;
    case 'steps':
      return (
        <ol class="steps">
          {block.items.map((item, n) => (
            <li key={item} value={block.numbers?.[n] ?? n + 1}>
              {item}
            </li>
          ))}
        </ol>
      );
    case 'care':
      return (
        <div class="care">
          <p class="strong">⚠ {block.word}</p>
          <Items items={block.items} name="dots" />
        </div>
      );
    case 'table':
      return <PaperTable table={block} />;
    case 'figure':
      return (
        <figure style={{ maxWidth: `${block.width}mm` }}>
          {block.width > WIDE ? (
            <Wide name={block.alt}>
              <Picture svg={block.svg} />
            </Wide>
          ) : (
            <Picture svg={block.svg} />
          )}
          {block.caption !== undefined && <figcaption>{block.caption}</figcaption>}
        </figure>
      );
    case 'columns':
      return (
        <div class="paper-columns">
          {block.columns.map((blocks, n) =>
            keyed(
              n,
              <div style={{ flexGrow: block.shares[n] ?? 1 }}>
                <Blocks blocks={blocks} />
              </div>,
            ),
          )}
        </div>
      );
    case 'together':
      return (
        <div class="together">
          <Blocks blocks={block.blocks} />
        </div>
      );
    case 'tags':
      return (
        <div class="tags">
          {block.tags.map((blocks, n) =>
            keyed(
              n,
              <div style={{ width: `${block.width}mm`, minHeight: `${block.height}mm` }}>
                <Blocks blocks={blocks} />
              </div>,
            ),
          )}
        </div>
      );
    case 'slip':
      return (
        <div class="paper-columns slip together">
          <div>
            {block.strips.map(({ language, blocks }) => (
              <div key={language} lang={language}>
                <Blocks blocks={blocks} />
              </div>
            ))}
          </div>
          <div>
            <Blocks blocks={block.adult} />
          </div>
        </div>
      );
    case 'line':
      return (
        <p class="to-write">
          <span>{block.name}</span>
        </p>
      );
    case 'page-break':
      return <hr class="page-break" />;
    case 'space':
      return <div style={{ height: `${block.millimetres}mm` }} />;
  }
}

/** A picture that is wider than this on paper, millimetres, can't be read on a phone unless it is scrolled. */
const WIDE = 190;

const Wide = ({ name, children }: { readonly name: string; readonly children: ComponentChildren }) => (
  // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls sideways has to be reached by keyboard
  // biome-ignore lint/a11y/useSemanticElements: a section with a name would be one landmark of very many
  <div class="wide" role="group" tabIndex={0} aria-label={name}>
    {children}
  </div>
);

const keyed = (n: number, child: ComponentChildren) => <Place key={n}>{child}</Place>;
const Place = ({ children }: { readonly children: ComponentChildren }) => <>{children}</>;

const Mark = ({ mark: [word, mark] }: { readonly mark: readonly [string, string] }) => (
  <p class="mark">
    {word} <b>{mark}</b>
  </p>
);

const Items = ({ items, name }: { readonly items: readonly string[]; readonly name: string }) => (
  <ul class={name}>
    {items.map((item) => (
      <li key={item}>{item}</li>
    ))}
  </ul>
);

function PaperTable({ table }: { readonly table: Extract<Block, { readonly block: 'table' }> }) {
  const { head, rows, align = [], rowHeight, size } = table;
  return (
    <Wide name={head.filter((each) => each !== '').join(', ')}>
      <table class={size}>
        <thead>
          <tr>{head.map((each, n) => keyed(n, each === '' ? <td /> : <th scope="col">{each}</th>))}</tr>
        </thead>
        <tbody>
          {rows.map((row, r) =>
            keyed(
              r,
              <tr style={rowHeight === undefined ? undefined : { height: `${rowHeight}mm` }}>
                {row.map((cell, n) =>
                  keyed(
                    n,
                    n === 0 && hasWords(cell) ? (
                      <th scope="row" class={align[n]}>
                        <CellWords cell={cell} />
                      </th>
                    ) : (
                      <td class={align[n]}>
                        <CellWords cell={cell} />
                      </td>
                    ),
                  ),
                )}
              </tr>,
            ),
          )}
        </tbody>
      </table>
    </Wide>
  );
}

const hasWords = (cell: Cell): boolean =>
  typeof cell === 'string' ? cell !== '' : 'text' in cell && cell.text !== '';

function CellWords({ cell }: { readonly cell: Cell }) {
  if (typeof cell === 'string') return <>{cell}</>;
  if ('tick' in cell)
    return (
      <span role="img" aria-label={cell.tick}>
        ☐
      </span>
    );
  if ('svg' in cell)
    return (
      <div style={{ maxWidth: `${cell.width}mm` }}>
        <Picture svg={cell.svg} />
      </div>
    );
  return (
    <>
      <span class={cell.isLarge === true ? 'large' : cell.strong === true ? 'strong' : ''}>{cell.text}</span>
      {cell.note !== undefined && <small>{cell.note}</small>}
    </>
  );
}
