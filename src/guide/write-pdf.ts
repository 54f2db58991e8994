import type { Folded } from '../../shared/folding/proof-of.ts';
import type { Block, Guide, GuideStep, GuideTable, Section } from '../../shared/guide/guide.ts';
import type { GuideWish } from '../../shared/guide/guide-query.ts';
import type { Picture } from '../../shared/views/picture.ts';
import { finished, fonts, newPdf } from './pdf-document.ts';
import { pageMargin, points } from './pdf-page.ts';
import { addPicture } from './pdf-picture.ts';
import { addTemplate } from './pdf-template.ts';

type Pdf = PDFKit.PDFDocument;

/** Sizes of text in points. */
interface Sizes {
  readonly body: number;
  readonly table: number;
  readonly heading: number;
  readonly title: number;
}

const sizesOf: Readonly<Record<GuideWish['print'], Sizes>> = {
  standard: { body: 10.5, table: 8.5, heading: 14, title: 20 },
  large: { body: 17, table: 16, heading: 21, title: 26 },
};

/**
 * A guide as a PDF: real text, tagged, fonts embedded.
 * @param folded for the template in real size
 * @param made the time that the document tells
 */
export async function writeGuidePdf(
  guide: Guide,
  folded: Folded,
  wish: Pick<GuideWish, 'print' | 'paper' | 'template'>,
  made: Date,
): Promise<Buffer> {
  const pdf = newPdf(guide.title, wish.paper, made);
  const sizes = sizesOf[wish.print];
  const whole = pdf.struct('Document');
  pdf.addStructure(whole);
  const writer = new Writer(pdf, whole, sizes);
  writer.words('H1', guide.title, sizes.title, fonts.bold);
  writer.words('P', guide.summary, sizes.body);
  for (const section of guide.sections) writer.section(section);
  whole.end();
  if (wish.template === 'yes') addTemplate(pdf, folded, wish.paper);
  numberPages(pdf);
  return finished(pdf);
}

/** Writes blocks one below the other, each with its tag, and begins pages where one would not fit. */
class Writer {
  readonly #pdf: Pdf;
  readonly #parent: PDFKit.PDFStructureElement;
  readonly #sizes: Sizes;
  constructor(pdf: Pdf, parent: PDFKit.PDFStructureElement, sizes: Sizes) {
    this.#pdf = pdf;
    this.#parent = parent;
    this.#sizes = sizes;
  }

