import type { GuillotineTable } from './guillotine-table.ts';
import { indexUpTo } from './reachable.ts';

/**
 * The most that straight cuts can yield from a sheet around a rectangle that is left out of account, wherever it lies:
 * the rectangle grows to the sheet by strips along it, each worth what the table says.
 * Source: Viswanathan & Bagchi, Oper. Res. 41 (1993) 768-776 (from memory).
 */
export function outerBound(
  { columns, rows, worth }: GuillotineTable,
  width: number,
  height: number,
): (width: number, height: number) => number {
  const stride = rows.length;
  const most = new Float64Array(columns.length * stride);
  const indexOf = (lengths: readonly number[]) =>
    new Map(lengths.map((length, index) => [length, index] as const));
  const [columnOf, rowOf] = [indexOf(columns), indexOf(rows)];
  const strips = new Float64Array(columns.length * stride);
  columns.forEach((column, i) => {
    rows.forEach((row, j) => {
      strips[i * stride + j] = worth(column, row);
    });
  });
  for (let i = columns.length - 1; i >= 0; i--)
    for (let j = stride - 1; j >= 0; j--) {
      let value = 0;
      if (i + 1 < columns.length) value = Math.max(value, most[(i + 1) * stride + j] as number);
      if (j + 1 < stride) value = Math.max(value, most[i * stride + j + 1] as number);
      for (let more = 1; more < columns.length; more++) {
        const sum = (columns[i] as number) + (columns[more] as number);
        if (sum > width) break;
        const to = columnOf.get(sum);
        if (to !== undefined)
          value = Math.max(value, (most[to * stride + j] as number) + (strips[more * stride + j] as number));
      }
      for (let more = 1; more < stride; more++) {
        const sum = (rows[j] as number) + (rows[more] as number);
        if (sum > height) break;
        const to = rowOf.get(sum);
        if (to !== undefined)
          value = Math.max(value, (most[i * stride + to] as number) + (strips[i * stride + more] as number));
      }
      most[i * stride + j] = value;
    }
  return (w, h) => most[Math.max(0, indexUpTo(columns, w)) * stride + Math.max(0, indexUpTo(rows, h))] ?? 0;
}
