export interface Column {
  readonly head: string;
  readonly right?: true;
}

/** A Markdown table with its columns made even, as the formatter of this project wants them. */
export function markdownTable(columns: readonly Column[], rows: readonly (readonly string[])[]): string[] {
  const widths = columns.map(({ head }, i) =>
    Math.max(3, ...[head, ...rows.map((row) => row[i]!)].map((cell) => [...cell].length)),
  );
  const line = (cells: readonly string[]) => `| ${cells.join(' | ')} |`;
  const padded = (cells: readonly string[]) =>
    line(
      cells.map((cell, i) => {
        const space = ' '.repeat(widths[i]! - [...cell].length);
        return columns[i]!.right ? space + cell : cell + space;
      }),
    );
  return [
    padded(columns.map(({ head }) => head)),
    line(columns.map(({ right }, i) => (right ? `${'-'.repeat(widths[i]! - 1)}:` : '-'.repeat(widths[i]!)))),
    ...rows.map(padded),
  ];
}
