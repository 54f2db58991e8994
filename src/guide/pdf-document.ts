import { createRequire } from 'node:module';
import PDFDocument from 'pdfkit';
import { type PrintPaper, pageMargin, points, printPapers } from './pdf-page.ts';

const require = createRequire(import.meta.url);
const fontFile = (name: string) => require.resolve(`dejavu-fonts-ttf/ttf/${name}.ttf`);

/** Names of the embedded fonts: DejaVu Sans has Latin, Greek and Cyrillic letters, fractions and signs. */
export const fonts = Object.freeze({ plain: 'plain', bold: 'bold' });

/** An empty document, tagged, with fonts that it will embed; the same guide made at the same time gives the same bytes. */
export function newPdf(title: string, paper: PrintPaper, made: Date): PDFKit.PDFDocument {
  const { width, height } = printPapers[paper];
  const document = new PDFDocument({
    size: [points(width), points(height)],
    margin: points(pageMargin),
    pdfVersion: '1.7',
    tagged: true,
    lang: 'en',
    displayTitle: true,
    bufferPages: true,
    info: { Title: title, Creator: 'hemfold', Producer: 'hemfold', CreationDate: made, ModDate: made },
  });
  document.registerFont(fonts.plain, fontFile('DejaVuSans'));
  document.registerFont(fonts.bold, fontFile('DejaVuSans-Bold'));
  document.font(fonts.plain);
  return document;
}

/** Ends a document and gathers its bytes. */
export function finished(document: PDFKit.PDFDocument): Promise<Buffer> {
  const { promise, resolve, reject } = Promise.withResolvers<Buffer>();
  const parts: Buffer[] = [];
  document.on('data', (part: Buffer) => parts.push(part));
  document.on('end', () => resolve(Buffer.concat(parts)));
  document.on('error', reject);
  document.end();
  return promise;
}
