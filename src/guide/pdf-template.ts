import { setImmediate as nextTurn } from 'node:timers/promises';
import svgToPdf from 'svg-to-pdfkit';
import { applyConvention } from '../../shared/drawing/apply-convention.ts';
import type { Convention } from '../../shared/drawing/convention.ts';
import { drawFinished } from '../../shared/drawing/draw-folder.ts';
import type { Folded } from '../../shared/folding/proof-of.ts';
import { inMm } from '../../shared/lengths/show-length.ts';
import { sentence } from '../../shared/views/part-names.ts';
import { HttpProblem } from '../problem/http-problem.ts';
import { writeSvg } from '../svg/write-svg.ts';
import { fonts } from './pdf-document.ts';
import { type PrintPaper, pageMargin, points, printPapers } from './pdf-page.ts';

type Pdf = PDFKit.PDFDocument;

/** How far neighbouring pages show the same piece of the blank, in millimetres. */
const overlap = 10;
/** Kept above the drawing for words and the rule, in millimetres. */
const head = 24;

/** As the maker's sheet is drawn: the whole outline, thin black lines told apart by their types. */
const onPaper: Convention = {
  outline: 'always',
  layers: {
    scoreValley: { colour: '#000000', lineType: 'dashed' },
    scoreMountain: { colour: '#000000', lineType: 'long-dashed dotted' },
    knockout: { colour: '#000000', lineType: 'continuous' },
    cut: { colour: '#000000', lineType: 'continuous' },
  },
};

/** Where pages begin along one side, in millimetres of the blank. */
export function tileStarts(length: number, page: number): readonly number[] {
  const step = page - overlap;
  const count = Math.max(1, Math.ceil((length - overlap) / step));
  return Array.from({ length: count }, (_, index) => index * step);
}

/** More pages than this nobody joins; each takes the service some time. */
const MOST_PAGES = 48;

const tooMany = (pages: number): HttpProblem => {
  const message = `the blank in real size would take ${pages} pages`;
  const remedy = `leave the template out, or make a blank of at most ${MOST_PAGES} pages`;
  return new HttpProblem(422, `${sentence(message)}; ${remedy}.`, [{ path: '', message, remedy }]);
};

/**
 * Adds the blank in real size, inside face up, over as many pages as it takes.
 * @throws HttpProblem with 422 for a blank of too many pages
 */
export async function addTemplate(pdf: Pdf, folded: Folded, paper: PrintPaper): Promise<void> {
  const drawing = { ...drawFinished(folded), turned: false };
  const svg = writeSvg(applyConvention(drawing, onPaper));
  const [width, height] = [inMm(drawing.width), inMm(drawing.height)];
  const page = {
    width: printPapers[paper].width - 2 * pageMargin,
    height: printPapers[paper].height - 2 * pageMargin - head,
  };
  const [columns, rows] = [tileStarts(width, page.width), tileStarts(height, page.height)];
  if (columns.length * rows.length > MOST_PAGES) throw tooMany(columns.length * rows.length);
  for (const [row, top] of rows.entries())
    for (const [column, left] of columns.entries()) {
      pdf.addPage();
      const place = `row ${row + 1} of ${rows.length}, column ${column + 1} of ${columns.length}`;
      pdf.addStructure(
        pdf.struct('P', {}, () => {
          pdf.font(fonts.bold).fontSize(9);
          pdf.text(`Template in real size, inside face up: ${place}`, points(pageMargin), points(pageMargin));
          pdf.font(fonts.plain).fontSize(8);
          pdf.text(
            'Print at 100 %, without fitting to the page, and measure the rule before you cut anything. Lay pages over each other so that their crosses meet.',
            { width: points(page.width) },
          );
        }),
      );
      pdf.markContent('Artifact', { type: 'Layout' });
      checkRule(pdf, pageMargin, pageMargin + head - 5);
      pdf.endMarkedContent();
      const origin = { x: pageMargin - left, y: pageMargin + head - top };
      pdf.addStructure(
        pdf.struct('Figure', { alt: `The blank in real size, ${place}.` }, () => {
          pdf.save();
          pdf
            .rect(points(pageMargin), points(pageMargin + head), points(page.width), points(page.height))
            .clip();
          svgToPdf(pdf, svg, points(origin.x), points(origin.y), {
            width: points(width),
            height: points(height),
          });
          for (const y of crosses(rows, page.height))
            for (const x of crosses(columns, page.width)) cross(pdf, origin.x + x, origin.y + y);
          pdf.restore();
        }),
      );
      // others must not wait for all of them
      await nextTurn();
    }
}

/** In the middle of each overlap, and as far inside the first and the last page. */
function crosses(starts: readonly number[], page: number): readonly number[] {
  const inner = starts.slice(1).map((start) => start + overlap / 2);
  return [overlap / 2, ...inner, (starts.at(-1) ?? 0) + page - overlap / 2];
}

function cross(pdf: Pdf, x: number, y: number): void {
  const arm = 3;
  pdf.lineWidth(0.4).strokeColor('#000000').undash();
  pdf
    .moveTo(points(x - arm), points(y))
    .lineTo(points(x + arm), points(y))
    .stroke();
  pdf
    .moveTo(points(x), points(y - arm))
    .lineTo(points(x), points(y + arm))
    .stroke();
}

/** A rule of 100 mm and one of 4 in beside it, to check the printer by. */
function checkRule(pdf: Pdf, x: number, y: number): void {
  const line = (fromX: number, fromY: number, toX: number, toY: number) =>
    pdf.moveTo(points(fromX), points(fromY)).lineTo(points(toX), points(toY)).stroke();
  pdf.lineWidth(0.5).strokeColor('#000000').undash();
  line(x, y, x + 100, y);
  for (let mm = 0; mm <= 100; mm += 10) line(x + mm, y, x + mm, y - (mm % 50 === 0 ? 3 : 1.5));
  line(x, y + 1.5, x + 101.6, y + 1.5);
  for (let inch = 0; inch <= 4; inch++) line(x + inch * 25.4, y + 1.5, x + inch * 25.4, y + 4);
  pdf.font(fonts.plain).fontSize(7).fillColor('#000000');
  pdf.text('100 mm', points(x + 103), points(y - 3), { lineBreak: false });
  pdf.text('4 in', points(x + 103), points(y + 1), { lineBreak: false });
}
