import { SaxesParser, type SaxesTagNS } from 'saxes';
import type { FillingRule } from '../geometry/clip/combine.ts';
import type { Contour } from '../geometry/contour.ts';
import { type Affine, affineIn, composed, moved, unmoved } from './affine.ts';
import { type Attribute, drawn } from './basic-shapes.ts';
import { checkAttributes, SVG_NAMESPACE } from './known-attributes.ts';
import { checkSeen, type Paint, paintOf, usualPaint } from './paint.ts';
import { quoted, Refused } from './refused.ts';
import { type ViewSize, viewSizeOf } from './view-size.ts';

/** One filled element: its closed lines in the drawing's user units, perhaps crossing. */
export interface FilledElement {
  readonly contours: readonly Contour[];
  readonly rule: FillingRule;
}

/** All of a drawing that is to be cut. */
export interface SvgDrawing extends ViewSize {
  readonly elements: readonly FilledElement[];
}

const MOST_ELEMENTS = 2_000;
const MOST_DEPTH = 32;

/** Told about the drawing, not part of it: what is in them is skipped, unless it is SVG. */
const remarks: ReadonlySet<string> = new Set(['title', 'desc', 'metadata']);

/** Why elements that are often found are refused. Others are not read because they are not known. */
const reasons: ReadonlyMap<string, readonly [why: string, remedy: string]> = new Map([
  ['style', ['a cutter reads no style sheets', 'write colours as attributes of the shapes']],
  ['text', ['a cutter has no fonts', 'turn text into paths, or use lettering']],
  ['tspan', ['a cutter has no fonts', 'turn text into paths, or use lettering']],
  ['image', ['a picture has no lines to follow', 'trace it, and keep the paths only']],
  ['use', ['copies by reference are not followed', 'replace each copy by its own shape']],
  ['symbol', ['copies by reference are not followed', 'replace each copy by its own shape']],
  ['script', ['programs are never run', 'remove it']],
  ['foreignObject', ['only SVG is read', 'remove it']],
  ['clipPath', ['a clip hides lines, and a blade still follows them', 'intersect the shapes instead']],
  ['mask', ['a mask hides lines, and a blade still follows them', 'intersect the shapes instead']],
  ['filter', ['effects cannot be cut', 'remove it']],
  ['line', ['a line has no inside that could be cut out', 'turn it into a filled outline']],
  ['svg', ['a drawing in the drawing is not read', 'use one <svg> with groups']],
  ['a', ['links are not followed', 'take the shapes out of it']],
  ['linearGradient', ['gradients cannot be cut', 'fill with one colour']],
  ['radialGradient', ['gradients cannot be cut', 'fill with one colour']],
  ['pattern', ['patterns cannot be cut', 'fill with one colour']],
]);

const usualReason = [
  'only svg, g, path, rect, circle, ellipse, polygon and polyline are read',
  'remove it',
] as const;

/** What an open element hands to those inside it. */
interface Around {
  readonly name: string;
  readonly affine: Affine;
  readonly paint: Paint;
  readonly inRemark: boolean;
}

/**
 * Reads an SVG file strictly: filled shapes and paths, groups and transforms. Whatever else may stand in one is refused
 * by name, not skipped, since a maker would miss it in the paper. Nothing is ever fetched, expanded or run.
 * Throws {@link Refused}.
 */
