import { arcCurves, ellipse } from '../geometry/arcs.ts';
import type { Contour, Stretch } from '../geometry/contour.ts';
import type { Point } from '../geometry/plane.ts';
import { polygon } from '../geometry/walk.ts';
import { numberIn, numbersIn } from './numbers.ts';
import { contoursOfPath } from './path-contours.ts';
import { Refused } from './refused.ts';

/** The value of an attribute, if the element has it. */
export type Attribute = (name: string) => string | undefined;

/** What each element that draws is made of: its own attributes, and its closed lines in user units. */
interface Drawn {
  readonly attributes: readonly string[];
  contours(attribute: Attribute, where: string): Contour[];
}

/** The elements that draw, by name. Each `contours` throws {@link Refused}. */
export const drawn: ReadonlyMap<string, Drawn> = new Map<string, Drawn>([
  [
    'path',
    {
      attributes: ['d'],
      contours: (attribute, where) => contoursOfPath(attribute('d') ?? '', `the d of ${where}`),
    },
  ],
  ['rect', { attributes: ['x', 'y', 'width', 'height', 'rx', 'ry'], contours: rectangle }],
  [
    'circle',
    { attributes: ['cx', 'cy', 'r'], contours: (attribute, where) => round(attribute, where, 'r', 'r') },
  ],
  [
    'ellipse',
    {
      attributes: ['cx', 'cy', 'rx', 'ry'],
      contours: (attribute, where) => round(attribute, where, 'rx', 'ry'),
    },
  ],
  ['polygon', { attributes: ['points'], contours: corners }],
  ['polyline', { attributes: ['points'], contours: corners }],
]);

const optional = (attribute: Attribute, name: string, where: string): number | undefined => {
  const text = attribute(name);
  return text === undefined ? undefined : numberIn(text, `the ${name} of ${where}`);
};

/** A measure that has to be there and greater than zero. */
function measure(attribute: Attribute, name: string, where: string): number {
  const value = optional(attribute, name, where) ?? 0;
  if (value > 0) return value;
  throw new Refused(
    `the ${name} of ${where} is ${value < 0 ? 'negative' : 'missing or zero'}`,
    'give it a size, or remove it',
  );
}

function round(attribute: Attribute, where: string, rx: string, ry: string): Contour[] {
  const centre = { x: optional(attribute, 'cx', where) ?? 0, y: optional(attribute, 'cy', where) ?? 0 };
  return [ellipse(centre, measure(attribute, rx, where), measure(attribute, ry, where))];
}

/** A rectangle, its corners rounded by quarters of an ellipse (SVG 1.1, section 9.2). */
function rectangle(attribute: Attribute, where: string): Contour[] {
  const x = optional(attribute, 'x', where) ?? 0;
  const y = optional(attribute, 'y', where) ?? 0;
  const width = measure(attribute, 'width', where);
  const height = measure(attribute, 'height', where);
  const given = { rx: optional(attribute, 'rx', where), ry: optional(attribute, 'ry', where) };
  if ((given.rx ?? 0) < 0 || (given.ry ?? 0) < 0)
    throw new Refused(`a corner radius of ${where} is negative`, 'give 0 or more');
  const rx = Math.min(given.rx ?? given.ry ?? 0, width / 2);
  const ry = Math.min(given.ry ?? given.rx ?? 0, height / 2);
  const [right, bottom] = [x + width, y + height];
  if (rx === 0 || ry === 0)
    return [
      polygon([
        { x, y },
        { x: right, y },
        { x: right, y: bottom },
        { x, y: bottom },
      ]),
    ];
  const quarter = (cx: number, cy: number, from: number): Stretch[] =>
    arcCurves({ centre: { x: cx, y: cy }, radiusX: rx, radiusY: ry, from, to: from + 90 });
  return [
    {
      start: { x: x + rx, y },
      stretches: [
        { to: { x: right - rx, y } },
        ...quarter(right - rx, y + ry, -90),
        { to: { x: right, y: bottom - ry } },
        ...quarter(right - rx, bottom - ry, 0),
        { to: { x: x + rx, y: bottom } },
        ...quarter(x + rx, bottom - ry, 90),
        { to: { x, y: y + ry } },
        ...quarter(x + rx, y + ry, 180),
      ],
    },
  ];
}

function corners(attribute: Attribute, where: string): Contour[] {
  const numbers = numbersIn(attribute('points') ?? '', `the points of ${where}`);
  if (numbers.length % 2 === 1)
    throw new Refused(`the points of ${where} have an x without a y`, 'give both for every point');
  if (numbers.length < 6)
    throw new Refused(`${where} has fewer than 3 points, so it has no inside`, 'draw a shape, or remove it');
  const points: Point[] = [];
  for (let i = 0; i < numbers.length; i += 2) points.push({ x: numbers[i] ?? 0, y: numbers[i + 1] ?? 0 });
  return [polygon(points)];
}
