import { headOf, shaftOf, solidArrow } from '../../../shared/views/arrow-shape.ts';
import type {
  ArrowMark,
  FaceMark,
  LineMark,
  Mark,
  PagePoint,
  TextMark,
} from '../../../shared/views/picture.ts';
import type { OpenSheet } from '../ask/answer.ts';
import type { Face as FaceOfSheet, Photo } from '../state/photos.ts';
import type { Told } from '../words/tell.ts';
import { Findings } from './findings.tsx';
import { paintOf } from './paper-defs.tsx';
import { after, type Matrix, matrixText, photoOnSheet } from './photo-matrix.ts';
import type { Found } from './place-badges.ts';

/** How marks in millimetres become a picture of pixels. */
export interface Drawing {
  /** Pixels for a millimetre of the marks' own page. */
  readonly scale: number;
  readonly tell: (text: string) => Told;
  /** The names of parts are written on them. */
  readonly labelled: boolean;
  readonly print: Print;
  /** The middle of the picture, in pixels. */
  readonly middle: { readonly x: number; readonly y: number };
}

/** What is printed on the sheet. */
export interface Print {
  readonly photos: Partial<Record<FaceOfSheet, Photo | undefined>>;
  readonly open: Pick<OpenSheet, 'sheet' | 'ups'>;
}

/** Smaller letters than these, in pixels, nobody reads. */
export const leastLetters = 9;
const usualLetters = 12;

const at = (scale: number, { x, y }: PagePoint): string =>
  `${Math.round(x * scale * 100) / 100} ${Math.round(y * scale * 100) / 100}`;

const polyline = (scale: number, points: readonly PagePoint[]): string =>
  `M ${points.map((point) => at(scale, point)).join(' L ')}`;

/** A line that must stand out lies on a wider one. */
const haloed: ReadonlySet<LineMark['line']> = new Set(['valley', 'mountain', 'slip']);

function Line({ mark: { line, lines }, scale }: { readonly mark: LineMark; readonly scale: number }) {
  const data = lines.map((points) => polyline(scale, points)).join(' ');
  return (
    <>
      {haloed.has(line) && <path d={data} class="halo" />}
      <path d={data} class={`line line-${line}`} />
    </>
  );
}

function Arrow({ mark, scale }: { readonly mark: ArrowMark; readonly scale: number }) {
  if (mark.arrow === 'print')
    return <path d={`${polyline(scale, solidArrow(mark))} Z`} class="print-arrow" />;
  const [from, by, to] = shaftOf(mark);
  const shaft = `M ${at(scale, from)} Q ${at(scale, by)} ${at(scale, to)}`;
  const head = `${polyline(scale, headOf(mark))} Z`;
  const behind = mark.arrow === 'away' ? ' behind' : '';
  return (
    <>
      <path d={shaft} class="halo" />
      <path d={shaft} class={`move${behind}`} />
      <path d={head} class={`move-head${behind}`} />
    </>
  );
}

/** A picture has room for a length in the maker's own unit, and not for the other in brackets. */
const inOneUnit = (text: string): string => text.replace(/ \([^)]*\)$/u, '');

/** Measures are always written; names of parts only where they can be read. */
function Text({ mark, drawing }: { readonly mark: TextMark; readonly drawing: Drawing }) {
  const { scale, tell } = drawing;
  const isMeasure = /\d/u.test(mark.text);
  const size = mark.size * scale;
  if (!isMeasure && (!drawing.labelled || size < leastLetters)) return null;
  const letters = Math.min(Math.max(size, isMeasure ? usualLetters : leastLetters), 16);
  const [x, y] = [mark.at.x * scale, mark.at.y * scale];
  return (
    <text
      x={x}
      y={y}
      dy="0.35em"
      font-size={letters}
      text-anchor={mark.anchor}
      class={isMeasure ? 'measure' : 'part'}
      {...(mark.upward ? { transform: `rotate(-90 ${x} ${y})` } : {})}
    >
      {tell(isMeasure ? inOneUnit(mark.text) : mark.text).text}
    </text>
  );
}

/** Where a photo of a face lies in the picture; none where the paper is only a sample. */
function photoMatrix({ sheet, paper }: FaceMark, { scale, print: { open } }: Drawing): Matrix | undefined {
  if (!sheet) return undefined;
  const [corner, right, below] = sheet;
  const onPage = {
    a: (right.x - corner.x) * scale,
    b: (right.y - corner.y) * scale,
    c: (below.x - corner.x) * scale,
    d: (below.y - corner.y) * scale,
    e: corner.x * scale,
    f: corner.y * scale,
  };
  return after(onPage, photoOnSheet(paper, open.sheet, open.ups[paper]));
}

interface FaceProps {
  readonly mark: FaceMark;
  readonly drawing: Drawing;
  readonly id: string;
}

/** A piece of paper, with what is cut out of it left open. */
function Face({ mark, drawing, id }: FaceProps) {
  const { outline, left, paper } = mark;
  const data = (left ?? [outline]).map((points) => `${polyline(drawing.scale, points)} Z`).join(' ');
  const photo = drawing.print.photos[paper];
  const matrix = photo && photoMatrix(mark, drawing);
  if (!photo || !matrix) return <path d={data} fill-rule="evenodd" fill={paintOf(paper)} />;
  return (
    <>
      <clipPath id={id}>
        <path d={data} clip-rule="evenodd" />
      </clipPath>
      <g clip-path={`url(#${id})`}>
        <image
          href={photo.address}
          width="1"
          height="1"
          preserveAspectRatio="none"
          transform={matrixText(matrix)}
        />
      </g>
    </>
  );
}

interface MarkProps {
  readonly mark: Mark;
  readonly drawing: Drawing;
  /** Unique on the page. */
  readonly id: string;
}

/** One mark as the page draws it. */
export function MarkView({ mark, drawing, id }: MarkProps) {
  const { scale } = drawing;
  switch (mark.kind) {
    case 'group':
      return (
        <g>
          <Marks marks={mark.marks} drawing={drawing} id={id} />
        </g>
      );
    case 'face':
      return <Face mark={mark} drawing={drawing} id={id} />;
    case 'finding':
      return null; // all of them are placed together
    case 'glue':
      return <path d={`${polyline(scale, mark.outline)} Z`} class="glue" />;
    case 'line':
      return <Line mark={mark} scale={scale} />;
    case 'arrow':
      return <Arrow mark={mark} scale={scale} />;
    case 'text':
      return <Text mark={mark} drawing={drawing} />;
  }
}

/** What the checks found, in pixels. */
const foundIn = (marks: readonly Mark[], scale: number): readonly Found[] =>
  marks.flatMap((mark) =>
    mark.kind === 'finding'
      ? [{ number: mark.number, refuses: mark.refuses, x: mark.at.x * scale, y: mark.at.y * scale }]
      : [],
  );

/** Marks one over the other. */
export const Marks = ({
  marks,
  drawing,
  id,
}: Omit<MarkProps, 'mark'> & { readonly marks: readonly Mark[] }) => (
  <>
    {marks.map((mark, index) => (
      <MarkView key={`${id}-${index}`} mark={mark} drawing={drawing} id={`${id}-${index}`} />
    ))}
    <Findings found={foundIn(marks, drawing.scale)} middle={drawing.middle} />
  </>
);
