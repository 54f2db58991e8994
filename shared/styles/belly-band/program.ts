import type {
  FillStep,
  FoldProgram,
  FoldStep,
  GlueStep,
  LockStep,
  StandStep,
} from '../../creases/fold-program.ts';
import { glueKeepOut, usualGlueWidth } from '../../creases/glue-keep-out.ts';
import type { LockedPaper } from '../../creases/lock.ts';
import type { PocketPlace } from '../../folding/pocket-place.ts';
import type { Nm } from '../../lengths/nanometres.ts';
import type { Wish } from '../../solver/bounds.ts';
import { gridOf } from '../../solver/grid.ts';
import { snap } from '../../solver/snap.ts';
import { foldAlong, panelOf, programOn, rectangle } from '../common/blank.ts';
import { at } from '../common/dimension.ts';
import { lockedPaper, locksAt, type TonguedEdge, tongueLength, tonguePanels } from '../common/lock.ts';
import { commonPractice } from '../common/practice.ts';
import type { Dimensions } from '../style.ts';
import { D, H, o, W } from './dimensions.ts';
import { besideTongue } from './model.ts';
import type { BellyBandSpec } from './spec.ts';

const place = { name: 'band', panel: 'front', behind: [], mouth: 'top' } as const;

/** The contents lie between the front, two sides and the back. */
export const pockets: readonly PocketPlace[] = [{ ...place, front: [], walls: ['left', 'right', 'over'] }];

/** With one fold at each side, they lie between flat layers. */
const flatPockets: readonly PocketPlace[] = [
  {
    ...place,
    front: ['left end', 'right end'],
    closed: [
      { side: 'left', by: 'fold' },
      { side: 'right', by: 'fold' },
    ],
  },
];

export const pocketsIn = (d: Dimensions): readonly PocketPlace[] => (at(d, D) === 0 ? flatPockets : pockets);

/** Where the band's parts lie, from the left: the seam is in the middle of the back, as nearly as the grid has it. */
function stopsOf(spec: BellyBandSpec, d: Dimensions) {
  const [width, side, overlap] = [at(d, W), at(d, D), at(d, o)];
  // on the back both ends stop short of the scores at its sides
  const clear = commonPractice.edgeToScore;
  const range = { least: overlap + clear, most: width - clear };
  const half: Wish = { value: (width + overlap) / 2, snap: 'nearest', why: 'the seam is in the middle' };
  const { value: leftEnd } = snap(half, range, gridOf(spec));
  const left = leftEnd + side;
  const right = left + width;
  const rightEnd = right + side;
  return { leftEnd, left, right, rightEnd, end: rightEnd + width + overlap - leftEnd };
}

/** How the strip is folded, glued or locked, and slipped over its contents. */
export function program(spec: BellyBandSpec, d: Dimensions, caliper: Nm): FoldProgram {
  const height = at(d, H);
  const { leftEnd, left, right, rightEnd, end } = stopsOf(spec, d);
  const boxed = at(d, D) > 0;
  const tongued = spec.join === 'slots' ? tonguedEnd(height, lockedPaper(spec, caliper)) : undefined;
  const part = (name: string, from: Nm, to: Nm, label?: string) =>
    panelOf(name, rectangle(from, 0, to, height), label === undefined ? {} : { label, labels: `${label}s` });
  const fold = (name: string, x: Nm, moving: Nm, rest: Partial<FoldStep> = {}) =>
    foldAlong(
      name,
      [
        [x, 0],
        [x, height],
      ],
      [moving, height / 2],
      rest,
    );
  const opening: StandStep[] = boxed
    ? [
        {
          kind: 'stand',
          name: 'open the band',
          folds: ['left end', 'left side', 'right side', 'right end'],
          task: 'Open the band, and bend all its scores to right angles.',
        },
      ]
    : [];
  const fill: FillStep[] =
    spec.contents === undefined
      ? []
      : [{ kind: 'fill', name: 'contents', pockets: ['band'], task: 'slip the band over {sets}.' }];
  return programOn(
    [
      part('left end', tongued?.x ?? 0, leftEnd, 'end'),
      ...(tongued ? tonguePanels(tongued) : []),
      ...(boxed ? [part('left side', leftEnd, left, 'side')] : []),
      part('front', left, right),
      ...(boxed ? [part('right side', right, rightEnd, 'side')] : []),
      part('right end', rightEnd, end, 'end'),
    ],
    [
      ...(boxed
        ? [
            fold('left end', leftEnd, 0, { angle: 90, eased: true }),
            fold('right side', right, end, { angle: 90, eased: true }),
            fold('left side', left, 0),
            fold('right end', rightEnd, end),
          ]
        : [fold('left end', left, 0, { ajar: 120 }), fold('right end', right, end, { ajar: 150 })]),
      tongued ? lockedSeam(spec, d, tongued) : seam(d, spec.glue?.width ?? usualGlueWidth),
      ...opening,
      ...fill,
    ],
  );
}

/** On the outside of the left end, under the right one. */
function seam(d: Dimensions, glueWidth: Nm): GlueStep {
  const { edge, mouth } = glueKeepOut;
  return {
    kind: 'glue',
    name: 'glue at the seam',
    holds: 'right end',
    strips: [
      {
        panel: 'left end',
        face: 'outside',
        to: 'right end',
        left: edge,
        right: edge + glueWidth,
        top: mouth,
        bottom: at(d, H) - mouth,
      },
    ],
    width: glueWidth,
    inset: mouth,
    lines: 1,
  };
}

/** The free edge of the left end, where it has tongues. */
const tonguedEnd = (height: Nm, paper: LockedPaper): TonguedEdge => ({
  panel: 'left end',
  x: tongueLength(paper),
  from: besideTongue,
  to: height - besideTongue,
  out: 'left',
  paper,
});

/** The tongues of the left end through the right one, which is folded over it. */
function lockedSeam(spec: BellyBandSpec, d: Dimensions, tongued: TonguedEdge): LockStep {
  const { left, rightEnd } = stopsOf(spec, d);
  return {
    kind: 'lock',
    name: 'lock the seam',
    holds: 'left end',
    locks: locksAt(tongued, 'right end', ({ x, y }) => ({ x: x + 2 * (rightEnd - left), y })),
  };
}
