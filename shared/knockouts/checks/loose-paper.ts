import { signedArea } from '../../geometry/area.ts';
import { centreOf, contourBounds, overlap } from '../../geometry/bounds.ts';
import type { Contour } from '../../geometry/contour.ts';
import { type Checked, type Finding, shownPlaces, titlesIn } from './finding.ts';

/** Of the sheet that comes off, more than this share is no chip any more; common practice. */
const chip = 0.02;

/** Pieces that fall out of openings or off the edge, and cuts that take the sheet apart. */
export function loosePaper(checked: Checked): readonly Finding[] {
  const { islands, severed, outline } = checked.paper;
  const least = chip * signedArea(outline);
  return [
    ...piecesOf(islands, checked, {
      code: 'paper-falls-out',
      does: 'tell',
      words: (count) =>
        `${count === 1 ? 'a piece of paper stands' : `${count} pieces of paper stand`} loose in`,
      end: 'falls out',
      remedy: 'leave bridges, or keep the piece and glue it back',
    }),
    ...piecesOf(
      severed.filter((piece) => signedArea(piece) < least),
      checked,
      {
        code: 'edge-comes-off',
        does: 'tell',
        words: (count) => `${count === 1 ? 'a piece' : `${count} pieces`} between the edge and`,
        end: 'comes off',
        remedy: 'move it away from the edge, or further over it',
      },
    ),
    ...piecesOf(
      severed.filter((piece) => signedArea(piece) >= least),
      checked,
      {
        code: 'sheet-apart',
        does: 'refuse',
        words: (count) => `the sheet falls into ${count + 1} parts at`,
        end: 'comes off',
        remedy: 'make it smaller or leave a bridge',
      },
    ),
  ];
}

interface Wording extends Pick<Finding, 'code' | 'does'> {
  readonly words: (count: number) => string;
  readonly end: string;
  readonly remedy: string;
}

function piecesOf(pieces: readonly Contour[], { list }: Checked, wording: Wording): Finding[] {
  if (pieces.length === 0) return [];
  const knockouts = list
    .filter(({ onBlank }) =>
      onBlank.some((contour) =>
        pieces.some((piece) => overlap(contourBounds(contour), contourBounds(piece))),
      ),
    )
    .map(({ index }) => index);
  const area = pieces.reduce((sum, piece) => sum + signedArea(piece), 0) / 1e12;
  const size = `${area < 10 ? Math.round(area * 10) / 10 : Math.round(area)} mm²`;
  return [
    {
      code: wording.code,
      does: wording.does,
      knockouts,
      message: `${wording.words(pieces.length)} ${titlesIn(list, knockouts)}: ${size} ${wording.end}`,
      remedy: wording.remedy,
      brief: `${size} ${wording.end}`,
      at: shownPlaces(pieces.map((piece) => centreOf(contourBounds(piece)))),
    },
  ];
}
