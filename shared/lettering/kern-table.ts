import { viewOf } from './sfnt.ts';

/** How much nearer two glyphs stand by the font's kern table, in its units. */
export type PairKerning = (left: number, right: number) => number;

/**
 * Pairs of the old `kern` table, which fonts without the newer GPOS have: horizontal subtables of format 0.
 * Subtables that reach beyond the table are left out.
 * Source: OpenType specification 1.9.1, "kern — Kerning".
 */
export function readKernTable(table: Uint8Array): PairKerning {
  const view = viewOf(table);
  const pairs = new Map<number, number>();
  const count = table.length >= 4 && view.getUint16(0) === 0 ? view.getUint16(2) : 0;
  let at = 4;
  for (let i = 0; i < count && at + 14 <= table.length; i++) {
    const length = view.getUint16(at + 2);
    const coverage = view.getUint16(at + 4);
    // format 0, horizontal, neither minimum values nor across the line
    if (coverage >> 8 === 0 && (coverage & 0b0111) === 1) readPairs(view, at + 6, pairs);
    if (length < 6) break;
    at += length;
  }
  return (left, right) => pairs.get(left * 0x10000 + right) ?? 0;
}

function readPairs(view: DataView, at: number, pairs: Map<number, number>): void {
  const count = Math.min(view.getUint16(at), Math.floor((view.byteLength - at - 8) / 6));
  for (let i = 0; i < count; i++) {
    const entry = at + 8 + 6 * i;
    const key = view.getUint32(entry); // both glyphs
    if (!pairs.has(key)) pairs.set(key, view.getInt16(entry + 4));
  }
}
