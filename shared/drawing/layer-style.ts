import type { Nm } from '../lengths/nanometres.ts';
import { mm } from '../lengths/nanometres.ts';
import type { LineType } from './convention.ts';
import type { FigureGroup, FigurePath } from './figure.ts';
import { type Placement, placeLength } from './placement.ts';

/** How one layer is drawn. */
export interface LayerStyle {
  readonly colour: string;
  readonly width: Nm;
  readonly lineType: LineType;
  readonly paint: 'stroke' | 'fill';
  readonly order: number;
  readonly off: boolean;
}

/** A layer as it is drawn where a convention says nothing. */
export function usualLayer(colour: string, lineType: LineType, order: number): LayerStyle {
  return { colour, lineType, order, width: mm(0.25), paint: 'stroke', off: false };
}

/**
 * Element lengths of line types, in line widths: dash 12, gap 3, long dash 24. ISO 128-2 (from memory) has dots
 * of at most half a line width, which nobody sees at 0.25 mm: here a dot is one line width.
 */
const dashLengths: Readonly<Record<LineType, readonly number[]>> = {
  continuous: [],
  dashed: [12, 3],
  dotted: [1, 3],
  'long-dashed dotted': [24, 3, 1, 3],
};

/** A group with its place among others; undefined where its layer is off. */
export type Ordered = { readonly order: number; readonly group: FigureGroup } | undefined;

/** Groups as they are written. */
export const inOrder = (groups: readonly Ordered[]): FigureGroup[] =>
  groups
    .filter((one) => one !== undefined)
    .toSorted((one, other) => one.order - other.order)
    .map(({ group }) => group);

type Overrides = { readonly [Key in keyof LayerStyle]?: LayerStyle[Key] | undefined };

/** A style with what a convention says of it. */
export function merge(style: LayerStyle, own: Overrides | undefined): LayerStyle {
  const said = Object.entries(own ?? {}).filter(([, value]) => value !== undefined);
  return { ...style, ...Object.fromEntries(said) };
}

/** A layer as a group with its presentation attributes. */
export function groupOf(
  id: string,
  title: string,
  style: LayerStyle,
  placement: Placement,
  paths: FigurePath[],
): Ordered {
  if (style.off) return undefined;
  return {
    order: style.order,
    group: { id, title, attributes: attributesOf(style, placement), paths, groups: [] },
  };
}

function attributesOf(style: LayerStyle, placement: Placement): Record<string, string> {
  if (style.paint === 'fill') return { fill: style.colour, stroke: 'none' };
  const dashes = dashLengths[style.lineType].map((length) => placeLength(placement, length * style.width));
  return {
    fill: 'none',
    stroke: style.colour,
    'stroke-width': placeLength(placement, style.width),
    ...(dashes.length === 0 ? {} : { 'stroke-dasharray': dashes.join(' ') }),
  };
}
