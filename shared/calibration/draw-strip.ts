import { unfold } from '../creases/unfold.ts';
import type { Drawing } from '../drawing/drawing.ts';
import { cornersOf, offcutsOf, outlineOf } from '../drawing/outline.ts';
import { scoresOf } from '../drawing/scores.ts';
import { mm } from '../lengths/nanometres.ts';
import { describeLength } from '../lengths/show-length.ts';
import { type StripSpec, usualScores } from './strip-spec.ts';

const usualWidth = mm(30);

/**
 * The calibration strip as a drawing: equal panels, folded to and fro, so that scores are valleys and
 * mountains in turn and each is made from the side toward which it folds open.
 */
export function drawStrip({ length, width = usualWidth, scores = usualScores, measure }: StripSpec): Drawing {
  const corners = [
    { x: 0, y: 0 },
    { x: length, y: 0 },
    { x: length, y: width },
    { x: 0, y: width },
  ];
  // whole nanometres, so that folded panels lie exactly on each other
  const panel = Math.floor(length / (scores + 1));
  const pattern = unfold({
    outline: corners,
    panels: [{ name: 'strip', left: 0, top: 0, right: length, bottom: width }],
    steps: Array.from({ length: scores }, (_, index) => {
      const place = (index + 1) * panel;
      // each fold is made where the part before it has come to lie: to the left, within one panel
      return {
        kind: 'fold' as const,
        name: `fold ${index + 1}`,
        line: { from: { x: place, y: 0 }, to: { x: place, y: width } },
        moving: { x: 0, y: 0 },
        direction: index % 2 === 0 ? ('toward' as const) : ('away' as const),
        angle: 180 as const,
      };
    }),
  });
  return {
    title: `Calibration strip, ${describeLength(length, measure)} with ${scores} scores`,
    description:
      'Fold to and fro along every score, press, measure each panel from edge to edge and add up. Follow the instructions of the machine and of the material.',
    width: length,
    height: width,
    ...scoresOf(pattern),
    knockouts: [],
    outline: outlineOf(pattern),
    offcuts: offcutsOf(cornersOf(pattern), length, width),
    wholeSheet: false,
    turned: false,
  };
}
