export interface RowsTableProps {
  readonly look: 'rows' | 'talk';
  readonly caption?: string;
  readonly head: readonly string[];
  /** The first cell says what its row is of. */
  readonly rows: readonly (readonly string[])[];
}

/** Rows of words under their heading. */
export const RowsTable = ({ look, caption, head, rows }: RowsTableProps) => (
  <table class={look}>
    {caption !== undefined && <caption>{caption}</caption>}
    <thead>
      <tr>
        {head.map((each) => (
          <th key={each} scope="col">
            {each}
          </th>
        ))}
      </tr>
    </thead>
    <tbody>
      {rows.map(([first = '', ...rest]) => (
        <tr key={first}>
          <th scope="row">{first}</th>
          {rest.map((cell, n) => (
            <td key={head[n + 1]}>{cell}</td>
          ))}
        </tr>
      ))}
    </tbody>
  </table>
);
