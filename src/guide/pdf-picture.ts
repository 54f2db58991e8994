import svgToPdf from 'svg-to-pdfkit';
import type { Picture } from '../../shared/views/picture.ts';
import { writePicture } from '../svg/write-picture.ts';
import { fonts } from './pdf-document.ts';

/**
 * Draws a picture as a tagged figure, as large as the place allows and in its upper left corner.
 * @param place in points
 */
export function addPicture(
  pdf: PDFKit.PDFDocument,
  parent: PDFKit.PDFStructureElement,
  picture: Picture,
  {
    x,
    y,
    width,
    height,
  }: { readonly x: number; readonly y: number; readonly width: number; readonly height: number },
): void {
  parent.add(
    pdf.struct('Figure', { alt: picture.description }, () => {
      svgToPdf(pdf, writePicture(picture), x, y, {
        width,
        height,
        preserveAspectRatio: 'xMinYMin meet',
        fontCallback: (_family, bold) => (bold ? fonts.bold : fonts.plain),
      });
    }),
  );
}
