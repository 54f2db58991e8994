import type { Folded } from '../../shared/folding/proof-of.ts';
import type { Block, Guide, GuideStep, GuideTable, Section } from '../../shared/guide/guide.ts';
import type { GuideWish } from '../../shared/guide/guide-query.ts';
import type { Picture } from '../../shared/views/picture.ts';
import { columnWidths } from './pdf-columns.ts';
import { finished, fonts, newPdf } from './pdf-document.ts';
import { pageMargin, points } from './pdf-page.ts';
import { addPicture } from './pdf-picture.ts';
import { addTemplate } from './pdf-template.ts';

type Pdf = PDFKit.PDFDocument;

/** Between steps that stand beside each other, in points. */
const stepGap = points(6);

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
  if (wish.template === 'yes') await addTemplate(pdf, folded, wish.paper);
  numberPages(pdf, wish.print === 'large' ? sizes.table : 8);
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
    this.words('H2', title, this.#sizes.heading, fonts.bold, this.#opening(blocks));
    for (const [index, block] of blocks.entries()) this.#block(block, blocks.slice(index + 1));
  }

  /** The height of what must stand on the same page below a heading or a text that leads to it, in points. */
  #opening([first, ...others]: readonly Block[]): number {
    const { body, table } = this.#sizes;
    switch (first?.kind) {
      case undefined:
        return 0;
      case 'text':
        return (
          this.#pdf.font(fonts.plain).fontSize(body).heightOfString(first.text, { width: this.#width }) +
          this.#opening(others.filter(({ kind }) => kind !== 'text').slice(0, 1))
        );
      case 'table':
        return table * 10;
      case 'picture':
        return this.#heightOf(first.picture, wideOf(first.picture, this.#width)) + 30;
      case 'steps':
        return this.#rowOf(first.steps, 0).height;
      default:
        return body * 3;
    }
  }

  #block(block: Block, others: readonly Block[]): void {
    const { body } = this.#sizes;
    switch (block.kind) {
      case 'text':
        this.words(
          'P',
          block.text,
          body,
          fonts.plain,
          others[0]?.kind === 'text' ? 0 : this.#opening(others),
        );
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

  /** The steps that stand beside each other from one on, and what they take. */
  #rowOf(steps: readonly GuideStep[], first: number) {
    const pdf = this.#pdf;
    const { body } = this.#sizes;
    const columns = body > 12 ? 1 : 2;
    const width = (this.#width - stepGap * (columns - 1)) / columns;
    const row = steps.slice(first, first + columns).map(({ words, faceUp, picture }, index) => ({
      text: `${first + index + 1}. ${words}${faceUp === undefined ? '' : ` ${faceUp}.`}`,
      picture,
      wide: wideOf(picture, width),
    }));
    pdf.font(fonts.plain).fontSize(body);
    const above = Math.max(...row.map(({ text }) => pdf.heightOfString(text, { width })));
    const below = Math.max(...row.map(({ picture, wide }) => this.#heightOf(picture, wide)));
    return { row, columns, width, above, height: above + below + body * 1.5 };
  }

  /** Steps in rows, as many beside each other as have room for their text. */
  #steps(steps: readonly GuideStep[]): void {
    const pdf = this.#pdf;
    const { body } = this.#sizes;
    for (let first = 0; first < steps.length; ) {
      const { row, columns, width, above, height } = this.#rowOf(steps, first);
      this.#need(height);
      const { y } = pdf;
      for (const [column, { text, picture, wide }] of row.entries()) {
        const left = this.#left + column * (width + stepGap);
        this.#parent.add(
          pdf.struct('P', {}, () => {
            pdf.font(fonts.plain).fontSize(body).text(text, left, y, { width });
          }),
        );
        this.#figure(picture, left, y + above + 3, wide);
      }
      pdf.x = this.#left;
      pdf.y = y + height;
      first += columns;
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
    const widths = columnWidths(pdf, [head, ...rows], size, this.#width);
    const table = pdf.struct('Table');
    this.#parent.add(table);
    for (const [index, row] of [head, ...rows].entries()) this.#row(table, row, widths, size, index === 0);
    table.end();
    pdf.x = this.#left;
    pdf.y += size * 0.6;
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

/** A picture's width as it is to be shown, where there is so much room. */
const wideOf = ({ width, enlarged = 1 }: Picture, room: number): number =>
  Math.min(room, points(width) * enlarged);

function numberPages(pdf: Pdf, size: number): void {
  const { start, count } = pdf.bufferedPageRange();
  for (let index = start; index < start + count; index++) {
    pdf.switchToPage(index);
    pdf.markContent('Artifact', { type: 'Pagination' });
    const text = `${index + 1} / ${count}`;
    pdf.font(fonts.plain).fontSize(size);
    const y = pdf.page.height - points(pageMargin) + 4;
    // written below the margin, where the text would begin a new page
    const { bottom } = pdf.page.margins;
    pdf.page.margins.bottom = 0;
    pdf.text(text, pdf.page.width - points(pageMargin) - pdf.widthOfString(text), y, { lineBreak: false });
    pdf.page.margins.bottom = bottom;
    pdf.endMarkedContent();
  }
}
