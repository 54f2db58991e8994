import type { Container, Svg } from '@svgdotjs/svg.js';
import { decimal } from '../../shared/drawing/numbers.ts';
import { headOf, shaftOf, solidArrow } from '../../shared/views/arrow-shape.ts';
import { glueInk, type Ink, inks, papers } from '../../shared/views/ink.ts';
import { plainMarks } from '../../shared/views/move-marks.ts';
import type {
  ArrowMark,
  FaceMark,
  FindingMark,
  GlueMark,
  LineMark,
  Mark,
  PagePoint,
  Paper,
  Picture,
  TextMark,
} from '../../shared/views/picture.ts';
import { plateOf } from '../../shared/views/text-block.ts';
import { newSvg } from './new-svg.ts';

const number = (value: number): string => decimal(value, 2);
const pair = ({ x, y }: PagePoint): string => `${number(x)} ${number(y)}`;
const polyline = (points: readonly PagePoint[]): string => `M ${points.map(pair).join(' L ')}`;

/**
 * A picture as the text of an SVG document in millimetres. A screen reader reads its title and description as
 * those of one image. The same picture gives the same bytes.
 */
export function writePicture(picture: Picture): string {
  const [width, height] = [number(picture.width), number(picture.height)];
  const { enlarged = 1 } = picture;
  const [title, description] = [`${picture.name}-title`, `${picture.name}-description`];
  const root = newSvg().attr({
    width: `${number(picture.width * enlarged)}mm`,
    height: `${number(picture.height * enlarged)}mm`,
    viewBox: `0 0 ${width} ${height}`,
    role: 'img',
    'aria-labelledby': `${title} ${description}`,
    'font-family': 'sans-serif',
  });
  writeText(root, 'title', title, picture.title);
  writeText(root, 'desc', description, picture.description);
  const fills = fillsFor(root, picture);
  root.rect(picture.width, picture.height).attr({ width, height, fill: '#FFFFFF' });
  for (const mark of picture.marks) writeMark(root, mark, fills);
  return `<?xml version="1.0" encoding="UTF-8"?>\n${root.svg()}\n`;
}

type Fills = Readonly<Record<Paper | 'glue', string>>;

function writeText(parent: Container, name: 'title' | 'desc', id: string, text: string): void {
  const element = parent.element(name).attr('id', id);
  element.node.textContent = text;
}

/** The fill of each side of the paper; a hatched one is a pattern, turned so that its lines run diagonally. */
function fillsFor(root: Svg, { name, marks }: Picture): Fills {
  const fill = (paper: Paper): string => {
    const { ground, hatch } = papers[paper];
    if (!hatch) return ground;
    const id = `${name}-${paper}-face`;
    const { spacing, width, colour } = hatch;
    const pattern = root.defs().pattern(spacing, spacing).attr({
      id,
      x: 0,
      y: 0,
      width: spacing,
      height: spacing,
      patternUnits: 'userSpaceOnUse',
      patternTransform: 'rotate(45)',
    });
    pattern.rect(spacing, spacing).attr('fill', ground);
    pattern.rect(width, spacing).attr('fill', colour);
    return `url(#${id})`;
  };
  const isGlued = plainMarks(marks).some(({ kind }) => kind === 'glue');
  return {
    outside: fill('outside'),
    inside: fill('inside'),
    glue: isGlued ? dotsFor(root, `${name}-glue`) : glueInk.ground,
  };
}

function dotsFor(root: Svg, id: string): string {
  const { ground, dots } = glueInk;
  const { colour, radius, spacing } = dots;
  const pattern = root
    .defs()
    .pattern(spacing, spacing)
    .attr({ id, x: 0, y: 0, width: spacing, height: spacing, patternUnits: 'userSpaceOnUse' });
  pattern.rect(spacing, spacing).attr('fill', ground);
  pattern.circle(2 * radius).attr({ cx: spacing / 2, cy: spacing / 2, fill: colour });
  return `url(#${id})`;
}

function writeMark(parent: Container, mark: Mark, fills: Fills): void {
  switch (mark.kind) {
    case 'group': {
      const group = parent.group().attr('data-name', mark.name);
      for (const inner of mark.marks) writeMark(group, inner, fills);
      return;
    }
    case 'face':
      writeFace(parent, mark, fills);
      return;
    case 'glue':
      writeGlue(parent, mark, fills);
      return;
    case 'line':
      writeLine(parent, mark);
      return;
    case 'arrow':
      writeArrow(parent, mark);
      return;
    case 'text':
      writeLabel(parent, mark);
      return;
    case 'finding':
      writeFinding(parent, mark);
      return;
  }
}

