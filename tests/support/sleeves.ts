import fc from 'fast-check';
import type { FoldProgram } from '../../shared/creases/fold-program.ts';
import { type Folded, proofOf } from '../../shared/folding/proof-of.ts';
import { inch, mm, type Nm } from '../../shared/lengths/nanometres.ts';
import { solved } from './solved.ts';

/*
 * Twin sleeves by their dimensions. The bounds are those of the design: a hem no deeper than either flap nor
 * than the panel is wide, flaps that overlap, and neither flap higher than the panel.
 */

const share = fc.oneof(fc.constantFrom(0, 1), fc.double({ min: 0, max: 1, noNaN: true }));
const step = fc.constantFrom<Nm>(mm(1), mm(0.5), inch(1 / 16), inch(1 / 64), 1);

/** Raw specs of twin sleeves that all can be folded, to the nanometre, with the bounds often met exactly. */
export const sleeves: fc.Arbitrary<object> = fc
  .record({
    step,
    shares: fc.tuple(share, share, share, share, share, share),
    corners: fc.constantFrom('folded', 'mitred'),
    turn: fc.constantFrom('out', 'in'),
    seam: fc.constantFrom('tucked', 'flat'),
  })
  .map(({ step: by, shares: [a, b, c, d, e, f], corners, turn, seam }) => {
    const between = (least: Nm, more: Nm, part: number): Nm => Math.ceil((least + part * more) / by) * by;
    const written = (nm: Nm): string => `${nm / 1e6} mm`;
    const hem = between(mm(9.35), mm(50), a);
    const overlap = between(mm(9.35), mm(40), b);
    const topFlap = between(Math.max(hem, overlap), mm(60), c);
    const height = between(Math.max(topFlap + mm(3), topFlap + hem - overlap), mm(80), d);
    return {
      style: 'twin-sleeve',
      dimensions: {
        panel: { width: written(between(hem + mm(3), mm(90), e)), height: written(height) },
        spine: written(between(mm(3.2), mm(30), f)),
        hem: written(hem),
        topFlap: written(topFlap),
        overlap: written(overlap),
      },
      hem: { turn },
      corners,
      seam,
      grid: 'none',
    };
  });

/** Blank 270 × 320 mm: vertical scores at 30, 130, 140, 240; horizontal ones at 60 and 210. */
export const easySleeve = {
  style: 'twin-sleeve',
  dimensions: {
    panel: { width: '100 mm', height: '150 mm' },
    spine: '10 mm',
    hem: '30 mm',
    topFlap: '60 mm',
    overlap: '20 mm',
  },
};

/** One sleeve of each kind with easy numbers: 2 corners × 2 hem turns × 2 seams. */
export const everyKind = ['folded', 'mitred'].flatMap((corners) =>
  ['out', 'in'].flatMap((turn) =>
    ['tucked', 'flat'].map((seam) => ({ ...easySleeve, corners, hem: { turn }, seam })),
  ),
);

export const foldedFrom = (raw: object): Folded => proofOf(solved(raw));

/** Without its folds of 90°, so that the sleeve stays flat and its panels are not cut by the spine. */
export const withoutSpine = (program: FoldProgram): FoldProgram => ({
  ...program,
  steps: program.steps.filter((each) => each.kind !== 'fold' || each.angle === 180),
});
