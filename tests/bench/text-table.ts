/** Rows of text as columns: the first flush left, the others flush right. */
export function textTable(rows: readonly (readonly string[])[]): string {
  const columns = Math.max(...rows.map((row) => row.length));
  const widths = Array.from({ length: columns }, (_, column) =>
    Math.max(...rows.map((row) => row[column]?.length ?? 0)),
  );
  const line = (row: readonly string[]) =>
    widths.map((width, column) => {
      const cell = row[column] ?? '';
      return column === 0 ? cell.padEnd(width) : cell.padStart(width);
    });
  return rows.map((row) => `  ${line(row).join('   ').trimEnd()}\n`).join('');
}

export const percent = (share: number): string => `${(share * 100).toFixed(1)} %`;
export const times = (ratio: number): string => `${ratio.toFixed(3)} x`;
export const mebibytes = (bytes: number): string => `${(bytes / 2 ** 20).toFixed(1)} MiB`;
