import type { LineType } from '../../shared/drawing/convention.ts';

/** Element lengths in line widths: dash 12, gap 3, long dash 24 (ISO 128-2, from memory); a dot of 1 can be seen. */
const elements: Readonly<Record<LineType, readonly number[]>> = {
  continuous: [],
  dashed: [12, 3],
  dotted: [1, 3],
  'long-dashed dotted': [24, 3, 1, 3],
};

/**
 * How a group's stroke is not as wide and dashed as was asked for; undefined where it is.
 * @param scale millimetres in one user unit
 */
export function strokeFault(
  scale: number,
  drawn: { readonly width: string | undefined; readonly dashes: string | undefined },
  wanted: { readonly width: number; readonly lineType: LineType },
): string | undefined {
  const off = (value: number, asked: number): boolean =>
    Math.abs(value - asked) > 0.0006 * scale + 1e-6 * asked;
  if (off(Number(drawn.width) * scale, wanted.width)) return `has a stroke of ${drawn.width}`;
  const lengths = drawn.dashes?.split(' ').map(Number) ?? [];
  const all = elements[wanted.lineType];
  const same = lengths.length === all.length;
  return same && !lengths.some((length, index) => off(length * scale, (all[index] ?? 0) * wanted.width))
    ? undefined
    : `is dashed ${drawn.dashes}`;
}
