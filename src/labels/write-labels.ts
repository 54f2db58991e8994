import { setImmediate as nextTurn } from 'node:timers/promises';
import type { Label, LabelLine, Labels } from '../../shared/labels/labels.ts';
import type { LabelsWish } from '../../shared/labels/labels-query.ts';
import { finished, fonts, newPdf } from '../guide/pdf-document.ts';
import { pageMargin, points } from '../guide/pdf-page.ts';
import { addPicture } from '../guide/pdf-picture.ts';
import {
  below,
  type Form,
  footHeight,
  formsOf,
  type Page,
  pad,
  pagesOf,
  pictureHeight,
  textOf,
  unbroken,
} from './label-pages.ts';

type Pdf = PDFKit.PDFDocument;

/**
 * Labels and cards as a PDF with lines to cut along: real text, tagged, fonts embedded.
 * @param made the time that the document tells
 */
export async function writeLabels(
  { title, count, kits, cards }: Labels,
  wish: LabelsWish,
  made: Date,
): Promise<Buffer> {
  const pdf = newPdf(title, wish.paper, made);
  const document = pdf.struct('Document');
  pdf.addStructure(document);
  const forms = formsOf[wish.print];
  const pages = [
    ...pagesOf(pdf, kits, forms, 'once'),
    ...cards.flatMap((card) => pagesOf(pdf, [card], forms, { copies: count })),
  ];
  for (const [index, page] of pages.entries()) {
    if (index > 0) pdf.addPage();
    writePage(pdf, document, page);
    // a large class must not keep others waiting
    await nextTurn();
  }
  document.end();
  return finished(pdf);
}

function writePage(pdf: Pdf, parent: PDFKit.PDFStructureElement, { labels, size, foot, form }: Page): void {
  cutLines(pdf, size, form.columns, Math.ceil(labels.length / form.columns));
  for (const [index, label] of labels.entries()) {
    const [column, row] = [index % form.columns, Math.floor(index / form.columns)];
    const place = { x: points(pageMargin) + column * size.width, y: points(pageMargin) + row * size.height };
    writeLabel(pdf, parent, label, place, size.width, form);
  }
  if (foot === '') return;
  parent.add(
    pdf.struct('P', {}, () => {
      pdf
        .font(fonts.plain)
        .fontSize(form.body)
        .text(foot, points(pageMargin), pdf.page.height - points(pageMargin) - footHeight * 0.7, {
          lineBreak: false,
        });
    }),
  );
}

function writeLabel(
  pdf: Pdf,
  parent: PDFKit.PDFStructureElement,
  { heading, picture, lines }: Label,
  { x, y }: { readonly x: number; readonly y: number },
  width: number,
  form: Form,
): void {
  const section = pdf.struct('Sect');
  parent.add(section);
  const inner = { width: width - 2 * pad };
  section.add(
    pdf.struct('H', {}, () => {
      pdf
        .font(fonts.bold)
        .fontSize(form.heading)
        .text(heading, x + pad, y + pad, inner);
    }),
  );
  pdf.y += form.heading * below;
  if (picture) {
    const { y: top } = pdf;
    const height = pictureHeight(picture, inner.width);
    addPicture(pdf, section, picture, { x: x + pad, y: top, width: inner.width, height });
    pdf.y = top + height + form.body * below;
  }
  for (const line of lines) {
    const top = pdf.y;
    section.add(pdf.struct('P', {}, () => writeLine(pdf, line, x + pad, inner.width, form.body)));
    if (line.toFillIn) {
      const start =
        x +
        pad +
        pdf
          .font(fonts.bold)
          .fontSize(form.body)
          .widthOfString(`${textOf(line)}  `);
      rule(pdf, start, top + form.body, x + width - pad);
    }
    pdf.y += form.body * below;
  }
  section.end();
}

function writeLine(pdf: Pdf, { lead, text }: LabelLine, x: number, width: number, size: number): void {
  pdf.fontSize(size);
  if (lead !== undefined)
    pdf
      .font(fonts.bold)
      .text(text === '' ? lead : `${unbroken(lead)} `, x, pdf.y, { width, continued: text !== '' });
  else pdf.x = x;
  if (text !== '') pdf.font(fonts.plain).text(unbroken(text), { width });
}

function rule(pdf: Pdf, from: number, y: number, to: number): void {
  pdf.markContent('Artifact', { type: 'Layout' });
  pdf.lineWidth(0.5).strokeColor('#777777').undash().moveTo(from, y).lineTo(to, y).stroke();
  pdf.endMarkedContent();
}

/** Thin dashed lines around every label, over the whole of the page's row or column. */
function cutLines(
  pdf: Pdf,
  { width, height }: { width: number; height: number },
  columns: number,
  rows: number,
): void {
  const [left, top] = [points(pageMargin), points(pageMargin)];
  pdf.markContent('Artifact', { type: 'Layout' });
  pdf.lineWidth(0.4).strokeColor('#777777').dash(3, { space: 3 });
  for (let column = 0; column <= columns; column++)
    pdf.moveTo(left + column * width, top).lineTo(left + column * width, top + rows * height);
  for (let row = 0; row <= rows; row++)
    pdf.moveTo(left, top + row * height).lineTo(left + columns * width, top + row * height);
  pdf.stroke().undash();
  pdf.endMarkedContent();
}