  get #left() {
    return points(pageMargin);
  }
  get #width() {
    return this.#pdf.page.width - 2 * this.#left;
  }
  get #bottom() {
    return this.#pdf.page.height - points(pageMargin) - 10;
  }

  /** Goes to a new page unless that much height is left. */
  #need(height: number): void {
    const { y } = this.#pdf;
    if (y + height > this.#bottom && y > points(pageMargin) + 1) this.#pdf.addPage();
  }

  /** @param following height of what must stand on the same page below it, in points */
  words(tag: string, text: string, size: number, font: string = fonts.plain, following = 0): void {
    const pdf = this.#pdf;
    pdf.font(font).fontSize(size);
    const height = pdf.heightOfString(text, { width: this.#width });
    this.#need(Math.min(height, 80) + following);
    this.#parent.add(
      pdf.struct(tag, {}, () => {
        pdf.font(font).fontSize(size).text(text, this.#left, pdf.y, { width: this.#width });
      }),
    );
    pdf.y += size * 0.35;
  }

  section({ title, blocks }: Section): void {
    this.#pdf.y += this.#sizes.heading * 0.5;
    this.words('H2', title, this.#sizes.heading, fonts.bold, this.#firstHeight(blocks[0]));
    for (const block of blocks) this.#block(block);
  }

  /** What of a section's first block must stand below its heading. */
  #firstHeight(block: Block | undefined): number {
    if (block?.kind !== 'picture') return 60;
    return this.#heightOf(block.picture, wideOf(block.picture, this.#width)) + 30;
  }

  #block(block: Block): void {
    const { body } = this.#sizes;
    switch (block.kind) {
      case 'text':
        this.words('P', block.text, body);
        return;
      case 'list':
        for (const item of block.items) this.words('P', `•  ${item}`, body);
        return;
      case 'facts':
        for (const [term, value] of block.facts) this.words('P', `${term}: ${value}`, body);
        return;
      case 'table':
        this.#table(block);
        return;
      case 'picture':
        this.#picture(block.picture, wideOf(block.picture, this.#width));
        return;
      case 'steps':
        this.#steps(block.steps);
    }
  }

  /** Steps in rows, as many beside each other as have room for their text. */
  #steps(steps: readonly GuideStep[]): void {
    const pdf = this.#pdf;
    const { body } = this.#sizes;
    const columns = body > 12 ? 1 : 2;
    const gap = points(6);
    const width = (this.#width - gap * (columns - 1)) / columns;
    const texts = steps.map(({ words, faceUp }, index) => `${index + 1}. ${words} ${faceUp}.`);
    for (let first = 0; first < steps.length; first += columns) {
      pdf.font(fonts.plain).fontSize(body);
      const row = steps.slice(first, first + columns);
      const above = Math.max(
        ...row.map((_, column) => pdf.heightOfString(texts[first + column] ?? '', { width })),
      );
      const below = Math.max(...row.map(({ picture }) => this.#heightOf(picture, wideOf(picture, width))));
      this.#need(above + below + body * 1.5);
      const { y } = pdf;
      for (const [column, { picture }] of row.entries()) {
        const left = this.#left + column * (width + gap);
        this.#parent.add(
          pdf.struct('P', {}, () => {
            pdf
              .font(fonts.plain)
              .fontSize(body)
              .text(texts[first + column] ?? '', left, y, { width });
          }),
        );
        this.#figure(picture, left, y + above + 3, wideOf(picture, width));
      }
      pdf.x = this.#left;
      pdf.y = y + above + below + body * 1.5;
    }
  }

  /** The height that a picture takes at a width, but never more than a page has. */
  #heightOf({ width, height }: Picture, wide: number): number {
    return Math.min((wide * height) / width, this.#bottom - points(pageMargin) - 20);
  }

  /** Draws a picture at a place, no wider than that, and tells its height. */
  #figure(picture: Picture, left: number, top: number, wide: number): number {
    const height = this.#heightOf(picture, wide);
    const width = (height * picture.width) / picture.height;
    addPicture(this.#pdf, this.#parent, picture, { x: left, y: top, width, height });
    return height;
  }

  #picture(picture: Picture, wide: number): void {
    this.#need(this.#heightOf(picture, wide) + 6);
    const { y } = this.#pdf;
    const height = this.#figure(picture, this.#left, y, wide);
    this.#pdf.x = this.#left;
    this.#pdf.y = y + height + 6;
  }

  #table({ caption, head, rows }: GuideTable): void {
    const pdf = this.#pdf;
    const { table: size } = this.#sizes;
    this.words('P', caption, size, fonts.bold, size * 8);
    const widths = this.#columnWidths(head, rows, size);
    const table = pdf.struct('Table');
    this.#parent.add(table);
    for (const [index, row] of [head, ...rows].entries()) this.#row(table, row, widths, size, index === 0);
    table.end();
    pdf.x = this.#left;
    pdf.y += size * 0.6;
  }

  /** Columns as wide as their longest words ask, and the rest shared by the length of their texts. */
  #columnWidths(head: readonly string[], rows: readonly (readonly string[])[], size: number): number[] {
    const pdf = this.#pdf.font(fonts.bold).fontSize(size);
    const pad = 8;
    const columns = head.map((title, index) => [title, ...rows.map((row) => row[index] ?? '')]);
    const least = columns.map(
      (texts) =>
        Math.max(...texts.flatMap((text) => text.split(' ').map((word) => pdf.widthOfString(word)))) + pad,
    );
    const wished = columns.map((texts) => Math.max(...texts.map((text) => pdf.widthOfString(text))) + pad);
    const spare = this.#width - least.reduce((sum, each) => sum + each, 0);
    if (spare <= 0) return least.map((each) => (each * this.#width) / (this.#width - spare));
    const more = wished.map((each, index) => each - (least[index] ?? 0));
    const all = more.reduce((sum, each) => sum + each, 0);
    const share = all === 0 ? 0 : Math.min(1, spare / all);
    return least.map((each, index) => each + (more[index] ?? 0) * share);
  }

  #row(
    table: PDFKit.PDFStructureElement,
    cells: readonly string[],
    widths: readonly number[],
    size: number,
    isHead: boolean,
  ): void {
    const pdf = this.#pdf;
    const pad = 4;
    const font = (column: number) => (isHead || column === 0 ? fonts.bold : fonts.plain);
    const heights = cells.map((text, column) =>
      pdf
        .font(font(column))
        .fontSize(size)
        .heightOfString(text, { width: (widths[column] ?? 0) - 2 * pad }),
    );
    const height = Math.max(...heights) + pad;
    this.#need(height);
    const { y } = pdf;
    const row = pdf.struct('TR');
    table.add(row);
    let x = this.#left;
    for (const [column, text] of cells.entries()) {
      const width = widths[column] ?? 0;
      const at = x;
      pdf.markContent('Artifact', { type: 'Layout' });
      pdf.lineWidth(0.5).strokeColor('#777777');
      if (isHead) pdf.rect(at, y, width, height).fillAndStroke('#EEEEEE', '#777777');
      else pdf.rect(at, y, width, height).stroke();
      pdf.fillColor('#000000').endMarkedContent();
      row.add(
        pdf.struct(isHead || column === 0 ? 'TH' : 'TD', {}, () => {
          pdf
            .font(font(column))
            .fontSize(size)
            .text(text, at + pad, y + pad / 2, { width: width - 2 * pad });
        }),
      );
      x += width;
    }
    row.end();
    pdf.x = this.#left;
    pdf.y = y + height;
  }
}

/** A picture's own width, where there is so much. */
const wideOf = ({ width }: Picture, room: number): number => Math.min(room, points(width));

function numberPages(pdf: Pdf): void {
  const { start, count } = pdf.bufferedPageRange();
  for (let index = start; index < start + count; index++) {
    pdf.switchToPage(index);
    pdf.markContent('Artifact', { type: 'Pagination' });
    const text = `${index + 1} / ${count}`;
    pdf.font(fonts.plain).fontSize(8);
    const y = pdf.page.height - points(pageMargin) + 4;
    // written below the margin, where the text would begin a new page
    const { bottom } = pdf.page.margins;
    pdf.page.margins.bottom = 0;
    pdf.text(text, pdf.page.width - points(pageMargin) - pdf.widthOfString(text), y, { lineBreak: false });
    pdf.page.margins.bottom = bottom;
    pdf.endMarkedContent();
  }
}
