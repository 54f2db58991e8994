import type { Label, LabelLine } from '../../shared/labels/labels.ts';
import type { LabelsWish } from '../../shared/labels/labels-query.ts';
import type { Picture } from '../../shared/views/picture.ts';
import { fonts } from '../guide/pdf-document.ts';
import { pageMargin, points } from '../guide/pdf-page.ts';

type Pdf = PDFKit.PDFDocument;

/** Sizes of text in points, and how many columns of labels they leave room for. */
export interface Form {
  readonly heading: number;
  readonly body: number;
  readonly columns: number;
}

/** What is tried in order until no label has to go on over a second page; the first, if none serves. */
export const formsOf: Readonly<Record<LabelsWish['print'], readonly [Form, ...Form[]]>> = {
  standard: [
    { heading: 12, body: 9, columns: 2 },
    { heading: 12, body: 8.5, columns: 2 },
    { heading: 12, body: 8, columns: 2 },
    { heading: 12, body: 7.5, columns: 2 },
  ],
  large: [{ heading: 19, body: 16, columns: 1 }],
};

/** Kept free between a label's text and the lines to cut along, in points. */
export const pad = 10;
/** Kept free at the foot of a page, in points. */
export const footHeight = 24;
/** Space behind a line, as a share of its size. */
export const below = 0.35;

/** One page: labels of one size, from left to right and down. */
export interface Page {
  readonly labels: readonly Label[];
  readonly size: { readonly width: number; readonly height: number };
  /** Stands at its foot. */
  readonly foot: string;
  readonly form: Form;
}

/** Labels in parts that fit, and how large each may be. */
function laidOut(pdf: Pdf, labels: readonly Label[], form: Form) {
  const room = {
    width: pdf.page.width - 2 * points(pageMargin),
    height: pdf.page.height - 2 * points(pageMargin) - footHeight,
  };
  const width = room.width / form.columns;
  const heightOf = heightsIn(pdf, width, form);
  const parts = labels.flatMap((label) => inParts(label, room.height, heightOf));
  const tallest = Math.max(...parts.map(heightOf), 1);
  const rows = Math.max(1, Math.floor(room.height / tallest));
  return { form, parts, size: { width, height: room.height / rows }, most: rows * form.columns };
}

/** By the first form in which no label goes on over a second page; by the first of all, if none serves. */
function bestLaidOut(pdf: Pdf, labels: readonly Label[], [first, ...others]: readonly [Form, ...Form[]]) {
  const usual = laidOut(pdf, labels, first);
  if (usual.parts.length === labels.length) return usual;
  for (const form of others) {
    const tried = laidOut(pdf, labels, form);
    if (tried.parts.length === labels.length) return tried;
  }
  return usual;
}

/**
 * Labels laid out on pages, as many a page as have room.
 * @param wanted one of each label, or pages that are filled with copies of one, to be printed as often as it takes
 */
export function pagesOf(
  pdf: Pdf,
  labels: readonly Label[],
  forms: readonly [Form, ...Form[]],
  wanted: 'once' | { readonly copies: number },
): readonly Page[] {
  const { form, parts, size, most } = bestLaidOut(pdf, labels, forms);
  if (wanted === 'once')
    return Array.from({ length: Math.ceil(parts.length / most) }, (_, page) => ({
      labels: parts.slice(page * most, (page + 1) * most),
      size,
      foot: '',
      form,
    }));
  const each = Math.min(most, wanted.copies);
  const times = Math.ceil(wanted.copies / each);
  return parts.map((part) => ({
    labels: Array.from({ length: each }, () => part),
    size,
    foot: times === 1 ? '' : `Print this page ${times} times, for ${wanted.copies} kits.`,
    form,
  }));
}

/** A number stays with its fraction and its unit. */
export const unbroken = (text: string): string =>
  text.replaceAll(
    /([\d≈]) (?=\d+\/\d|mm\b|in\b)|≈ /gu,
    (_, before: string | undefined) => `${before ?? '≈'}\u00A0`,
  );

export const textOf = ({ lead, text }: LabelLine): string => unbroken([lead, text].filter(Boolean).join(' '));

/** Height of a picture in its own size, or as wide as there is room. */
export const pictureHeight = ({ width, height, enlarged = 1 }: Picture, room: number): number =>
  points(height) * Math.min(enlarged, room / points(width));

type HeightOf = (label: Label) => number;

/** Measures labels of one width. Those of a class say nearly the same, so each text is measured once. */
function heightsIn(pdf: Pdf, width: number, form: Form): HeightOf {
  const inner = { width: width - 2 * pad };
  const known = new Map<string, number>();
  const one = (text: string, size: number) => {
    const key = `${size} ${text}`;
    const height =
      known.get(key) ?? pdf.font(fonts.bold).fontSize(size).heightOfString(text, inner) + size * below;
    known.set(key, height);
    return height;
  };
  return ({ heading, picture, lines }) => {
    const above = picture ? pictureHeight(picture, inner.width) + form.body * below : 0;
    const written = lines.reduce((sum, line) => sum + one(textOf(line), form.body), 0);
    return above + one(heading, form.heading) + written + 2 * pad;
  };
}

/** A label that is higher than a page, in several. */
function inParts(label: Label, most: number, heightOf: HeightOf): readonly Label[] {
  const { heading, lines } = label;
  const upTo = (count: number): Label => ({ ...label, lines: lines.slice(0, count) });
  let count = lines.length;
  while (count > 1 && heightOf(upTo(count)) > most) count--;
  if (count >= lines.length) return [label];
  const rest = { heading: continued(heading), lines: lines.slice(count) };
  return [upTo(count), ...inParts(rest, most, heightOf)];
}

const continued = (heading: string): string =>
  heading.endsWith(', continued') ? heading : `${heading}, continued`;
