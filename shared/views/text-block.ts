/** Sizes of text in millimetres; nothing that is to be read is smaller than 3 mm. */
export const textSize = Object.freeze({ label: 3.2, step: 3.4, heading: 4, title: 5.4 });

/** Distance of two lines of text, in sizes. */
export const lineHeight = 1.35;

/** Widths of letters in sizes, those of a wide sans-serif, so that no reader's font runs over. */
const letterWidths: readonly (readonly [RegExp, number])[] = [
  [/[ijl.,:;'|!()]/u, 0.38],
  [/[mwMW%×≈—]/u, 0.95],
  [/[A-Z]/u, 0.72],
  [/ /u, 0.34],
];
const usualWidth = 0.63;
const boldFactor = 1.12;

/** How wide a line of text is at most, in millimetres. */
export function widthOf(text: string, size: number, bold = false): number {
  const sum = [...text].reduce(
    (width, letter) => width + (letterWidths.find(([some]) => some.test(letter))?.[1] ?? usualWidth),
    0,
  );
  return sum * size * (bold ? boldFactor : 1);
}

/** The white plate under a line of text that is to be read over a pattern. */
export const plateOf = (text: string, size: number, bold = false) => ({
  width: widthOf(text, size, bold) + size * 0.4,
  height: size * 1.3,
});

/** Breaks text into lines that are no wider than a width, in millimetres; a longer word stands alone. */
export function wrap(text: string, width: number, size: number, bold = false): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    const longer = last === undefined ? word : `${last} ${word}`;
    if (last !== undefined && widthOf(longer, size, bold) <= width) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}