function writeFace(parent: Container, { part, paper, outline, left }: FaceMark, fills: Fills): void {
  const data = (left ?? [outline]).map((points) => `${polyline(points)} Z`).join(' ');
  if (data === '') return;
  const rule = left ? { 'fill-rule': 'evenodd' } : {};
  parent.path(data).attr({ fill: fills[paper], ...rule, 'data-part': part, 'data-paper': paper });
}

/** Radius of the ring around a finding's number, in millimetres. */
const findingRadius = 2.4;

/** A number in a ring; white on black where it must not be cut so. */
function writeFinding(parent: Container, { number: figure, refuses, at }: FindingMark): void {
  const [ground, ink] = refuses ? ['#000000', '#FFFFFF'] : ['#FFFFFF', '#000000'];
  parent.circle(2 * findingRadius).attr({
    cx: number(at.x),
    cy: number(at.y),
    r: number(findingRadius),
    fill: ground,
    stroke: '#000000',
    'stroke-width': number(0.5),
  });
  const size = figure < 10 ? 3.4 : 2.8;
  const element = parent.element('text').attr({
    x: number(at.x),
    y: number(at.y + size * 0.35),
    'font-size': size,
    'font-weight': 'bold',
    'text-anchor': 'middle',
    fill: ink,
  });
  element.node.textContent = String(figure);
}

function writeGlue(parent: Container, { outline }: GlueMark, fills: Fills): void {
  parent.path(`${polyline(outline)} Z`).attr({ ...strokeOf(glueInk.outline), fill: fills.glue });
}

const strokeOf = ({ colour, width, dashes }: Ink) => ({
  fill: 'none',
  stroke: colour,
  'stroke-width': number(width),
  'stroke-linecap': 'round',
  'stroke-linejoin': 'round',
  ...(dashes.length === 0 ? {} : { 'stroke-dasharray': dashes.join(' ') }),
});

/** Lines that must stand out from what is under them lie on a wider white one. */
const haloed: ReadonlySet<LineMark['line']> = new Set(['valley', 'mountain', 'slip']);

function writeLine(parent: Container, { line, lines }: LineMark): void {
  const data = lines.map(polyline).join(' ');
  const ink = inks[line];
  // a wide line that ends at the paper's edge must not stick out beyond it
  const cap = line === 'seam' ? { 'stroke-linecap': 'butt' } : {};
  if (haloed.has(line))
    parent.path(data).attr(strokeOf({ colour: '#FFFFFF', width: ink.width + 0.8, dashes: [] }));
  parent.path(data).attr({ ...strokeOf(ink), ...cap });
}

function writeArrow(parent: Container, arrow: ArrowMark): void {
  if (arrow.arrow === 'print') {
    const data = `${polyline(solidArrow(arrow))} Z`;
    const { part, paper } = arrow;
    const spoken = part === undefined ? {} : { 'data-part': part, 'data-paper': paper };
    parent.path(data).attr(strokeOf({ colour: '#FFFFFF', width: 0.6, dashes: [] }));
    parent.path(data).attr({ fill: '#000000', ...spoken });
    return;
  }
  const behind = arrow.arrow === 'away';
  const [from, by, to] = shaftOf(arrow);
  const shaft = `M ${pair(from)} Q ${pair(by)} ${pair(to)}`;
  const head = `${polyline(headOf(arrow))} Z`;
  parent.path(shaft).attr(strokeOf({ colour: '#FFFFFF', width: 2.6, dashes: [] }));
  parent.path(head).attr({ ...strokeOf({ colour: '#FFFFFF', width: 2, dashes: [] }), fill: '#FFFFFF' });
  parent.path(shaft).attr(strokeOf({ colour: '#000000', width: 1, dashes: behind ? [1.6, 1.8] : [] }));
  parent.path(head).attr({
    ...strokeOf({ colour: '#000000', width: 0.6, dashes: [] }),
    fill: behind ? '#FFFFFF' : '#000000',
  });
}

function writeLabel(parent: Container, { text, at, size, anchor, bold, upward, plate }: TextMark): void {
  const turn = upward ? { transform: `rotate(-90 ${pair(at)})` } : {};
  if (plate) {
    const { width, height } = plateOf(text, size, bold);
    parent.rect(width, height).attr({
      x: number(at.x - width / 2),
      y: number(at.y - height / 2),
      width: number(width),
      height: number(height),
      rx: number(size * 0.3),
      fill: '#FFFFFF',
      ...turn,
    });
  }
  const element = parent.element('text').attr({
    x: number(at.x),
    // the baseline of lower case letters lies about a third of the size below their middle
    y: number(at.y + size * 0.35),
    'font-size': size,
    'text-anchor': anchor,
    ...(bold ? { 'font-weight': 'bold' } : {}),
    ...turn,
  });
  element.node.textContent = text;
}