export function readSvg(text: string): SvgDrawing {
  const parser = new SaxesParser({ xmlns: true });
  const stack: Around[] = [];
  const elements: FilledElement[] = [];
  let view: ViewSize | undefined;
  let count = 0;
  const refuse = (what: string, remedy: string): never => {
    throw new Refused(`line ${parser.line}: ${what}`, remedy);
  };

  parser.on('error', ({ message }) =>
    refuse(`this is not sound XML: ${message.replace(/^\d+:\d+: /u, '')}`, 'save the drawing again'),
  );
  parser.on('doctype', (doctype) => {
    if (!isPlainDoctype(doctype))
      refuse(
        'the DOCTYPE declares things of its own, or is not that of SVG',
        'remove the DOCTYPE; SVG needs none',
      );
  });
  parser.on('processinginstruction', ({ target }) =>
    refuse(`the processing instruction ${quoted(target)} is not followed`, 'remove it'),
  );
  parser.on('cdata', () => {
    if (!stack.at(-1)?.inRemark) refuse('there is a CDATA section between the shapes', 'remove it');
  });
  parser.on('text', (written) => {
    if (written.trim() !== '' && stack.length > 0 && !stack.at(-1)?.inRemark)
      refuse(
        `there is text between the shapes: ${quoted(written.trim())}`,
        'remove it, or turn it into paths',
      );
  });
  parser.on('opentag', (tag) => {
    if (++count > MOST_ELEMENTS)
      refuse(`there are more than ${MOST_ELEMENTS} elements`, 'unite shapes into paths');
    if (stack.length >= MOST_DEPTH)
      refuse(`groups lie in each other more than ${MOST_DEPTH} deep`, 'take groups apart');
    stack.push(open(tag, stack.at(-1)));
  });
  parser.on('closetag', () => void stack.pop());

  const open = (tag: SaxesTagNS, around: Around | undefined): Around => {
    const where = `<${tag.name}> in line ${parser.line}`;
    const isSvg = tag.uri === SVG_NAMESPACE;
    if (!around) return openRoot(tag, isSvg, where);
    if (around.inRemark && !isSvg) return { ...around, name: tag.name };
    if (!isSvg) throw new Refused(`${where} is not of SVG's namespace`, 'save as plain SVG, or remove it');
    if (around.inRemark) throw notRead(tag.local, where);
    if (around.name === 'defs')
      throw new Refused(`${where} stands in <defs>, where nothing is drawn`, 'take it out, or remove it');
    if (remarks.has(tag.local)) return { ...around, name: tag.local, inRemark: true };
    const element = drawn.get(tag.local);
    if (!element && tag.local !== 'g' && tag.local !== 'defs') throw notRead(tag.local, where);
    if (around.name !== 'svg' && around.name !== 'g')
      throw new Refused(`${where} stands inside <${around.name}>`, 'take it out');
    checkAttributes(tag, element?.attributes ?? [], where);
    const attribute = attributesOf(tag);
    const paint = paintOf(attribute, around.paint, where);
    const own = affineIn(attribute('transform') ?? '', `the transform of ${where}`);
    const affine = composed(around.affine, own);
    if (element) {
      checkSeen(paint, where);
      const contours = element.contours(attribute, where);
      if (contours.length === 0) throw new Refused(`${where} draws nothing`, 'remove it');
      elements.push({ contours: contours.map((contour) => moved(affine, contour)), rule: paint.rule });
    }
    return { name: tag.local, affine, paint, inRemark: false };
  };

  const openRoot = (tag: SaxesTagNS, isSvg: boolean, where: string): Around => {
    if (!isSvg || tag.local !== 'svg')
      throw new Refused(
        `the file begins with ${where}, where <svg xmlns="${SVG_NAMESPACE}"> is expected`,
        'save it as SVG',
      );
    checkAttributes(
      tag,
      ['width', 'height', 'viewBox', 'version', 'baseProfile', 'preserveAspectRatio'],
      where,
    );
    const attribute = attributesOf(tag);
    view = viewSizeOf(attribute);
    return { name: 'svg', affine: unmoved, paint: paintOf(attribute, usualPaint, where), inRemark: false };
  };

  parser.write(text).close();
  if (!view) throw new Refused('the artwork has no <svg> element', 'save it as SVG');
  return { ...view, elements };
}

const attributesOf =
  (tag: SaxesTagNS): Attribute =>
  (name) =>
    Object.hasOwn(tag.attributes, name) ? tag.attributes[name]?.value : undefined;

function notRead(name: string, where: string): Refused {
  const [why, remedy] = reasons.get(name) ?? usualReason;
  return new Refused(`${where} is not read: ${why}`, remedy);
}

/** The DOCTYPE of SVG 1.0 or 1.1 as files have it. Nothing behind its address is ever looked up. */
const isPlainDoctype = (doctype: string): boolean =>
  /^\s*svg(?:\s+PUBLIC\s+(["'])-\/\/W3C\/\/DTD SVG [\w. ]{1,40}\/\/EN\1\s+(["'])https?:\/\/www\.w3\.org\/[\w./-]{1,100}\2)?\s*$/u.test(
    doctype,
  );
