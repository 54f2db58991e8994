/** Rows with their columns below each other, for a terminal. */
export function table(rows: readonly (readonly string[])[]): string {
  const widths = (rows[0] ?? []).map((_, column) =>
    Math.max(...rows.map((row) => [...(row[column] ?? '')].length)),
  );
  return rows
    .map((row) =>
      row
        .map((cell, column) => cell + ' '.repeat(Math.max(0, (widths[column] ?? 0) - [...cell].length)))
        .join('  ')
        .trimEnd(),
    )
    .map((line) => `${line}\n`)
    .join('');
}

/** A day, as in 2026-11-25; a dash for none. */
export const day = (time: string | undefined): string => time?.slice(0, 10) ?? '–';
