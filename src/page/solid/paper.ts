import type { OpenSheet } from '../ask/answer.ts';
import type { Face, Photo } from '../state/photos.ts';
import { photoOnSheet } from '../views/photo-matrix.ts';

/** What is on the sheet, as far as its two faces show it. */
export type SheetLook = Pick<OpenSheet, 'sheet' | 'blank' | 'ups' | 'knockouts'>;

/** Pixels along the longer side of the sheet. */
const pixels = 1400;

/** The prints that the page's pictures have where there is no photo, in millimetres. */
const prints = {
  dots: (context: CanvasRenderingContext2D, width: number, height: number): void => {
    context.fillStyle = '#a9cfd6';
    context.fillRect(0, 0, width, height);
    context.fillStyle = '#3f7f8c';
    for (let x = 3; x < width + 6; x += 12)
      for (let y = 3; y < height + 6; y += 12)
        for (const half of [0, 6]) {
          context.beginPath();
          context.arc(x + half, y + half, 1.2, 0, 2 * Math.PI);
          context.fill();
        }
  },
  stripes: (context: CanvasRenderingContext2D, width: number, height: number): void => {
    context.fillStyle = '#fffaf0';
    context.fillRect(0, 0, width, height);
    context.strokeStyle = '#dda27c';
    context.lineWidth = 1.1;
    for (let at = -height; at < width + height; at += 8.5) {
      context.beginPath();
      context.moveTo(at, 0);
      context.lineTo(at + height, height);
      context.stroke();
    }
  },
};

async function pictureOf({ address }: Photo): Promise<HTMLImageElement> {
  const picture = new Image();
  picture.src = address;
  await picture.decode();
  return picture;
}

/** One face of the blank as a canvas, what is cut out of it left clear. */
export async function paintFace(
  face: Face,
  { sheet, blank, ups, knockouts }: SheetLook,
  photo: Photo | undefined,
  print: keyof typeof prints,
): Promise<HTMLCanvasElement> {
  const canvas = document.createElement('canvas');
  const scale = pixels / Math.max(blank.width, blank.height);
  canvas.width = Math.round(blank.width * scale);
  canvas.height = Math.round(blank.height * scale);
  const context = canvas.getContext('2d');
  if (!context) throw new Error('the browser paints no canvas');
  context.scale(scale, scale);
  if (photo) {
    const { a, b, c, d, e, f } = photoOnSheet(face, sheet, ups[face]);
    context.save();
    context.transform(a, b, c, d, e, f);
    context.drawImage(await pictureOf(photo), 0, 0, 1, 1);
    context.restore();
  } else prints[print](context, blank.width, blank.height);
  context.globalCompositeOperation = 'destination-out';
  for (const { data } of knockouts) context.fill(new Path2D(data), 'evenodd');
  return canvas;
}
