import { fonts } from './pdf-document.ts';

/** Left and right of a cell's text together, in points. */
const pad = 8;

const sum = (values: readonly number[]): number => values.reduce((all, each) => all + each, 0);

/**
 * Columns of a table as wide as their longest words ask, and the rest shared by the length of their texts.
 * @param rows cells, the head's among them
 * @param size of the text, in points
 * @param room width of the table at most, in points
 */
export function columnWidths(
  pdf: PDFKit.PDFDocument,
  rows: readonly (readonly string[])[],
  size: number,
  room: number,
): readonly number[] {
  pdf.font(fonts.bold).fontSize(size);
  const columns = (rows[0] ?? []).map((_, index) => rows.map((row) => row[index] ?? ''));
  const widest = (texts: readonly string[]) =>
    Math.max(...texts.map((text) => pdf.widthOfString(text))) + pad;
  const least = columns.map((texts) => widest(texts.flatMap((text) => text.split(' '))));
  const spare = room - sum(least);
  if (spare <= 0) return least.map((each) => (each * room) / (room - spare));
  const more = columns.map((texts, index) => widest(texts) - (least[index] ?? 0));
  const share = sum(more) === 0 ? 0 : Math.min(1, spare / sum(more));
  return least.map((each, index) => each + (more[index] ?? 0) * share);
}
